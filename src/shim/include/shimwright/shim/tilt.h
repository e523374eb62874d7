#pragma once

#include "shimwright/shim/disc_float.h"

namespace shimwright::shim {

/// Whether the tilt is more than its spots are uncertain by: tilt_mm > 1.96 times the largest u_spot_mm (95 %, coverage
/// factor as GUM 6.3). A smaller one has no direction to be told.
[[nodiscard]] bool tilt_has_direction(const FloatJudgement& judged);

}  // namespace shimwright::shim
