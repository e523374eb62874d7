#pragma once

#include <cstddef>
#include <vector>

namespace shimwright::metrology {

/// A dial gauge and the hand that uses it; all in mm.
struct Indicator {
  double resolution_mm = 0.0;     ///< width of the last digit or division
  double mpe_mm = 0.0;            ///< maximum permissible error, taken as ±
  double repeatability_mm = 0.0;  ///< standard deviation of one float when nothing has changed
};

/// Random part of one run in mm: r² = 2·resolution²/12 + repeatability². Two readings are rounded (JCGM 100:2008, 4.3.7
/// and F.2.2.1: a rectangle of width δ has the variance δ²/12).
[[nodiscard]] double random_part_mm(const Indicator& indicator);
/// Systematic part in mm, the same for all spots: s² = mpe²/3 (a rectangle of half width mpe).
[[nodiscard]] double systematic_part_mm(const Indicator& indicator);

/// Standard uncertainty of the float at a spot with `runs` runs (at least one): √(s² + r²/k).
[[nodiscard]] double spot_uncertainty_mm(const Indicator& indicator, std::size_t runs);
/// Of the mean over spots with these numbers of runs: √(s² + Σ(r²/kᵢ)/n²). The systematic part does not average out.
[[nodiscard]] double mean_uncertainty_mm(const Indicator& indicator, const std::vector<std::size_t>& runs);

}  // namespace shimwright::metrology
