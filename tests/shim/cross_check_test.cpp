#include "shimwright/shim/cross_check.h"

#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

/// Snug at 1.60, the next one tight: the seat lies from 1.60 to 1.65.
GaugeFitCase seated_at_1600() {
  return with_trials(flat_case(50), {{"1650", Fit::tight}, {"1600", Fit::snug}});
}

CrossCheckAnswer checked_with(FloatAdvice advice, const std::optional<std::string>& shim,
                              const GaugeFitCase& gauge_fit = seated_at_1600(), const std::string& fitted = "1600",
                              const Tray& tray = eighteen()) {
  FloatCase disc_float = three_spots(500, 510, 520);
  disc_float.fitted_shim = fitted;
  FloatAnswer answer;
  answer.advice = advice;
  answer.shim = shim;
  return cross_check(tray, gauge_fit, disc_float, answer);
}

}  // namespace

TEST_CASE("nothing to compare is unknown") {
  CHECK(checked_with(FloatAdvice::decide, std::nullopt).state == CrossCheckState::unknown);
  CHECK(checked_with(FloatAdvice::keep, "1600", flat_case(50)).state == CrossCheckState::unknown);
  const auto contradiction = with_trials(flat_case(50), {{"1500", Fit::tight}, {"1700", Fit::snug}});
  const auto unknown = checked_with(FloatAdvice::keep, "1600", contradiction);
  CHECK(unknown.state == CrossCheckState::unknown);
  CHECK_FALSE(unknown.p_right);
}

TEST_CASE("a shim within a step of where the trials put it agrees") {
  for (const auto* shim : {"1550", "1600", "1650"}) {
    INFO(shim);
    const auto answer = checked_with(FloatAdvice::change, shim);
    CHECK(answer.state == CrossCheckState::agree);
    CHECK(*answer.p_right > 0.95);
  }
  for (const auto* shim : {"1450", "1750", "2000"}) {
    INFO(shim);
    const auto answer = checked_with(FloatAdvice::change, shim);
    CHECK(answer.state == CrossCheckState::disagree);
    CHECK(*answer.p_right < 0.05);
  }
}

TEST_CASE("two steps off agrees only by the widening of 2u") {
  // 1.50 reaches to 1.60 + 2·√109 µm = 1.6209; the belief is about even from 1.60 to 1.65.
  const auto below = checked_with(FloatAdvice::change, "1500");
  CHECK(*below.p_right > 0.3);
  CHECK(*below.p_right < 0.5);
  const auto above = checked_with(FloatAdvice::change, "1700");
  CHECK(*above.p_right > 0.3);
  CHECK(*above.p_right < 0.5);
}

TEST_CASE("the ends of the tray have no bound below and the band above") {
  const Tray tray = even_tray(4, 1500, 100);
  const auto too_thick = with_trials(flat_case(100), {{"1500", Fit::tight}});
  CHECK(*checked_with(FloatAdvice::keep, "1500", too_thick, "1500", tray).p_right == Approx(1.0));
  const auto too_thin = with_trials(flat_case(100), {{"1800", Fit::loose}});
  const double past_the_band = *checked_with(FloatAdvice::keep, "1800", too_thin, "1800", tray).p_right;
  CHECK(past_the_band > 0.05);
  CHECK(past_the_band < 0.5);
  const auto snug = with_trials(flat_case(100), {{"1800", Fit::snug}});
  CHECK(*checked_with(FloatAdvice::keep, "1700", snug, "1700", tray).p_right == Approx(1.0).margin(0.02));
}

TEST_CASE("a step is right where the seat lies that way") {
  const auto wrong_up = checked_with(FloatAdvice::step, "1700", seated_at_1600(), "1650");
  CHECK(wrong_up.state == CrossCheckState::disagree);
  const auto right_down = checked_with(FloatAdvice::step, "1650", seated_at_1600(), "1700");
  CHECK(*right_down.p_right == Approx(1.0));
  const auto right_up = checked_with(FloatAdvice::step, "1600", seated_at_1600(), "1550");
  CHECK(*right_up.p_right > 0.95);
  const auto wrong_down = checked_with(FloatAdvice::step, "1500", seated_at_1600(), "1550");
  CHECK(wrong_down.state == CrossCheckState::disagree);
}
