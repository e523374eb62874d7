#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "shimwright/job/judgement.h"
#include "shimwright/widgets/limit_strip.h"
#include "shimwright/widgets/strip.h"

/// What the float page says of a judgement. Pure.
namespace shimwright::bench {

/// The judgement of the engine, where it has one: not while a question is open.
[[nodiscard]] const shim::FloatJudgement* engine_judgement(const job::Judgement& judgement);

/// `0.93 mm too large` and `lower disc, limits 0.25 to 0.85 mm`.
[[nodiscard]] widgets::StripText float_strip(const job::Judgement& judgement, const sheet::FloatSpec& spec,
                                             sheet::Side side);

/// What to do, in one sentence without a full stop: `Seat the large bearing again, then measure once more`.
[[nodiscard]] QString float_heading(const job::Judgement& judgement, sheet::Side side);

/// Why; where trials and float disagree that comes first, and what would be fitted if the float stays comes last.
[[nodiscard]] QString float_reason_text(const job::Judgement& judgement);

/// Spread and tilt, what a shim does to this float and where that comes from.
[[nodiscard]] QString float_facts(const job::Judgement& judgement);

/// Limits, guard zones and a mark for each spot measured so far; without a judgement the marks are plain ticks.
[[nodiscard]] widgets::LimitStripView float_limits(const sheet::FloatSpec& spec,
                                                   const std::vector<std::vector<const job::FloatRun*>>& runs,
                                                   const std::optional<job::Judgement>& judgement);

/// Lifted less rest, as exact as it was typed: `0.93`.
[[nodiscard]] QString run_words(const job::FloatRun& run);

/// One shim of the tray and what it would give.
struct ShimPromise {
  QString shim;
  QString expected;  ///< `0.57 ± 0.04`
  QString chance;    ///< `better than 99 in 100`
  bool advised = false;
  bool fitted = false;
};
/// Best first; nothing where the engine ranks none.
[[nodiscard]] std::vector<ShimPromise> shim_promises(const job::Judgement& judgement);

/// What has to come off and what is renewed when the shim is changed, and how often the pack may be pressed.
[[nodiscard]] QString change_words(const job::JobState& state, const std::string& language);

/// Which way the dial runs, and what a turn of it is.
[[nodiscard]] QString dial_hint(const std::optional<job::Instrument>& dial);

}  // namespace shimwright::bench
