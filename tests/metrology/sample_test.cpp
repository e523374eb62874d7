#include "shimwright/metrology/sample.h"

#include <catch2/catch.hpp>

using namespace shimwright::metrology;

// Certified values: NIST Statistical Reference Datasets (StRD), univariate summary statistics, NumAcc1 and NumAcc2.

TEST_CASE("NIST NumAcc1 gives its certified mean and deviation") {
  const std::vector<double> values{10000001.0, 10000003.0, 10000002.0};
  CHECK(mean_of(values) == 10000002.0);
  REQUIRE(sample_deviation(values));
  CHECK(*sample_deviation(values) == Approx(1.0).epsilon(1e-14));
}

TEST_CASE("NIST NumAcc2 gives its certified mean and deviation") {
  std::vector<double> values{1.2};
  for (int pair = 0; pair < 500; ++pair) {
    values.push_back(1.1);
    values.push_back(1.3);
  }
  CHECK(mean_of(values) == Approx(1.2).epsilon(1e-13));
  REQUIRE(sample_deviation(values));
  CHECK(*sample_deviation(values) == Approx(0.1).epsilon(1e-12));
}

TEST_CASE("too few values have no deviation") {
  CHECK_FALSE(sample_deviation({}));
  CHECK_FALSE(sample_deviation({1.0}));
  CHECK(mean_of({}) == 0.0);
  CHECK(range_of({}) == 0.0);
  CHECK(range_of({0.52, 0.55, 0.50}) == Approx(0.05));
}
