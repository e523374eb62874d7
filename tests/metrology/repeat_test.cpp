#include "shimwright/metrology/repeat.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

using namespace shimwright::metrology;

namespace {

/// Readings in whole micrometres, as a micrometer gives them, in mm.
std::vector<double> any_readings(std::size_t fewest) {
  auto micrometres = *rc::gen::container<std::vector<int>>(rc::gen::inRange(1000, 3000));
  while (micrometres.size() < fewest) {
    micrometres.push_back(*rc::gen::inRange(1000, 3000));
  }
  std::vector<double> readings;
  for (const int each : micrometres) {
    readings.push_back(each / 1000.0);
  }
  return readings;
}

InstrumentState any_instrument() {
  const auto thousandths = [] { return *rc::gen::inRange(0, 20) / 1000.0; };
  return {thousandths(), thousandths(), thousandths()};
}

}  // namespace

TEST_CASE("the example of the Guide: ten readings, their deviation and that of their mean") {
  // JCGM 100:2008, 4.2.2 and 4.2.3 on the twenty temperatures of table 1: mean 100.145, s 1.489, s of the mean 0.333.
  const std::vector<double> table_1{96.90,  98.18,  98.25,  98.61,  99.03,  99.49,  99.56,  99.74,  99.89,  100.07,
                                    100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72};
  const auto mean = mean_reading(table_1, {});
  REQUIRE(mean);
  CHECK(mean->mean == Approx(100.145).epsilon(1e-6));
  CHECK(*mean->deviation == Approx(1.489).epsilon(1e-3));
  CHECK(mean->u == Approx(0.333).epsilon(2e-3));
}

TEST_CASE("rounding and permissible error do not average out") {
  const auto mean = mean_reading(std::vector<double>(10000, 1.65), {0.001, 0.002, 0.0});
  REQUIRE(mean);
  CHECK(mean->u == Approx(std::hypot(0.001 / std::sqrt(12.0), 0.002 / std::sqrt(3.0))));
}

TEST_CASE("one reading has the repeatability of its instrument") {
  const auto mean = mean_reading({1.65}, {0.0, 0.0, 0.003});
  REQUIRE(mean);
  CHECK_FALSE(mean->deviation);
  CHECK(mean->u == Approx(0.003));
  CHECK_FALSE(mean_reading({}, {0.001, 0.002, 0.003}));
}

TEST_CASE("a mean lies between its readings and does not depend on their order") {
  CHECK(rc::check([] {
    auto readings = any_readings(1);
    const auto instrument = any_instrument();
    const auto mean = mean_reading(readings, instrument);
    RC_ASSERT(mean.has_value());
    const auto [least, most] = std::minmax_element(readings.begin(), readings.end());
    RC_ASSERT(mean->mean >= *least - 1e-12);
    RC_ASSERT(mean->mean <= *most + 1e-12);
    std::reverse(readings.begin(), readings.end());
    const auto again = mean_reading(readings, instrument);
    RC_ASSERT(std::abs(again->mean - mean->mean) < 1e-12);
    RC_ASSERT(std::abs(again->u - mean->u) < 1e-12);
  }));
}

TEST_CASE("a worse instrument never makes a surer mean, and moving the scale changes no uncertainty") {
  CHECK(rc::check([] {
    const auto readings = any_readings(1);
    const auto instrument = any_instrument();
    auto worse = instrument;
    worse.resolution += *rc::gen::inRange(0, 20) / 1000.0;
    worse.mpe += *rc::gen::inRange(0, 20) / 1000.0;
    worse.repeatability += *rc::gen::inRange(0, 20) / 1000.0;
    const double u = mean_reading(readings, instrument)->u;
    RC_ASSERT(mean_reading(readings, worse)->u >= u - 1e-15);
    auto moved = readings;
    for (double& each : moved) {
      each += 1.0;
    }
    RC_ASSERT(std::abs(mean_reading(moved, instrument)->u - u) < 1e-9);
  }));
}

TEST_CASE("the same readings taken twice over are surer, never below what does not average out") {
  CHECK(rc::check([] {
    const auto readings = any_readings(2);
    const auto instrument = any_instrument();
    auto twice = readings;
    twice.insert(twice.end(), readings.begin(), readings.end());
    const double u = mean_reading(twice, instrument)->u;
    RC_ASSERT(u <= mean_reading(readings, instrument)->u + 1e-15);
    RC_ASSERT(u >= std::hypot(instrument.resolution / std::sqrt(12.0), instrument.mpe / std::sqrt(3.0)) - 1e-15);
  }));
}

TEST_CASE("a repeat test needs five readings and says how well it knows its answer") {
  CHECK_FALSE(repeat_test({0.5, 0.5, 0.5, 0.5}));
  const auto test = repeat_test({0.50, 0.51, 0.50, 0.49, 0.50, 0.51, 0.50, 0.49, 0.50, 0.50});
  REQUIRE(test);
  CHECK(test->readings == 10);
  CHECK(test->mean == Approx(0.50));
  CHECK(test->deviation == Approx(std::sqrt(4e-4 / 9.0)));
  CHECK(test->relative_u == Approx(0.236).epsilon(1e-2));  // JCGM 100:2008, table E.1: 24 % for n = 10
}

TEST_CASE("a repeatability scales with the unit and is nought where nothing scatters") {
  CHECK(rc::check([] {
    const auto readings = any_readings(fewest_repeats);
    auto in_micrometres = readings;
    for (double& each : in_micrometres) {
      each *= 1000.0;
    }
    const double deviation = repeat_test(readings)->deviation;
    RC_ASSERT(std::abs(repeat_test(in_micrometres)->deviation - 1000.0 * deviation) <=
              1e-6 * (1.0 + 1000.0 * deviation));
  }));
  CHECK(repeat_test(std::vector<double>(6, 1.65))->deviation == Approx(0.0).margin(1e-12));
}

TEST_CASE("a feel is never finer than the steps it was found in allow") {
  CHECK_FALSE(feel_from({1.65, 1.65, 1.65, 1.65}, 0.05));
  CHECK(*feel_from(std::vector<double>(5, 1.65), 0.05) == Approx(0.05 / std::sqrt(12.0)));
  CHECK(*feel_from({1.60, 1.65, 1.65, 1.70, 1.65}, 0.05) ==
        Approx(std::hypot(std::sqrt(0.00125), 0.05 / std::sqrt(12.0))));
}
