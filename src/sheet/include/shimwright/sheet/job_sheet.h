#pragma once

#include <cassert>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/sheet/text.h"
#include "shimwright/sheet/words.h"

namespace shimwright::sheet {

/// What can hurt and what keeps from it.
struct Caution {
  Text hazard;
  Text precaution;
  friend bool operator==(const Caution&, const Caution&) = default;
};

/// Another step's channel.
struct ChannelName {
  std::string step;
  std::string channel;
  friend bool operator==(const ChannelName&, const ChannelName&) = default;
};

/// One number asked for.
struct Channel {
  std::string id;
  Text title;
  quantity::Unit unit = quantity::Unit::millimetre;  ///< assumed where none is typed; its dimension is the channel's
  std::optional<std::string> limit;                  ///< key in the spec sheet's limits
  std::optional<ChannelName> equals;                 ///< must equal that earlier reading (plugs in, plugs out)
  std::optional<InstrumentKind> instrument;          ///< read with one of these; unset where none is needed
  bool signed_value = false;                         ///< a value other than zero needs its sign typed
  friend bool operator==(const Channel&, const Channel&) = default;
};

struct Choice {
  std::string id;
  Text title;
  bool accepted = true;  ///< false: the step stays open for a deviation or another answer
  friend bool operator==(const Choice&, const Choice&) = default;
};

struct DoStep {
  friend bool operator==(const DoStep&, const DoStep&) = default;
};
/// Answered "in order" or "not in order", the latter with words.
struct CheckStep {
  friend bool operator==(const CheckStep&, const CheckStep&) = default;
};
struct ChooseStep {
  std::vector<Choice> choices;  ///< two at least
  friend bool operator==(const ChooseStep&, const ChooseStep&) = default;
};
struct ReadStep {
  std::vector<Channel> channels;  ///< one at least
  friend bool operator==(const ReadStep&, const ReadStep&) = default;
};
/// A reading that is an event: attempted again, never measured again.
struct PeakStep {
  Channel channel;
  std::optional<std::string> attempts_limit;  ///< key of a count limit in the spec sheet (pressings per pack)
  friend bool operator==(const PeakStep&, const PeakStep&) = default;
};
struct PartStep {
  std::vector<std::string> parts;  ///< ids in the spec sheet's parts list, one at least
  friend bool operator==(const PartStep&, const PartStep&) = default;
};
struct PhotoStep {
  int least = 1;
  friend bool operator==(const PhotoStep&, const PhotoStep&) = default;
};
struct TextStep {
  friend bool operator==(const TextStep&, const TextStep&) = default;
};
struct GaugeFitStep {
  friend bool operator==(const GaugeFitStep&, const GaugeFitStep&) = default;
};
struct DepthStep {
  friend bool operator==(const DepthStep&, const DepthStep&) = default;
};
struct FloatStep {
  bool as_found = false;  ///< measured on the old pack, for information
  friend bool operator==(const FloatStep&, const FloatStep&) = default;
};
/// Values before and after a basic setting, with attempts; an abort has code and reason.
struct TeachInStep {
  std::vector<Channel> channels;  ///< each asked before and after; limits hold for the values after
  friend bool operator==(const TeachInStep&, const TeachInStep&) = default;
};
struct SignStep {
  Signer signer = Signer::technician;
  friend bool operator==(const SignStep&, const SignStep&) = default;
};

using StepBody = std::variant<DoStep, CheckStep, ChooseStep, ReadStep, PeakStep, PartStep, PhotoStep, TextStep,
                              GaugeFitStep, DepthStep, FloatStep, TeachInStep, SignStep>;

/// `do`, `check`, `choose`, `read`, `peak`, `part`, `photo`, `text`, `gauge_fit`, `depth`, `float`, `teach_in`, `sign`.
[[nodiscard]] std::string_view kind_of(const StepBody& body);

struct Step {
  std::string id;  ///< stable over issues: `press-pack`
  Text title;
  Text text;  ///< the instruction; may be empty
  std::vector<Caution> cautions;
  bool hold_point = false;
  std::optional<Side> side;  ///< required for gauge_fit, depth, float and for again = side
  Again again = Again::never;
  std::optional<std::string> unproven_until;  ///< left before that later step is passed, this one is asked again
  bool may_be_not_required = false;
  std::optional<Method> only_for;  ///< asked only where the spec sheet finds that side's shim so; needs a side
  std::optional<Role> role;
  Drawing shows = Drawing::none;
  StepBody body;

  /// The side of a step whose kind has one: without it read_job_sheet refuses gauge fit, depth and float.
  [[nodiscard]] Side its_side() const {
    assert(side.has_value());
    return side.value_or(Side::lower);
  }

  friend bool operator==(const Step&, const Step&) = default;
};

struct Stage {
  std::string id;
  Text title;
  std::vector<Step> steps;
  friend bool operator==(const Stage&, const Stage&) = default;
};

/// The ordered stages and steps of a job type.
struct JobSheet {
  std::string id;    ///< UUID
  std::string name;  ///< stable short name: `dry-pack-renewal`
  std::int64_t issue = 1;
  bool demonstration = false;
  Text title;
  std::vector<Stage> stages;

  /// All steps in order, with the index of each one's stage.
  [[nodiscard]] const Step* find(std::string_view step_id) const;
  /// Position in the sheet's order, counted over all stages; nothing for an unknown id.
  [[nodiscard]] std::optional<std::size_t> position_of(std::string_view step_id) const;
  [[nodiscard]] std::vector<const Step*> steps() const;
  /// The stage a step stands in; nullptr for an unknown id.
  [[nodiscard]] const Stage* stage_of(std::string_view step_id) const;

  friend bool operator==(const JobSheet&, const JobSheet&) = default;
};

/// Reads and validates a job sheet file (docs/formats/job-sheet.md). The place of an error is a JSON pointer.
/// Beyond shapes it refuses: a step id twice; unproven_until or equals naming no such step, or one on the wrong side of
/// it; a side missing where needed; fewer choices or channels than needed; a caution without hazard or precaution.
[[nodiscard]] Result<JobSheet> read_job_sheet(std::string_view json_text);

}  // namespace shimwright::sheet
