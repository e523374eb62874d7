#include "advice_wording.h"

#include <catch2/catch.hpp>

namespace shimwright::job::test {

namespace {

using quantity::micrometres;

shim::GaugeFitAnswer gauge_fit(shim::GaugeFitState state, double chance = 0.9) {
  shim::GaugeFitAnswer answer;
  answer.state = state;
  answer.shim = "1.65";
  answer.seat = shim::SeatEstimate{};
  answer.seat->p_best = {{"1.60", 1 - chance}, {"1.65", chance}};
  answer.seat->expected_trials_left = 2.44;
  return answer;
}

std::string said(const Message& message) {
  const std::string sentence = message.in_english();
  CHECK_FALSE(sentence.empty());
  CHECK(sentence.find('{') == std::string::npos);
  return sentence;
}

bool says(const Message& message, const std::string& part) {
  const std::string sentence = said(message);
  INFO(sentence);
  return sentence.find(part) != std::string::npos;
}

shim::FloatCase float_case() {
  shim::FloatCase disc_float;
  disc_float.fitted_shim = "1.60";
  disc_float.lower_limit = micrometres(250);
  disc_float.upper_limit = micrometres(850);
  disc_float.max_spread = micrometres(150);
  return disc_float;
}

shim::FloatAnswer float_answer() {
  shim::FloatAnswer answer;
  answer.shim = "1.95";
  answer.judgement = shim::FloatJudgement{};
  answer.judgement->spread_mm = 0.21;
  answer.ranking = shim::FloatRanking{{{"1.95", 0.58, 0.02, 0.999}}, 1.97};
  return answer;
}

Message float_said(Conclusion conclusion, bool disagree = false) {
  return float_reason(conclusion, float_answer(), float_case(), Side::lower, disagree);
}

}  // namespace

TEST_CASE("Bearings are named by size") {
  CHECK(bearing_name(Side::lower) == "large bearing");
  CHECK(bearing_name(Side::upper) == "small bearing");
}

TEST_CASE("What the trials come to, in a sentence") {
  using shim::GaugeFitState;
  CHECK(says(gauge_fit_reason(gauge_fit(GaugeFitState::try_shim)), "Try 1.65: about 2.4 trials"));
  CHECK(says(gauge_fit_reason(gauge_fit(GaugeFitState::settled)), "90 in 100"));
  CHECK(says(gauge_fit_reason(gauge_fit(GaugeFitState::tray_too_thick)), "thinnest"));
  CHECK(says(gauge_fit_reason(gauge_fit(GaugeFitState::tray_too_thin)), "thickest"));
  CHECK(says(gauge_fit_reason(gauge_fit(GaugeFitState::contradiction)), "contradict"));
}

TEST_CASE("A chance is never nought or a hundred") {
  using shim::GaugeFitState;
  CHECK(says(gauge_fit_reason(gauge_fit(GaugeFitState::settled, 0.9999)), "better than 99 in 100"));
  CHECK(says(gauge_fit_reason(gauge_fit(GaugeFitState::settled, 0.001)), "less than 1 in 100"));
}

TEST_CASE("A settled shim that is not sure says why") {
  auto coarse = gauge_fit(shim::GaugeFitState::settled);
  coarse.findings = {shim::GaugeFitFinding::feel_too_coarse};
  CHECK(says(gauge_fit_reason(coarse), "feel"));
  auto untried = gauge_fit(shim::GaugeFitState::settled);
  untried.findings = {shim::GaugeFitFinding::upper_side_untried};
  CHECK(says(gauge_fit_reason(untried), "nothing thicker"));
}

TEST_CASE("What the depths come to, in a sentence") {
  using shim::DepthState;
  shim::DepthCase depth;
  depth.max_spread = micrometres(100);
  shim::DepthAnswer answer;
  answer.spread = micrometres(150);
  answer.required_mm = 1.8725;
  answer.candidates = {"1.80", "1.95"};
  const auto said_of = [&](DepthState state) {
    answer.state = state;
    return depth_reason(answer, depth);
  };
  CHECK(says(said_of(DepthState::tilted), "differ by 0.15 mm, allowed 0.10 mm"));
  CHECK(says(said_of(DepthState::impossible), "wrong sign, constant or reference"));
  CHECK(says(said_of(DepthState::outside), "outside the tray"));
  CHECK(says(said_of(DepthState::edge), "between 1.80 and 1.95"));
  CHECK(says(said_of(DepthState::far), "no shim of the tray"));
  answer.shim = "1.80";
  CHECK(says(said_of(DepthState::far), "1.80 is the nearest"));
  CHECK(says(said_of(DepthState::shim), "Fit 1.80"));
}

TEST_CASE("What a float comes to, in a sentence") {
  CHECK(says(float_said(Conclusion::zero_again), "zero was lost"));
  CHECK(says(float_said(Conclusion::measure_again), "once more"));
  CHECK(says(float_said(Conclusion::seat_again), "differ by 0.210 mm, allowed 0.15 mm"));
  CHECK(says(float_said(Conclusion::seat_again, true), "Trials and float disagree"));
  CHECK(says(float_said(Conclusion::seat_again, true), "Seat the large bearing again"));
  CHECK(says(float_said(Conclusion::keep), "1.60 stays"));
  CHECK(says(float_said(Conclusion::keep), "0.25 to 0.85 mm"));
  CHECK(says(float_said(Conclusion::change_shim), "Fit 1.95: expected float 0.58 ± 0.04 mm (95 %)"));
  CHECK(says(float_said(Conclusion::step_shim), "one step"));
  CHECK(says(float_said(Conclusion::decide), "On the limit"));
  CHECK(says(float_said(Conclusion::no_shim), "No shim of the tray"));
  CHECK(says(float_said(Conclusion::for_information), "as found"));
}

TEST_CASE("Where the engine names no shim, no sentence has a gap for one") {
  const auto names_none = [](const Message& message) { return says(message, "No shim is named"); };
  auto trials = gauge_fit(shim::GaugeFitState::try_shim);
  trials.shim.reset();
  CHECK(names_none(gauge_fit_reason(trials)));
  trials.state = shim::GaugeFitState::settled;
  CHECK(names_none(gauge_fit_reason(trials)));
  shim::DepthAnswer depths;
  depths.required_mm = 1.8725;
  depths.state = shim::DepthState::edge;
  CHECK(names_none(depth_reason(depths, {})));
  depths.state = shim::DepthState::shim;
  CHECK(names_none(depth_reason(depths, {})));
  auto disc_float = float_answer();
  disc_float.shim.reset();
  CHECK(names_none(float_reason(Conclusion::change_shim, disc_float, float_case(), Side::lower, false)));
  CHECK(names_none(float_reason(Conclusion::step_shim, disc_float, float_case(), Side::lower, false)));
}

TEST_CASE("Where the trials left are not reckoned, none are named") {
  auto trials = gauge_fit(shim::GaugeFitState::try_shim);
  trials.seat.reset();
  CHECK(said(gauge_fit_reason(trials)) == "Try 1.65.");
}

TEST_CASE("A question of the engine says what the numbers may be") {
  auto answer = float_answer();
  answer.advice = shim::FloatAdvice::confirm_unit;
  answer.suggest = {{shim::SuggestedUnit::hundredths, {0.55, 0.54}}, {shim::SuggestedUnit::thou, {1.397, 1.372}}};
  const auto sentence = said(float_reason(Conclusion::question, answer, float_case(), Side::lower, false));
  CHECK(sentence.find("hundredths: 0.550, 0.540 mm; thou: 1.397, 1.372 mm") != std::string::npos);
  answer.advice = shim::FloatAdvice::confirm_direction;
  CHECK(says(float_reason(Conclusion::question, answer, float_case(), Side::lower, false), "backwards"));
}

}  // namespace shimwright::job::test
