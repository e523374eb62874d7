#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shimwright/job/context.h"
#include "shimwright/job/state.h"

/// Findings that question a reading in place. A reading is kept at once; its step waits until a person confirms what is
/// questioned or enters it anew. Codes:
/// `unit_in_doubt`, `dial_reversed` (contract of the engine), `turn_missed`, `shims_exchanged`, `far_from_old_shim`,
/// `not_the_chosen_shim`, `stamp_differs`, `other_pack`, `less_than_left`, `hundredths_in_doubt`.
namespace shimwright::job {

/// The new shim differs from the one taken out by more than one step of the tray.
[[nodiscard]] std::optional<Question> far_from_old_shim(const JobState& state, Side side, quantity::Length thickness,
                                                        const std::vector<TrayShim>& tray);

/// What was measured is another shim than the one chosen.
[[nodiscard]] std::optional<Question> not_the_chosen_shim(const JobState& state, Side side, quantity::Length measured,
                                                          const std::vector<TrayShim>& tray);

/// The stamp typed on the depth page is not the one read when the pack was unpacked.
[[nodiscard]] std::optional<Question> stamp_differs(const JobState& state, Side side, quantity::Length stamp);

/// The pack taken off is not the one the last job on this vehicle left in it.
[[nodiscard]] std::optional<Question> other_pack(const JobState& state, const std::string& serial,
                                                 const Context& context);

/// As found: another pack than the last job's, or less float than it was left with.
[[nodiscard]] std::vector<Question> as_found_questions(const JobState& state, Side side, quantity::Length mean,
                                                       const Context& context);

/// A whole turn of the dial not counted: the reading lies one or more turns from what was predicted for the new shim,
/// or one spot lies a turn from the others. `spot_floats` in micrometres.
[[nodiscard]] std::optional<Question> turn_missed(const JobState& state, const sheet::Step& step,
                                                  const std::vector<std::int64_t>& spot_floats,
                                                  std::optional<double> sensitivity, quantity::Length turn);

/// Both discs off, opposite ways, as they would be with the large and the small shim in each other's place.
[[nodiscard]] std::optional<Question> shims_exchanged(const JobState& state, Side side, ReadingVerdict verdict,
                                                      const Context& context);

/// Typed without a decimal mark though the hundredth of it would be within the limit.
[[nodiscard]] std::optional<Question> hundredths_in_doubt(const quantity::TypedNumber& number, const LimitUsed& limit);

}  // namespace shimwright::job
