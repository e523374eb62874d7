#include "shimwright/shim/tilt.h"

#include <algorithm>

namespace shimwright::shim {

bool tilt_has_direction(const FloatJudgement& judged) {
  constexpr double coverage = 1.96;
  const auto largest = std::max_element(judged.u_spot_mm.begin(), judged.u_spot_mm.end());
  const double u_mm = largest == judged.u_spot_mm.end() ? 0.0 : *largest;
  return judged.high_at_deg.has_value() && judged.tilt_mm > coverage * u_mm;
}

}  // namespace shimwright::shim
