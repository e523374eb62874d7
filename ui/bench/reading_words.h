#pragma once

#include <QString>

#include "shimwright/bench/workbench.h"
#include "shimwright/job/entry.h"
#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/strip.h"

/// How readings, limits and answers that are kept are said. Pure.
namespace shimwright::bench {

[[nodiscard]] widgets::Mark mark_of(job::ReadingVerdict verdict);
/// `within`, `too large`; blank where there is no limit.
[[nodiscard]] QString verdict_words(job::ReadingVerdict verdict);
/// Off its limit: in brick.
[[nodiscard]] bool is_off(job::ReadingVerdict verdict);

/// `0.25 to 0.85 mm`, `at most 12 N·m`.
[[nodiscard]] QString limit_words(const sheet::Limit& limit);
[[nodiscard]] QString limit_words(const job::LimitUsed& limit);

/// `13.5 N·m`, with its sign where it has one.
[[nodiscard]] QString number_words(const quantity::TypedNumber& number, bool with_sign = false);
/// `13.5 N·m too large`.
[[nodiscard]] QString judged_number_words(const job::Reading& reading, bool with_sign = false);
/// `13.5 N·m too large, at most 12 N·m`.
[[nodiscard]] QString reading_words(const job::Reading& reading);
/// Verdict and limit of a reading for the strip; nothing for one without a verdict.
[[nodiscard]] widgets::StripText strip_of(const job::Reading& reading);

/// `by MK 24 Nov 10:58`.
[[nodiscard]] QString by_whom(const Workbench& bench, const job::Entry& entry);
/// The entry of that number; nullptr where there is none.
[[nodiscard]] const job::Entry* entry_numbered(const job::JobState& state, std::int64_t seq);
/// What was said where a step was left out or accepted against its limit: `left with reason: …, by MK 24 Nov 10:58`;
/// blank for a step in another state.
[[nodiscard]] QString left_out_words(const Workbench& bench, const job::StepState& state);

/// The limit a channel is held to; nullptr where it has none.
[[nodiscard]] const sheet::Limit* limit_of(const sheet::SpecSheet& spec, const sheet::Channel& channel);

/// `Torque wrench`.
[[nodiscard]] QString instrument_title(sheet::InstrumentKind kind);

}  // namespace shimwright::bench
