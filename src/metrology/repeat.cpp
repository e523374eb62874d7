#include "shimwright/metrology/repeat.h"

#include <algorithm>
#include <cmath>

#include "shimwright/metrology/sample.h"

namespace shimwright::metrology {

namespace {

double of_rounding(double width) {
  return width / std::sqrt(12.0);
}

}  // namespace

std::optional<MeanReading> mean_reading(const std::vector<double>& readings, const InstrumentState& instrument) {
  if (readings.empty()) {
    return std::nullopt;
  }
  // In one order always, so that the last binary place of the sum does not tell in which they were taken.
  std::vector<double> sorted = readings;
  std::sort(sorted.begin(), sorted.end());
  MeanReading mean{sorted.size(), mean_of(sorted), sample_deviation(sorted), 0.0};
  const double one = std::max(mean.deviation.value_or(0.0), instrument.repeatability);
  mean.u = std::hypot(one / std::sqrt(static_cast<double>(sorted.size())), of_rounding(instrument.resolution),
                      instrument.mpe / std::sqrt(3.0));
  return mean;
}

std::optional<RepeatTest> repeat_test(const std::vector<double>& readings) {
  const auto deviation = sample_deviation(readings);
  if (readings.size() < fewest_repeats || !deviation) {
    return std::nullopt;
  }
  const auto freedom = static_cast<double>(readings.size() - 1);
  return RepeatTest{readings.size(), mean_of(readings), *deviation, 1.0 / std::sqrt(2.0 * freedom)};
}

std::optional<double> feel_from(const std::vector<double>& found, double step) {
  const auto test = repeat_test(found);
  return test ? std::optional(std::hypot(test->deviation, of_rounding(step))) : std::nullopt;
}

}  // namespace shimwright::metrology
