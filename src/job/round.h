#pragma once

#include <map>
#include <string>
#include <vector>

#include "shimwright/job/rounds.h"
#include "shimwright/job/state.h"

namespace shimwright::job {

/// Whether that assembly opens the step again.
[[nodiscard]] bool asked_again(const sheet::Step& step, const AssemblyBegun& begun);

/// Whether the engine's advice on the entry's step stands on it: trials, depths, runs, and what was confirmed to the
/// engine.
[[nodiscard]] bool advice_stands_on(const EntryBody& body);

/// A question of the engine, without whose answer it judges nothing.
[[nodiscard]] bool asked_by_engine(std::string_view question);

/// Live entries of the step that still count, in order.
[[nodiscard]] std::vector<const Entry*> round_entries(const JobState& state, const sheet::Step& step);

/// The parts of a part step that no entry of its present round names, in the sheet's order; none of another step.
[[nodiscard]] std::vector<std::string> parts_missing(const JobState& state, const sheet::Step& step);

/// The latest reading of each channel of a read step in its present round.
struct ChannelReadings {
  std::map<std::string, const Reading*> by_channel;
  std::vector<Question> questions;  ///< asked by the entries those readings come from, not yet confirmed
};
[[nodiscard]] ChannelReadings channel_readings(const JobState& state, const sheet::Step& step);

/// Which of the questions no live `confirmed` entry after `asked_by` answers.
[[nodiscard]] std::vector<Question> still_open(const JobState& state, std::string_view step_id, std::int64_t asked_by,
                                               const std::vector<Question>& questions);

/// The step of a role, of that side where the role has one; nullptr where the sheet has none.
[[nodiscard]] const sheet::Step* step_with_role(const sheet::JobSheet& sheet, sheet::Role role,
                                                std::optional<Side> side = std::nullopt);

/// The latest live reading of a read step's channel, in any assembly.
[[nodiscard]] const Reading* latest_reading(const JobState& state, std::string_view step_id, std::string_view channel);

}  // namespace shimwright::job
