#include "shimwright/metrology/slope.h"

#include <cmath>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

using namespace shimwright::metrology;

TEST_CASE("NIST NoInt1 gives its certified slope through the origin") {
  // NIST Statistical Reference Datasets (StRD), linear regression, NoInt1: certified B1 and its standard deviation.
  std::vector<Pair> pairs;
  for (int row = 0; row <= 10; ++row) {
    pairs.push_back({60.0 + row, 130.0 + row});
  }
  const auto estimate = slope_through_origin(std::nullopt, pairs, 1e-6);
  REQUIRE(estimate);
  CHECK(estimate->slope.mean == Approx(2.07438016528926).epsilon(1e-13));
  CHECK(estimate->slope.sd == Approx(0.0165289256198347).epsilon(1e-12));
  CHECK(estimate->pairs == 11);
}

TEST_CASE("pairs that scatter less than they may do not narrow the slope") {
  const std::vector<Pair> pairs{{0.1, 0.1}, {0.2, 0.2}, {0.2, 0.2}};
  const auto estimate = slope_through_origin(std::nullopt, pairs, 0.03);
  REQUIRE(estimate);
  CHECK(estimate->slope.mean == Approx(1.0));
  CHECK(estimate->slope.sd == Approx(0.03 / 0.3));
}

TEST_CASE("two pairs are too few to widen by their scatter") {
  const auto estimate = slope_through_origin(std::nullopt, {{0.1, 0.3}, {0.1, -0.1}}, 0.01);
  REQUIRE(estimate);
  CHECK(estimate->slope.sd == Approx(0.01 / std::sqrt(0.02)));
}

TEST_CASE("a prior counts as much as its uncertainty says") {
  const Slope prior{1.0, 0.1};
  const auto alone = slope_through_origin(prior, {{0.0, 0.5}}, 0.02);
  REQUIRE(alone);
  CHECK(alone->slope.mean == 1.0);
  CHECK(alone->pairs == 0);
  // One pair exactly as good as the prior: half way, and √2 better.
  const auto halved = slope_through_origin(prior, {{0.2, 0.24}}, 0.02);
  REQUIRE(halved);
  CHECK(halved->slope.mean == Approx(1.1));
  CHECK(halved->slope.sd == Approx(0.1 / std::sqrt(2.0)));
}

TEST_CASE("neither prior nor pair is no slope") {
  CHECK_FALSE(slope_through_origin(std::nullopt, {}, 0.02));
  CHECK_FALSE(slope_through_origin(std::nullopt, {{0.0, 0.1}}, 0.02));
}

TEST_CASE("extreme uncertainties leave finite figures") {
  for (const double sigma : {1e-300, 1e-9, 1.0, 9999.0}) {
    for (const double sd : {1e-300, 1e-9, 1.0, 9999.0}) {
      const auto estimate = slope_through_origin(Slope{1.0, sd}, {{0.1, 0.1}, {0.2, 0.15}, {0.001, 0.01}}, sigma);
      REQUIRE(estimate);
      CHECK(std::isfinite(estimate->slope.mean));
      CHECK(std::isfinite(estimate->slope.sd));
    }
  }
}

TEST_CASE("the combined slope is the weighted mean of prior and pairs") {
  CHECK(rc::check("as the textbook formula has it", [] {
    const Slope prior{*rc::gen::inRange(1, 30) / 10.0, *rc::gen::inRange(1, 50) / 100.0};
    const double sigma = *rc::gen::inRange(1, 50) / 1000.0;
    const std::vector<Pair> pairs{{*rc::gen::inRange(1, 50) / 100.0, *rc::gen::inRange(-50, 50) / 100.0},
                                  {*rc::gen::inRange(-50, 0) / 100.0, *rc::gen::inRange(-50, 50) / 100.0}};
    double lambda = 1.0 / (prior.sd * prior.sd);
    double sum = prior.mean / (prior.sd * prior.sd);
    for (const auto& pair : pairs) {
      lambda += pair.x * pair.x / (sigma * sigma);
      sum += pair.x * pair.y / (sigma * sigma);
    }
    const auto estimate = slope_through_origin(prior, pairs, sigma);
    RC_ASSERT(estimate.has_value());
    RC_ASSERT(std::abs(estimate->slope.mean - sum / lambda) < 1e-9);
    RC_ASSERT(std::abs(estimate->slope.sd - 1.0 / std::sqrt(lambda)) < 1e-9);
  }));
}
