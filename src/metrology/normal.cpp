#include "shimwright/metrology/normal.h"

#include <algorithm>
#include <cmath>

namespace shimwright::metrology {

double normal_cdf(double z) {
  constexpr double one_over_root_two = 0.70710678118654752440;
  return 0.5 * std::erfc(-z * one_over_root_two);
}

double probability_below(double limit, double mean, double uncertainty) {
  if (uncertainty > 0.0) {
    return normal_cdf((limit - mean) / uncertainty);
  }
  if (limit == mean) {
    return 0.5;
  }
  return mean < limit ? 1.0 : 0.0;
}

double probability_inside(double lower, double upper, double least, double most, double uncertainty) {
  return std::max(0.0, probability_below(upper, most, uncertainty) - probability_below(lower, least, uncertainty));
}

}  // namespace shimwright::metrology
