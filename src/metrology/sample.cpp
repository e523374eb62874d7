#include "shimwright/metrology/sample.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace shimwright::metrology {

double mean_of(const std::vector<double>& values) {
  if (values.empty()) {
    return 0.0;
  }
  return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

double range_of(const std::vector<double>& values) {
  if (values.empty()) {
    return 0.0;
  }
  const auto [least, most] = std::minmax_element(values.begin(), values.end());
  return *most - *least;
}

std::optional<double> sample_deviation(const std::vector<double>& values) {
  if (values.size() < 2) {
    return std::nullopt;
  }
  const double mean = mean_of(values);
  double squares = 0.0;
  double residue = 0.0;  // what the rounded mean leaves over (corrected two-pass sum)
  for (const double value : values) {
    squares += (value - mean) * (value - mean);
    residue += value - mean;
  }
  const auto count = static_cast<double>(values.size());
  return std::sqrt((squares - residue * residue / count) / (count - 1.0));
}

}  // namespace shimwright::metrology
