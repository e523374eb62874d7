#include "shimwright/metrology/normal.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

using namespace shimwright::metrology;

TEST_CASE("the normal distribution has the values of every table of it") {
  CHECK(normal_cdf(0.0) == Approx(0.5));
  CHECK(normal_cdf(1.0) == Approx(0.841344746068543).epsilon(1e-12));
  CHECK(normal_cdf(1.959963984540054) == Approx(0.975).epsilon(1e-12));
  CHECK(normal_cdf(-1.6448536269514722) == Approx(0.05).epsilon(1e-12));
  CHECK(normal_cdf(-6.0) == Approx(9.865876450376946e-10).epsilon(1e-9));
  CHECK(normal_cdf(-50.0) == 0.0);
  CHECK(normal_cdf(50.0) == 1.0);
}

TEST_CASE("a value without uncertainty is plainly below or not") {
  CHECK(probability_below(1.0, 0.5, 0.0) == 1.0);
  CHECK(probability_below(1.0, 1.5, 0.0) == 0.0);
  CHECK(probability_below(1.0, 1.0, 0.0) == 0.5);
  CHECK(probability_below(1.0, 0.9, 0.1) == Approx(normal_cdf(1.0)));
}

TEST_CASE("the chance to be inside is never negative") {
  CHECK(probability_inside(0.25, 0.85, 0.50, 0.55, 0.01) == Approx(1.0));
  CHECK(probability_inside(0.25, 0.85, 0.10, 1.00, 0.01) == 0.0);
  CHECK(probability_inside(0.25, 0.85, 0.25, 0.25, 0.01) == Approx(0.5));
}

TEST_CASE("the distribution is symmetric and grows") {
  CHECK(rc::check("Φ(z) + Φ(−z) = 1 and Φ grows", [] {
    const double z = *rc::gen::inRange(-8000, 8000) / 1000.0;
    RC_ASSERT(std::abs(normal_cdf(z) + normal_cdf(-z) - 1.0) < 1e-14);
    RC_ASSERT(normal_cdf(z + 0.001) >= normal_cdf(z));
  }));
}
