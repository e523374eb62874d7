#pragma once

namespace shimwright::metrology {

/// Φ(z), the standard normal distribution function, by the complementary error function: Φ(z) = erfc(−z/√2)/2.
/// Keeps its relative accuracy far out in the lower tail.
[[nodiscard]] double normal_cdf(double z);

/// The chance that a normal quantity with this mean and standard uncertainty lies below `limit`. Without uncertainty it
/// is a plain comparison, one half on the limit itself.
[[nodiscard]] double probability_below(double limit, double mean, double uncertainty);

/// The chance that what lies between `least` and `most`, uncertain together by `uncertainty`, is inside the limits:
/// max(0, Φ((upper − most)/u) − Φ((lower − least)/u)).
[[nodiscard]] double probability_inside(double lower, double upper, double least, double most, double uncertainty);

}  // namespace shimwright::metrology
