#pragma once

#include "shimwright/metrology/slope.h"
#include "shimwright/shim/disc_float.h"
#include "shimwright/shim/tray.h"

namespace shimwright::shim {

/// Every shim of the tray by what it would give, best first: first those that are as good as sure (0.99) to lie within
/// the limits, nearest to the target; then by falling chance.
[[nodiscard]] FloatRanking rank_shims(const Tray& tray, const FloatCase& disc_float, const FloatJudgement& judgement,
                                      const metrology::Slope& sensitivity);

}  // namespace shimwright::shim
