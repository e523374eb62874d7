#pragma once

#include <optional>
#include <vector>

namespace shimwright::metrology {

/// One value at one place round the disc.
struct AngledValue {
  double angle_deg = 0.0;
  double value_mm = 0.0;
};

/// How far and which way a disc leans.
struct Tilt {
  double amplitude_mm = 0.0;
  std::optional<double> high_at_deg;  ///< 0 to below 360; nothing where there is no tilt to speak of (below 1e-9 mm)
};

/// Least-squares first harmonic f(θ) = m + a·cos θ + b·sin θ; amplitude √(a² + b²), high at atan2(b, a). Needs three
/// different angles; with fewer the harmonic that cannot be told apart is left at nothing.
[[nodiscard]] Tilt fit_tilt(const std::vector<AngledValue>& values);

}  // namespace shimwright::metrology
