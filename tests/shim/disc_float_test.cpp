#include "shimwright/shim/disc_float.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

FloatAnswer advised(const FloatCase& disc_float) {
  return advise_float(eighteen(), disc_float);
}

FloatCase without_sensitivity(FloatCase disc_float) {
  disc_float.sensitivity.reset();
  return disc_float;
}

}  // namespace

TEST_CASE("an open question answers nothing but itself") {
  const auto answer = advised(three_spots(520, -550, 500));
  CHECK(answer.advice == FloatAdvice::zero_again);
  CHECK_FALSE(answer.judgement);
  CHECK_FALSE(answer.shim);
  CHECK_FALSE(answer.ranking);
}

TEST_CASE("a float within keeps its shim and says no more of it") {
  FloatCase wrong_way = three_spots(520, 550, 500);
  wrong_way.sensitivity = SensitivityPrior{-1.0, 0.1};
  const auto answer = advised(wrong_way);
  CHECK(answer.advice == FloatAdvice::keep);
  CHECK(answer.shim == "1600");
  CHECK(answer.findings.empty());
  CHECK_FALSE(answer.ranking);
}

TEST_CASE("runs that disagree are measured again before anything else") {
  FloatCase disc_float = three_spots(930, 900, 300);
  disc_float.spots[0].runs.push_back({um(0), um(970)});
  const auto answer = advised(disc_float);
  CHECK(answer.advice == FloatAdvice::measure_again);
  CHECK(holds(answer, FloatFinding::runs_disagree));
  CHECK_FALSE(answer.ranking);
}

TEST_CASE("a tilt is seated again, no shim cures it") {
  CHECK(advised(three_spots(400, 550, 500)).advice == FloatAdvice::keep);
  CHECK(advised(three_spots(399, 550, 500)).advice == FloatAdvice::seat_again);
  FloatCase mixed = three_spots(900, 200, 500);
  mixed.max_spread = um(2000);
  const auto answer = advised(mixed);
  CHECK(answer.advice == FloatAdvice::seat_again);
  CHECK(answer.judgement->verdict == shimwright::metrology::Verdict::mixed);
}

TEST_CASE("on the limit is measured twice, then kept where it is inside and likely") {
  const FloatCase once = three_spots(795, 835, 805);
  const auto first = advised(once);
  CHECK(first.advice == FloatAdvice::measure_again);
  CHECK_FALSE(first.ranking);
  FloatCase twice = measured_twice(three_spots(795, 838, 805));
  const auto kept = advised(twice);
  CHECK(kept.advice == FloatAdvice::keep);
  CHECK(kept.shim == "1600");
  CHECK(holds(kept, FloatFinding::near_limit));
  CHECK(kept.ranking);
  const auto open = advised(measured_twice(three_spots(835, 840, 845)));
  CHECK(open.advice == FloatAdvice::decide);
  CHECK_FALSE(open.shim);
  CHECK(open.ranking);
  const auto outside = advised(measured_twice(three_spots(795, 851, 805)));
  CHECK(outside.advice == FloatAdvice::decide);
}

TEST_CASE("an instrument too coarse for the limits decides nothing") {
  FloatCase coarse = measured_twice(three_spots(550, 550, 550));
  coarse.guard_factor = 40.0;
  const auto answer = advised(coarse);
  CHECK(answer.advice == FloatAdvice::decide);
  CHECK(holds(answer, FloatFinding::too_coarse));
  CHECK_FALSE(holds(answer, FloatFinding::near_limit));
}

TEST_CASE("without a usable sensitivity it is one step the right way, until the tray ends") {
  const auto thicker = advised(without_sensitivity(three_spots(930, 900, 960)));
  CHECK(thicker.advice == FloatAdvice::step);
  CHECK(thicker.shim == "1650");
  CHECK_FALSE(thicker.ranking);
  const auto thinner = advised(without_sensitivity(three_spots(120, 130, 140)));
  CHECK(thinner.shim == "1550");
  FloatCase thickest = without_sensitivity(three_spots(930, 900, 960));
  thickest.fitted_shim = "2150";
  CHECK(advised(thickest).advice == FloatAdvice::no_shim);
  CHECK_FALSE(advised(thickest).shim);
  FloatCase thinnest = without_sensitivity(three_spots(120, 130, 140));
  thinnest.fitted_shim = "1300";
  CHECK(advised(thinnest).advice == FloatAdvice::no_shim);
}

TEST_CASE("a sensitivity of the wrong sign or hardly known is not predicted with") {
  FloatCase disc_float = three_spots(930, 900, 960);
  disc_float.sensitivity = SensitivityPrior{0.0, 0.1};
  const auto wrong = advised(disc_float);
  CHECK(wrong.findings == std::vector<FloatFinding>{FloatFinding::sensitivity_wrong_way});
  CHECK(wrong.advice == FloatAdvice::step);
  disc_float.sensitivity = SensitivityPrior{1.0, 0.51};
  const auto unsure = advised(disc_float);
  CHECK(unsure.findings == std::vector<FloatFinding>{FloatFinding::sensitivity_unsure});
  CHECK(unsure.advice == FloatAdvice::step);
  disc_float.sensitivity = SensitivityPrior{1.0, 0.5};
  CHECK(advised(disc_float).findings != unsure.findings);
  CHECK(advised(disc_float).ranking);
}

TEST_CASE("a doubtful sensitivity is named on the limit too, whatever the advice") {
  FloatCase disc_float = three_spots(835, 840, 845);
  disc_float.sensitivity = SensitivityPrior{-1.0, 0.1};
  const auto once = advised(disc_float);
  CHECK(once.advice == FloatAdvice::measure_again);
  CHECK(holds(once, FloatFinding::sensitivity_wrong_way));
  const auto twice = advised(measured_twice(disc_float));
  CHECK(twice.advice == FloatAdvice::decide);
  CHECK(holds(twice, FloatFinding::sensitivity_wrong_way));
  CHECK_FALSE(twice.ranking);
}

TEST_CASE("a change is advised with its chance, weak where that is below nine in ten") {
  const auto firm = advised(three_spots(930, 900, 960));
  CHECK(firm.advice == FloatAdvice::change);
  CHECK(firm.shim == "2000");
  CHECK_FALSE(holds(firm, FloatFinding::weak_advice));
  FloatCase far = three_spots(1330, 1340, 1350);
  far.sensitivity = SensitivityPrior{1.0, 0.2};
  const auto weak = advised(far);
  REQUIRE(weak.ranking);
  CHECK(weak.ranking->shims.front().p_within < 0.9);
  CHECK(weak.advice == FloatAdvice::change);
  CHECK(holds(weak, FloatFinding::weak_advice));
  FloatCase hopeless = three_spots(2400, 2410, 2420);
  const auto none = advised(hopeless);
  CHECK(none.advice == FloatAdvice::no_shim);
  CHECK_FALSE(none.shim);
  CHECK(none.ranking);
}

TEST_CASE("sizes of a confirmed backwards dial are judged like any others") {
  FloatCase backwards = three_spots(-520, -550, -500);
  backwards.direction_confirmed = true;
  const auto answer = advised(backwards);
  CHECK(answer.advice == FloatAdvice::keep);
  CHECK(answer.judgement->float_mm == std::vector<double>{0.52, 0.55, 0.5});
  CHECK(answer.findings == std::vector<FloatFinding>{FloatFinding::dial_reversed});
}

TEST_CASE("a shim is named with keep, step and change and with nothing else") {
  CHECK(rc::check("advice and shim belong together", [] {
    const auto draw = [] { return *rc::gen::inRange<std::int64_t>(-100, 1500); };
    FloatCase disc_float = three_spots(draw(), draw(), draw());
    disc_float.sensitivity = SensitivityPrior{*rc::gen::inRange(-5, 20) / 10.0, *rc::gen::inRange(1, 20) / 10.0};
    if (*rc::gen::arbitrary<bool>()) {
      disc_float = measured_twice(disc_float);
    }
    const auto answer = advised(disc_float);
    const bool with_shim = answer.advice == FloatAdvice::keep || answer.advice == FloatAdvice::step ||
                           answer.advice == FloatAdvice::change;
    RC_ASSERT(answer.shim.has_value() == with_shim);
    RC_ASSERT(answer.suggest.empty() ==
              (answer.advice != FloatAdvice::confirm_direction && answer.advice != FloatAdvice::confirm_unit));
  }));
}
