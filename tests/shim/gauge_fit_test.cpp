#include "shimwright/shim/gauge_fit.h"

#include <algorithm>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

GaugeFitAnswer after(const Tray& tray, GaugeFitCase gauge_fit, std::vector<Trial> trials) {
  return advise_gauge_fit(tray, with_trials(std::move(gauge_fit), std::move(trials)));
}

}  // namespace

TEST_CASE("a contradiction answers nothing else") {
  const auto answer = after(twelve(), flat_case(100), {{"1600", Fit::tight}, {"1800", Fit::snug}});
  CHECK(answer.state == GaugeFitState::contradiction);
  CHECK(answer.contradictions == std::vector<ContradictingTrials>{{1, 0}});
  CHECK_FALSE(answer.shim);
  CHECK_FALSE(answer.seat);
  CHECK(answer.findings.empty());
}

TEST_CASE("a shim felt snug with the next one tight is settled") {
  const auto answer = after(twelve(), flat_case(100), {{"1800", Fit::tight}, {"1700", Fit::snug}});
  CHECK(answer.state == GaugeFitState::settled);
  CHECK(answer.shim == "1700");
  CHECK(answer.findings.empty());
  REQUIRE(answer.seat);
  CHECK(answer.seat->expected_trials_left == 0.0);
  CHECK(answer.seat->step_down_trials_left == 0.0);
}

TEST_CASE("a tray that ends too soon is said so, at either end") {
  const auto thick = after(twelve(), flat_case(100), {{"1200", Fit::tight}});
  CHECK(thick.state == GaugeFitState::tray_too_thick);
  CHECK_FALSE(thick.shim);
  const auto thin = after(twelve(), flat_case(100), {{"2300", Fit::loose}});
  CHECK(thin.state == GaugeFitState::tray_too_thin);
  CHECK_FALSE(thin.shim);
}

TEST_CASE("a tray of one is tried, and then it fits or the tray ends") {
  const Tray one = even_tray(1, 1500, 1);
  CHECK(after(one, flat_case(100), {}).shim == "1500");
  CHECK(after(one, flat_case(100), {{"1500", Fit::snug}}).state == GaugeFitState::settled);
  CHECK(after(one, flat_case(100), {{"1500", Fit::tight}}).state == GaugeFitState::tray_too_thick);
  CHECK(after(one, flat_case(100), {{"1500", Fit::loose}}).state == GaugeFitState::tray_too_thin);
}

TEST_CASE("thick to thin goes down while everything is tight, whatever else is known") {
  GaugeFitCase gauge_fit = flat_case(100);
  gauge_fit.order = TrialOrder::thick_to_thin;
  gauge_fit.prior = SeatPrior{1.35, 0.02};
  CHECK(after(twelve(), gauge_fit, {}).shim == "2300");
  CHECK(after(twelve(), gauge_fit, {{"2300", Fit::tight}}).shim == "2200");
  CHECK(after(twelve(), gauge_fit, {{"1800", Fit::tight}}).shim == "1700");
  const auto turned = after(twelve(), gauge_fit, {{"1400", Fit::tight}, {"1300", Fit::snug}});
  CHECK(turned.state == GaugeFitState::settled);
  CHECK(turned.shim == "1300");
  gauge_fit.prior.reset();
  const auto end = after(twelve(), gauge_fit, {{"1200", Fit::tight}});
  CHECK(end.state == GaugeFitState::tray_too_thick);
}

TEST_CASE("going down by hand is counted over what is still below") {
  const auto answer = after(twelve(), flat_case(100), {{"1400", Fit::tight}});
  REQUIRE(answer.seat);
  // 1.30, 1.20 and the region below all, each as likely: 1, 2 and 2 trials; 1.40 up hold next to nothing.
  CHECK(answer.seat->step_down_trials_left == Approx(5.0 / 3.0).margin(0.02));
}

TEST_CASE("a shim tried three times without an end is taken as settled where it is proved") {
  const Tray fine = even_tray(12, 1200, 20);
  const std::vector<Trial> thrice(3, {"1320", Fit::snug});
  const auto answer = after(fine, flat_case(20, 0.020), thrice);
  CHECK(answer.state == GaugeFitState::settled);
  CHECK(answer.shim == "1320");
  CHECK(names(answer.findings) == std::vector<std::string>{"feel_too_coarse"});
  const auto twice = after(fine, flat_case(20, 0.020), {{"1320", Fit::snug}, {"1320", Fit::snug}});
  CHECK(twice.state == GaugeFitState::try_shim);
}

TEST_CASE("a settled shim with nothing tried above it says so") {
  // Snug up to 1.90 with a wide band, the prior far below that: proved, but a thicker one was never felt.
  GaugeFitCase wide = flat_case(200);
  wide.prior = SeatPrior{1.75, 0.012};
  const auto snug = after(twelve(), wide, {{"1700", Fit::snug}});
  CHECK(snug.state == GaugeFitState::settled);
  CHECK(snug.shim == "1700");
  CHECK(names(snug.findings) == std::vector<std::string>{"upper_side_untried"});
  const auto bounded = after(twelve(), wide, {{"1700", Fit::snug}, {"1800", Fit::tight}});
  CHECK(bounded.state == GaugeFitState::settled);
  CHECK(bounded.findings.empty());
}

TEST_CASE("settled on a loose shim alone leaves the upper side untried") {
  GaugeFitCase gauge_fit = flat_case(20, 0.001);
  gauge_fit.prior = SeatPrior{1.76, 0.01};
  const auto answer = after(twelve(), gauge_fit, {{"1700", Fit::loose}});
  CHECK(answer.state == GaugeFitState::settled);
  CHECK(answer.shim == "1700");
  CHECK(names(answer.findings) == std::vector<std::string>{"upper_side_untried"});
}

namespace {

struct Drawn {
  Tray tray;
  GaugeFitCase gauge_fit;
};

Drawn drawn_case(int most_trials = 4) {
  Drawn drawn;
  drawn.tray = even_tray(*rc::gen::inRange(1, 10), 1000, *rc::gen::inRange(20, 150));
  drawn.gauge_fit = flat_case(*rc::gen::inRange(10, 200), *rc::gen::inRange(1, 30) / 1000.0);
  drawn.gauge_fit.order = *rc::gen::element(TrialOrder::fewest, TrialOrder::thick_to_thin);
  const int trials = *rc::gen::inRange(0, most_trials);
  for (int trial = 0; trial < trials; ++trial) {
    const auto shim = *rc::gen::inRange<std::size_t>(0, drawn.tray.size());
    drawn.gauge_fit.trials.push_back({drawn.tray[shim].id, *rc::gen::element(Fit::tight, Fit::snug, Fit::loose)});
  }
  return drawn;
}

/// What a hand without any doubt would feel.
Fit felt(std::int64_t seat_um, std::int64_t thickness_um, std::int64_t band_um) {
  if (thickness_um > seat_um) {
    return Fit::tight;
  }
  return thickness_um > seat_um - band_um ? Fit::snug : Fit::loose;
}

}  // namespace

TEST_CASE("the belief of all regions sums to one") {
  CHECK(rc::check("p_best and both ends", [] {
    const Drawn drawn = drawn_case();
    const auto answer = advise_gauge_fit(drawn.tray, drawn.gauge_fit);
    RC_PRE(answer.seat.has_value());
    double sum = answer.seat->p_tray_too_thick + answer.seat->p_tray_too_thin;
    for (const auto& chance : answer.seat->p_best) {
      RC_ASSERT(chance.p >= 0.0);
      sum += chance.p;
    }
    RC_ASSERT(std::abs(sum - 1.0) < 1e-9);
    RC_ASSERT(answer.seat->low_mm <= answer.seat->mean_mm);
    RC_ASSERT(answer.seat->mean_mm <= answer.seat->high_mm);
  }));
}

TEST_CASE("the order of the tray does not matter") {
  CHECK(rc::check("the answer to a shuffled tray", [] {
    const Drawn drawn = drawn_case();
    Tray shuffled = drawn.tray;
    std::reverse(shuffled.begin(), shuffled.end());
    std::rotate(shuffled.begin(), shuffled.begin() + *rc::gen::inRange<std::ptrdiff_t>(0, std::ssize(shuffled)),
                shuffled.end());
    const AdviseAnswer plain{advise_gauge_fit(drawn.tray, drawn.gauge_fit), {}, {}, {}};
    const AdviseAnswer turned{advise_gauge_fit(shuffled, drawn.gauge_fit), {}, {}, {}};
    RC_ASSERT(write_answer(plain) == write_answer(turned));
  }));
}

TEST_CASE("settled means proved by what was felt, unless the feel is too coarse") {
  CHECK(rc::check("settled exactly when proved", [] {
    const Drawn drawn = drawn_case();
    const auto answer = advise_gauge_fit(drawn.tray, drawn.gauge_fit);
    if (answer.state == GaugeFitState::settled) {
      const bool felt_to_fit =
          std::any_of(drawn.gauge_fit.trials.begin(), drawn.gauge_fit.trials.end(),
                      [&](const Trial& trial) { return trial.shim == *answer.shim && trial.fit != Fit::tight; });
      RC_ASSERT(felt_to_fit);
      RC_ASSERT(answer.seat->expected_trials_left == 0.0);
    }
    if (answer.state == GaugeFitState::try_shim) {
      RC_ASSERT(answer.seat->expected_trials_left >= 1.0);
    }
  }));
}

TEST_CASE("without doubt the advice ends at the thickest shim that lets the gauge in, as soon as promised") {
  CHECK(rc::check("follow the advice to its end", [] {
    const auto count = *rc::gen::inRange(2, 10);
    const auto step = *rc::gen::inRange(60, 150);
    const auto band = *rc::gen::inRange(step, 2 * step);
    const Tray tray = even_tray(count, 1000, step, 0.0001);
    GaugeFitCase gauge_fit = flat_case(band, 0.001);
    gauge_fit.order = *rc::gen::element(TrialOrder::fewest, TrialOrder::thick_to_thin);
    // A seat a quarter of a step or more away from every border, so that no doubt is left.
    const auto region = *rc::gen::inRange(0, count);
    const std::int64_t seat = 1000 + region * step + step / 2;
    GaugeFitAnswer answer = advise_gauge_fit(tray, gauge_fit);
    for (int trial = 0; trial <= count + 1 && answer.state == GaugeFitState::try_shim; ++trial) {
      gauge_fit.trials.push_back({*answer.shim, felt(seat, std::stoll(*answer.shim), band)});
      answer = advise_gauge_fit(tray, gauge_fit);
    }
    RC_ASSERT(answer.state == GaugeFitState::settled);
    RC_ASSERT(*answer.shim == tray[static_cast<std::size_t>(region)].id);
  }));
}
