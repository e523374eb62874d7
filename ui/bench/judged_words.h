#pragma once

#include <string>
#include <vector>

#include <QString>

#include "shimwright/job/entry.h"
#include "shimwright/job/standing.h"
#include "shimwright/metrology/verdict.h"
#include "shimwright/widgets/marks.h"

/// Words that the three judged pages share.
namespace shimwright::bench {

/// `large bearing`, `small bearing`.
[[nodiscard]] QString bearing_words(sheet::Side side);
/// `lower disc`, `upper disc`.
[[nodiscard]] QString disc_words(sheet::Side side);
/// `tight`, `snug`, `loose`.
[[nodiscard]] QString fit_words(shim::Fit fit);
/// `33 in 100`; never nought or a hundred.
[[nodiscard]] QString chance_words(double chance);
/// A length in the unit shown, with a true minus; hundredths of mm, or thousandths where they are needed.
[[nodiscard]] QString length_words(double millimetres);
[[nodiscard]] QString length_words(double millimetres, int decimals);
/// With the unit of lengths behind it: `0.93 mm`.
[[nodiscard]] QString length_with_unit(double millimetres, int decimals);
[[nodiscard]] widgets::Mark mark_of(metrology::Verdict verdict);
/// `within`, `too large`, `too small and too large`.
[[nodiscard]] QString verdict_words(metrology::Verdict verdict);

}  // namespace shimwright::bench
