#include "shimwright/metrology/slope.h"

#include <algorithm>
#include <cmath>

namespace shimwright::metrology {

namespace {

struct Sums {
  double xx = 0.0;
  double xy = 0.0;
  std::size_t pairs = 0;
};

Sums sums_of(const std::vector<Pair>& pairs) {
  Sums sums;
  for (const auto& pair : pairs) {
    if (pair.x != 0.0) {
      sums.xx += pair.x * pair.x;
      sums.xy += pair.x * pair.y;
      ++sums.pairs;
    }
  }
  return sums;
}

double residual_squares(const std::vector<Pair>& pairs, double slope) {
  double squares = 0.0;
  for (const auto& pair : pairs) {
    if (pair.x != 0.0) {
      const double residual = pair.y - slope * pair.x;
      squares += residual * residual;
    }
  }
  return squares;
}

/// 1/sd₀² and 1/σ² may each be too large for a double, so only their ratio is used, whichever way round is below one.
Slope combine(const std::optional<Slope>& prior, const Sums& sums, double sigma) {
  if (!prior) {
    return {sums.xy / sums.xx, sigma / std::sqrt(sums.xx)};
  }
  if (sigma <= prior->sd) {
    const double weight = (sigma / prior->sd) * (sigma / prior->sd);
    const double total = weight + sums.xx;
    return {(weight * prior->mean + sums.xy) / total, sigma / std::sqrt(total)};
  }
  const double weight = (prior->sd / sigma) * (prior->sd / sigma);
  const double total = 1.0 + weight * sums.xx;
  return {(prior->mean + weight * sums.xy) / total, prior->sd / std::sqrt(total)};
}

}  // namespace

std::optional<SlopeEstimate> slope_through_origin(const std::optional<Slope>& prior, const std::vector<Pair>& pairs,
                                                  double sigma) {
  const Sums sums = sums_of(pairs);
  if (sums.pairs == 0) {
    return prior ? std::optional(SlopeEstimate{*prior, 0}) : std::nullopt;
  }
  SlopeEstimate estimate{combine(prior, sums, sigma), sums.pairs};
  if (sums.pairs >= 3) {
    const double scatter =
        std::sqrt(residual_squares(pairs, estimate.slope.mean) / static_cast<double>(sums.pairs - 1));
    // Multiplied only where it widens: scatter/σ alone may overflow where σ is next to nothing.
    if (scatter > sigma) {
      estimate.slope.sd = estimate.slope.sd / sigma * scatter;
    }
  }
  return estimate;
}

}  // namespace shimwright::metrology
