#pragma once

#include <optional>
#include <vector>

namespace shimwright::metrology {

/// Arithmetic mean; 0 of an empty list.
[[nodiscard]] double mean_of(const std::vector<double>& values);
/// Largest minus smallest; 0 of an empty list.
[[nodiscard]] double range_of(const std::vector<double>& values);
/// Standard deviation of the sample, divisor n − 1 (JCGM 100:2008, 4.2.2); nothing for fewer than two values.
[[nodiscard]] std::optional<double> sample_deviation(const std::vector<double>& values);

}  // namespace shimwright::metrology
