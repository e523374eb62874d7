#include "shimwright/metrology/harmonic.h"

#include <cmath>
#include <cstddef>
#include <utility>

#include "shimwright/metrology/verdict.h"

namespace shimwright::metrology {

namespace {

using Column = std::vector<double>;

double dot(const Column& left, const Column& right) {
  double sum = 0.0;
  for (std::size_t row = 0; row < left.size(); ++row) {
    sum += left[row] * right[row];
  }
  return sum;
}

/// Takes the mean off: the projection on the constant column.
void centre(Column& column) {
  double sum = 0.0;
  for (const double each : column) {
    sum += each;
  }
  const double mean = sum / static_cast<double>(column.size());
  for (double& each : column) {
    each -= mean;
  }
}

void subtract(Column& from, double factor, const Column& what) {
  for (std::size_t row = 0; row < from.size(); ++row) {
    from[row] -= factor * what[row];
  }
}

/// Coefficients of two centred columns by Gram-Schmidt; a column that is not independent gets none.
std::pair<double, double> two_coefficients(const Column& first, Column second, const Column& values) {
  constexpr double vanishing = 1e-20;
  const auto rows = static_cast<double>(values.size());
  const double first_square = dot(first, first);
  if (first_square <= vanishing * rows) {
    return {0.0, 0.0};
  }
  const double shared = dot(first, second) / first_square;
  subtract(second, shared, first);
  const double second_square = dot(second, second);
  const double second_coefficient = second_square <= vanishing * rows ? 0.0 : dot(second, values) / second_square;
  return {dot(first, values) / first_square - shared * second_coefficient, second_coefficient};
}

}  // namespace

Tilt fit_tilt(const std::vector<AngledValue>& values) {
  constexpr double degree = 3.14159265358979323846 / 180.0;
  Column cosines;
  Column sines;
  Column centred;
  for (const auto& each : values) {
    const double turned = std::fmod(each.angle_deg, 360.0) * degree;
    cosines.push_back(std::cos(turned));
    sines.push_back(std::sin(turned));
    centred.push_back(each.value_mm);
  }
  centre(cosines);
  centre(sines);
  centre(centred);
  // The longer column first: it loses nothing when the other is taken off it.
  const bool cosines_first = dot(cosines, cosines) >= dot(sines, sines);
  auto coefficients =
      cosines_first ? two_coefficients(cosines, sines, centred) : two_coefficients(sines, cosines, centred);
  if (!cosines_first) {
    std::swap(coefficients.first, coefficients.second);
  }
  Tilt tilt{std::hypot(coefficients.first, coefficients.second), std::nullopt};
  if (tilt.amplitude_mm >= length_slack_mm) {
    const double direction = std::atan2(coefficients.second, coefficients.first) / degree;
    const double turned = direction < 0.0 ? direction + 360.0 : direction;
    tilt.high_at_deg = turned < 360.0 ? turned : 0.0;
  }
  return tilt;
}

}  // namespace shimwright::metrology
