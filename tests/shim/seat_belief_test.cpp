#include "seat_belief.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "reference_gauge_fit.h"
#include "shim_cases.h"
#include "shimwright/metrology/normal.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;
using shimwright::metrology::normal_cdf;

TEST_CASE("a flat belief is even over the whole grid") {
  const Tray tray = twelve();
  const SeatModel model = seat_model(tray, flat_case(100));
  const auto belief = SeatBelief::after_trials(model, flat_case(100));
  REQUIRE(belief);
  CHECK(belief->below(std::int64_t{1100}) == 0.0);
  CHECK(belief->below(std::int64_t{1800}) == Approx(0.5));
  CHECK(belief->below(1800.5) == Approx(0.5 + 0.5 / 1400.0));
  CHECK(belief->below(5000.0) == Approx(1.0));
  CHECK(belief->below(-5000.0) == 0.0);
  CHECK(belief->mean_um() == Approx(1800.0));
  CHECK(belief->quantile_um(0.025) == Approx(1135.0));
  CHECK(belief->quantile_um(0.975) == Approx(2465.0));
}

TEST_CASE("a prior keeps one part in twenty flat") {
  const Tray tray = twelve();
  GaugeFitCase gauge_fit = flat_case(100);
  gauge_fit.prior = SeatPrior{1.8, 0.05};
  const auto belief = SeatBelief::after_trials(seat_model(tray, gauge_fit), gauge_fit);
  REQUIRE(belief);
  const double within_one_sd = belief->between({1750.0, 1850.0});
  CHECK(within_one_sd == Approx(0.95 * (normal_cdf(1.0) - normal_cdf(-1.0)) + 0.05 * 100.0 / 1400.0).epsilon(1e-4));
}

TEST_CASE("a prior far from every shim leaves a belief at the near end") {
  const Tray tray = twelve();
  for (const double mean : {-9000.0, 9000.0}) {
    GaugeFitCase gauge_fit = flat_case(100);
    gauge_fit.prior = SeatPrior{mean, 0.01};
    const auto belief = SeatBelief::after_trials(seat_model(tray, gauge_fit), gauge_fit);
    REQUIRE(belief);
    CHECK(belief->below(5000.0) == Approx(1.0));
    const double near_end = mean < 0.0 ? belief->between({1100.0, 1101.0}) : belief->between({2499.0, 2500.0});
    CHECK(near_end > 0.9);
  }
}

TEST_CASE("what was felt cuts the belief where it says") {
  const Tray tray = even_tray(12, 1200, 100, 0.0001);
  const auto after = [&](Fit fit) {
    const GaugeFitCase gauge_fit = with_trials(flat_case(100, 0.001), {{"1700", fit}});
    return SeatBelief::after_trials(seat_model(tray, gauge_fit), gauge_fit);
  };
  const auto tight = after(Fit::tight);
  const auto snug = after(Fit::snug);
  const auto loose = after(Fit::loose);
  REQUIRE((tight && snug && loose));
  CHECK(tight->below(1710.0) == Approx(1.0));
  CHECK(tight->below(1690.0) == Approx(590.0 / 600.0).epsilon(0.001));
  CHECK(snug->between({1690.0, 1810.0}) == Approx(1.0));
  CHECK(loose->below(1790.0) < 1e-12);
}

TEST_CASE("half of the belief lies below a shim whose seat is exactly its own") {
  // Φ is symmetric, so tight and loose of the same edge share it evenly.
  const Tray tray = twelve();
  const GaugeFitCase gauge_fit = with_trials(flat_case(100), {{"1600", Fit::loose}, {"1700", Fit::tight}});
  const auto belief = SeatBelief::after_trials(seat_model(tray, gauge_fit), gauge_fit);
  REQUIRE(belief);
  CHECK(belief->below(1700.0) == Approx(0.5).margin(0.001));
}

TEST_CASE("the belief is the plain product of its factors") {
  CHECK(rc::check("as in the reference", [] {
    const Tray tray = even_tray(6, 1200, *rc::gen::inRange(20, 120));
    GaugeFitCase gauge_fit = flat_case(*rc::gen::inRange(10, 150), *rc::gen::inRange(2, 60) / 1000.0);
    if (*rc::gen::arbitrary<bool>()) {
      gauge_fit.prior = SeatPrior{*rc::gen::inRange(1100, 2000) / 1000.0, *rc::gen::inRange(50, 300) / 1000.0};
    }
    const std::size_t shim = *rc::gen::inRange<std::size_t>(0, 5);
    gauge_fit.trials = {{tray[shim].id, Fit::tight}, {tray[shim / 2].id, Fit::snug}, {tray[0].id, Fit::loose}};
    gauge_fit.trials.resize(*rc::gen::inRange<std::size_t>(0, 3));
    const auto belief = SeatBelief::after_trials(seat_model(tray, gauge_fit), gauge_fit);
    RC_PRE(belief.has_value());
    const shimwright::reference::GaugeFit reference(tray, gauge_fit);
    for (const double position : {1200.0, 1287.25, 1333.0, 1500.5}) {
      RC_ASSERT(std::abs(belief->below(position) - reference.belief_below(position)) < 1e-9);
    }
  }));
}
