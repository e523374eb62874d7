#include "shimwright/job/measured_shim.h"

#include <algorithm>
#include <cmath>

#include "shimwright/metrology/repeat.h"

namespace shimwright::job {

std::optional<MeasuredShim> measured_shim(const std::vector<MicrometerReading>& readings) {
  std::vector<double> in_mm;
  metrology::InstrumentState state;
  for (const MicrometerReading& each : readings) {
    in_mm.push_back(quantity::in_millimetres(quantity::Length(each.number.base)));
    const auto coarser = [](double& known, double millimetres) { known = std::max(known, millimetres); };
    coarser(state.resolution, quantity::in_millimetres(quantity::Length(each.micrometer.resolution)));
    coarser(state.mpe, quantity::in_millimetres(quantity::Length(each.micrometer.permissible_error)));
    coarser(state.repeatability, static_cast<double>(each.micrometer.repeatability.value_or(0)) / 1e6);
  }
  const auto mean = metrology::mean_reading(in_mm, state);
  if (!mean) {
    return std::nullopt;
  }
  const double of_rounding = mean->readings > 1 ? 0.001 / std::sqrt(12.0) : 0.0;  // one reading is whole as it is
  return MeasuredShim{quantity::Length(std::llround(mean->mean * 1000.0)), std::hypot(mean->u, of_rounding), mean->mean,
                      mean->deviation, mean->readings};
}

}  // namespace shimwright::job
