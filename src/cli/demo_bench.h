#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "demo_gearbox.h"
#include "shimwright/job/command.h"
#include "shimwright/job/context.h"
#include "shimwright/job/state.h"

/// A simulated bench: a technician who answers each next step of a job from what is true of the gearbox in hand.
namespace shimwright::cli {

/// Answers the steps of a job one after the other.
class DemoTechnician {
 public:
  /// `photos` are those at hand for the steps that ask for one; without any the technician has no camera.
  DemoTechnician(TrueGearbox gearbox, std::vector<job::AddPhoto> photos, Dice& dice)
      : gearbox_(std::move(gearbox)), photos_(std::move(photos)), dice_(dice) {}

  /// What the technician does next; nothing where all is done.
  [[nodiscard]] std::optional<job::Command> next(const job::JobState& state, const job::Context& context);

 private:
  [[nodiscard]] job::Command answer(const sheet::Step& step, const job::JobState& state, const job::Context& context);
  [[nodiscard]] job::Command answer_readings(const sheet::Step& step, const job::JobState& state,
                                             const job::Context& context);
  [[nodiscard]] job::Command answer_trial(const sheet::Step& step, const job::JobState& state,
                                          const job::Context& context);
  [[nodiscard]] job::Command answer_depth(const sheet::Step& step, const job::JobState& state,
                                          const job::Context& context);
  [[nodiscard]] job::Command answer_float(const sheet::Step& step, const job::JobState& state,
                                          const job::Context& context);
  [[nodiscard]] job::Command answer_teach_in(const sheet::Step& step, const job::JobState& state);
  [[nodiscard]] job::Command answer_held(const sheet::Step& step, const job::Held& held) const;
  [[nodiscard]] job::Command answer_part(const sheet::Step& step, const sheet::PartStep& part) const;
  [[nodiscard]] job::Command answer_text(const sheet::Step& step, const job::JobState& state) const;
  [[nodiscard]] job::Command answer_photo(const sheet::Step& step, const job::JobState& state);
  [[nodiscard]] std::string reading_text(const sheet::Step& step, const sheet::Channel& channel,
                                         const job::JobState& state);
  [[nodiscard]] const TrueSide& side(job::Side side) const {
    return side == job::Side::lower ? gearbox_.lower : gearbox_.upper;
  }

  TrueGearbox gearbox_;
  std::vector<job::AddPhoto> photos_;
  Dice& dice_;
};

/// The gearbox as a job that is done leaves it.
[[nodiscard]] TrueGearbox left_by(const job::JobState& state, const TrueGearbox& gearbox, const job::Context& context);

}  // namespace shimwright::cli
