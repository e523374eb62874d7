#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "shimwright/job/command.h"
#include "shimwright/job/context.h"
#include "shimwright/job/state.h"

/// A simulated bench: a technician who answers each next step of a job from what is true of the gearbox in hand.
namespace shimwright::cli {

/// Draws that are the same on every machine: the standard library's engines are, its distributions are not.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  [[nodiscard]] std::uint64_t below(std::uint64_t bound) { return engine_() % bound; }
  [[nodiscard]] std::int64_t between(std::int64_t least, std::int64_t most) {
    return least + static_cast<std::int64_t>(below(static_cast<std::uint64_t>(most - least + 1)));
  }
  /// Bell-shaped about 0 (sum of twelve even draws).
  [[nodiscard]] double bell(double sd);
  [[nodiscard]] bool one_in(std::uint64_t count) { return below(count) == 0; }

 private:
  std::mt19937_64 engine_;
};

/// What is true of one side, in micrometres: nobody at the bench knows it.
struct TrueSide {
  std::int64_t seat = 0;         ///< the thickest shim that still lets the gauge in
  std::int64_t ideal_float = 0;  ///< with a shim of exactly the seat
  double lost_per_micrometre = 1.0;
  std::int64_t first_seat_error = 0;  ///< the bearing was not home at the first trials, by so much
  std::int64_t stamp = 0;
};

struct TrueGearbox {
  TrueSide lower;
  TrueSide upper;
  std::string pack_serial;
  std::string old_pack_serial;
  int plugs = 2;
};

/// Answers the steps of a job one after the other.
class DemoTechnician {
 public:
  DemoTechnician(TrueGearbox gearbox, Dice& dice) : gearbox_(std::move(gearbox)), dice_(dice) {}

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
  [[nodiscard]] job::Command answer_held(const sheet::Step& step, const job::Held& held);
  [[nodiscard]] std::string reading_text(const sheet::Step& step, const sheet::Channel& channel,
                                         const job::JobState& state);
  [[nodiscard]] const TrueSide& side(job::Side side) const {
    return side == job::Side::lower ? gearbox_.lower : gearbox_.upper;
  }

  TrueGearbox gearbox_;
  Dice& dice_;
};

/// A gearbox drawn for a spec sheet; one in eight has a bearing that is not home at the first trials.
[[nodiscard]] TrueGearbox draw_gearbox(const sheet::SpecSheet& spec, Dice& dice);

}  // namespace shimwright::cli
