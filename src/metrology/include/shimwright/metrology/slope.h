#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace shimwright::metrology {

/// A slope with its standard uncertainty.
struct Slope {
  double mean = 0.0;
  double sd = 0.0;
};

struct Pair {
  double x = 0.0;
  double y = 0.0;
};

struct SlopeEstimate {
  Slope slope;
  std::size_t pairs = 0;  ///< those with x ≠ 0; the others say nothing about a slope through the origin
};

/// y = slope · x through the origin, each y uncertain by `sigma` (> 0), with or without prior knowledge of the slope:
/// weighted least squares, λ = 1/sd₀² + Σx²/σ², slope = (mean₀/sd₀² + Σxy/σ²)/λ, sd = λ^−½. With three pairs or more
/// sd is widened by √(χ²/(n − 1)) where that exceeds 1 (Birge ratio), χ² = Σ(y − slope·x)²/σ².
/// Nothing where there is neither prior nor pair.
[[nodiscard]] std::optional<SlopeEstimate> slope_through_origin(const std::optional<Slope>& prior,
                                                                const std::vector<Pair>& pairs, double sigma);

}  // namespace shimwright::metrology
