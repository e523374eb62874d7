#include "shimwright/metrology/uncertainty.h"

#include <cmath>

namespace shimwright::metrology {

// hypot throughout: a sum of squares would lose very small uncertainties to underflow.

double random_part_mm(const Indicator& indicator) {
  return std::hypot(indicator.resolution_mm / std::sqrt(6.0), indicator.repeatability_mm);
}

double systematic_part_mm(const Indicator& indicator) {
  return indicator.mpe_mm / std::sqrt(3.0);
}

double spot_uncertainty_mm(const Indicator& indicator, std::size_t runs) {
  return std::hypot(systematic_part_mm(indicator), random_part_mm(indicator) / std::sqrt(static_cast<double>(runs)));
}

double mean_uncertainty_mm(const Indicator& indicator, const std::vector<std::size_t>& runs) {
  double shares = 0.0;
  for (const auto count : runs) {
    shares += 1.0 / static_cast<double>(count);
  }
  const auto spots = static_cast<double>(runs.size());
  return std::hypot(systematic_part_mm(indicator), random_part_mm(indicator) * std::sqrt(shares) / spots);
}

}  // namespace shimwright::metrology
