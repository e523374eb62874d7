#include "shimwright/metrology/harmonic.h"

#include <cmath>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

using namespace shimwright::metrology;

namespace {

constexpr double degree = 3.14159265358979323846 / 180.0;

double harmonic_at(double angle_deg, double mean, double amplitude, double high_at_deg) {
  return mean + amplitude * std::cos((angle_deg - high_at_deg) * degree);
}

}  // namespace

TEST_CASE("three spots 120 degrees apart give the harmonic through them") {
  const Tilt tilt = fit_tilt({{90.0, 0.93}, {210.0, 0.90}, {330.0, 0.96}});
  CHECK(tilt.amplitude_mm == Approx(0.0346410161514));
  REQUIRE(tilt.high_at_deg);
  CHECK(std::abs(std::remainder(*tilt.high_at_deg, 360.0)) < 1e-6);
}

TEST_CASE("four spots give the least-squares harmonic: half the differences across") {
  // For evenly spaced angles a = (2/n) Σ f cos θ and b = (2/n) Σ f sin θ, the first Fourier coefficients.
  const Tilt tilt = fit_tilt({{0.0, 0.50}, {90.0, 0.44}, {180.0, 0.42}, {270.0, 0.44}});
  CHECK(tilt.amplitude_mm == Approx(0.04));
  REQUIRE(tilt.high_at_deg);
  CHECK(std::abs(std::remainder(*tilt.high_at_deg, 360.0)) < 1e-6);
}

TEST_CASE("no tilt has no direction") {
  const Tilt tilt = fit_tilt({{0.0, 0.5}, {120.0, 0.5}, {240.0, 0.5}});
  CHECK(tilt.amplitude_mm < 1e-12);
  CHECK_FALSE(tilt.high_at_deg);
}

TEST_CASE("angles that nearly coincide give finite figures") {
  const Tilt tilt = fit_tilt({{0.0, 0.1}, {1e-7, 0.5}, {2e-7, 0.9}});
  CHECK(std::isfinite(tilt.amplitude_mm));
  const Tilt single = fit_tilt({{10.0, 0.1}, {10.0, 0.3}, {10.0, 0.5}});
  CHECK(single.amplitude_mm == 0.0);
  CHECK_FALSE(single.high_at_deg);
}

TEST_CASE("any tilt is found again, whichever way the angles are counted") {
  CHECK(rc::check("a harmonic is its own fit", [] {
    const double mean = *rc::gen::inRange(-500, 500) / 1000.0;
    const double amplitude = *rc::gen::inRange(1, 500) / 1000.0;
    const double high = *rc::gen::inRange(0, 359);
    const double turn = 360.0 * *rc::gen::inRange(-3, 3);
    std::vector<AngledValue> values;
    for (const double angle : {10.0, 95.0, 170.0, 260.0, 301.0}) {
      values.push_back({angle + turn, harmonic_at(angle, mean, amplitude, high)});
    }
    const Tilt tilt = fit_tilt(values);
    RC_ASSERT(std::abs(tilt.amplitude_mm - amplitude) < 1e-9);
    RC_ASSERT(tilt.high_at_deg.has_value());
    RC_ASSERT(*tilt.high_at_deg >= 0.0);
    RC_ASSERT(*tilt.high_at_deg < 360.0);
    RC_ASSERT(std::abs(std::remainder(*tilt.high_at_deg - high, 360.0)) < 1e-5);
  }));
}
