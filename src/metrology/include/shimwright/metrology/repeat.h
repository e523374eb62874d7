#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace shimwright::metrology {

/// What is known of an instrument on that day; all in the unit of the readings.
struct InstrumentState {
  double resolution = 0.0;     ///< width of the last digit or division
  double mpe = 0.0;            ///< maximum permissible error, taken as ±
  double repeatability = 0.0;  ///< standard deviation of one reading when nothing has changed; 0: not known
};

/// Several readings of one thing, such as a shim under the micrometer.
struct MeanReading {
  std::size_t readings = 0;
  double mean = 0.0;
  std::optional<double> deviation;  ///< of one reading; unset for a single one
  double u = 0.0;                   ///< standard uncertainty of the mean
};

/// u² = max(s, repeatability)²/n + resolution²/12 + mpe²/3: a mean of n readings (JCGM 100:2008, 4.2.3, type A) and two
/// rectangles that do not average out (4.3.7, F.2.2.1). A few readings that agree by luck claim no less than the
/// instrument's repeatability. Nothing for no reading.
[[nodiscard]] std::optional<MeanReading> mean_reading(const std::vector<double>& readings,
                                                      const InstrumentState& instrument);

/// The fewest readings a repeat test is reckoned from: with five the deviation itself is known to 35 %.
inline constexpr std::size_t fewest_repeats = 5;
/// What the guided test asks for: with ten it is known to 24 %.
inline constexpr std::size_t usual_repeats = 10;

/// The same thing read again and again while nothing changes.
struct RepeatTest {
  std::size_t readings = 0;
  double mean = 0.0;
  double deviation = 0.0;   ///< of one reading: the repeatability (JCGM 100:2008, 4.2.2)
  double relative_u = 0.0;  ///< of the deviation itself: 1/√(2(n − 1)) (JCGM 100:2008, E.4.3)
};
/// Nothing for fewer than `fewest_repeats`.
[[nodiscard]] std::optional<RepeatTest> repeat_test(const std::vector<double>& readings);

/// The standard uncertainty of a person's feel from the thickest shims that still let the gauge in, found again and
/// again on one seat in steps of `step`: √(s² + step²/12). Nothing for fewer than `fewest_repeats`.
[[nodiscard]] std::optional<double> feel_from(const std::vector<double>& found, double step);

}  // namespace shimwright::metrology
