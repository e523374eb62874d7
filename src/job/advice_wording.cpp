#include "advice_wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace shimwright::job {

namespace {

using quantity::Length;
using quantity::millimetre_text;

std::string mm(double millimetres, int decimals = 2) {
  return millimetre_text(Length(std::llround(millimetres * 1000.0)), decimals);
}

/// Chances as a person says them: of a hundred, never nought or a hundred unless it is proved.
std::string in_hundred(double chance) {
  if (chance > 0.99) {
    return "better than 99";
  }
  return chance < 0.01 ? "less than 1" : fmt::format("{}", std::lround(chance * 100.0));
}

double chance_of(const shim::GaugeFitAnswer& answer, const std::string& shim) {
  if (!answer.seat) {
    return 0.0;
  }
  for (const shim::ShimChance& each : answer.seat->p_best) {
    if (each.shim == shim) {
      return each.p;
    }
  }
  return 0.0;
}

bool has(const shim::GaugeFitAnswer& answer, shim::GaugeFitFinding finding) {
  return std::find(answer.findings.begin(), answer.findings.end(), finding) != answer.findings.end();
}

/// A sentence with a gap where the shim's mark belongs would be read over: say that none is named.
Message none_named() {
  return {SHIMWRIGHT_TEXT("job", "No shim is named: look at the numbers and choose one yourself, with reason."), {}};
}

Message settled_reason(const shim::GaugeFitAnswer& answer, const std::string& shim) {
  const std::string chance = in_hundred(chance_of(answer, shim));
  if (has(answer, shim::GaugeFitFinding::feel_too_coarse)) {
    return {SHIMWRIGHT_TEXT("job",
                            "{0} is the best the feel can tell ({1} in 100): more trials of the same shims would not "
                            "decide it."),
            {shim, chance}};
  }
  if (has(answer, shim::GaugeFitFinding::upper_side_untried)) {
    return {
        SHIMWRIGHT_TEXT("job", "{0} fits ({1} in 100), but nothing thicker was felt tight: a thicker one may go in."),
        {shim, chance}};
  }
  return {SHIMWRIGHT_TEXT("job", "{0} is the one: {1} in 100 by the trials."), {shim, chance}};
}

Message try_reason(const shim::GaugeFitAnswer& answer, const std::string& shim) {
  if (!answer.seat) {
    return {SHIMWRIGHT_TEXT("job", "Try {0}."), {shim}};
  }
  return {SHIMWRIGHT_TEXT("job", "Try {0}: about {1} trials left."),
          {shim, fmt::format("{:.1f}", answer.seat->expected_trials_left)}};
}

std::string spots_text(const std::vector<double>& floats) {
  std::string text;
  for (const double each : floats) {
    text += (text.empty() ? "" : ", ") + mm(each, 3);
  }
  return text;
}

Message question_reason(const shim::FloatAnswer& answer) {
  if (answer.advice == shim::FloatAdvice::confirm_direction) {
    return {
        SHIMWRIGHT_TEXT("job", "The dial ran backwards. If it does so in this set-up, confirm; else set it up anew."),
        {}};
  }
  std::string choices;
  for (const shim::UnitSuggestion& each : answer.suggest) {
    choices +=
        fmt::format("{}{}: {} mm", choices.empty() ? "" : "; ", shim::name_of(each.unit), spots_text(each.float_mm));
  }
  return {SHIMWRIGHT_TEXT("job",
                          "These floats may be of another unit than the one taken ({0}). Enter them again with their "
                          "unit, or confirm that they are right."),
          {choices}};
}

std::string spread_text(const shim::FloatAnswer& answer) {
  return answer.judgement ? mm(answer.judgement->spread_mm, 3) : std::string();
}

Message change_reason(const shim::FloatAnswer& answer) {
  const auto ranked = answer.ranking ? answer.ranking->shims : std::vector<shim::RankedShim>();
  const auto chosen =
      std::find_if(ranked.begin(), ranked.end(), [&](const auto& each) { return each.shim == answer.shim; });
  if (chosen == ranked.end()) {
    return answer.shim ? Message{SHIMWRIGHT_TEXT("job", "Fit {0}."), {*answer.shim}} : none_named();
  }
  return {SHIMWRIGHT_TEXT(
              "job", "Fit {0}: expected float {1} ± {2} mm (95 %), {3} in 100 to be inside the limits at every spot."),
          {chosen->shim, mm(chosen->predicted_mm), mm(1.96 * chosen->u_mm), in_hundred(chosen->p_within)}};
}

Message edge_reason(const shim::DepthAnswer& answer, const std::string& required) {
  if (answer.candidates.empty()) {
    return none_named();
  }
  return {SHIMWRIGHT_TEXT("job", "{0} mm lies on the border between {1} and {2}: measure again, or choose one."),
          {required, answer.candidates.front(), answer.candidates.back()}};
}

Message step_reason(const shim::FloatAnswer& answer) {
  if (!answer.shim) {
    return none_named();
  }
  return {SHIMWRIGHT_TEXT("job",
                          "Fit {0}, one step, and measure again: how much a shim moves this float is not known well "
                          "enough."),
          {*answer.shim}};
}

}  // namespace

std::string bearing_name(Side side) {
  return side == Side::lower ? SHIMWRIGHT_TEXT("word", "large bearing") : SHIMWRIGHT_TEXT("word", "small bearing");
}

Message gone_reason(const std::string& shim) {
  return {SHIMWRIGHT_TEXT("job", "{0} would be the one, but it is not in the tray: put one in, or take another."),
          {shim}};
}

Message no_shim_known_reason(Side side) {
  return {SHIMWRIGHT_TEXT("job",
                          "Kept, but not judged: no shim is chosen for the {0}. Choose it, or measure the one taken "
                          "out, then measure once more."),
          {bearing_name(side)}};
}

Message not_reckonable_reason() {
  return {SHIMWRIGHT_TEXT("job",
                          "Not judged: the tray or an instrument has what nothing can be reckoned with, as two "
                          "shims that measure alike, or an uncertainty or resolution of 0. Put it right in the "
                          "workshop's lists, then measure once more."),
          {}};
}

Message gauge_fit_reason(const shim::GaugeFitAnswer& answer) {
  switch (answer.state) {
    case shim::GaugeFitState::try_shim:
      return answer.shim ? try_reason(answer, *answer.shim) : none_named();
    case shim::GaugeFitState::settled:
      return answer.shim ? settled_reason(answer, *answer.shim) : none_named();
    case shim::GaugeFitState::tray_too_thick:
      return {SHIMWRIGHT_TEXT("job", "Even the thinnest shim is too thick. Look at seating, lever and parts."), {}};
    case shim::GaugeFitState::tray_too_thin:
      return {SHIMWRIGHT_TEXT("job", "Even the thickest shim is too thin. Look at seating, lever and parts."), {}};
    case shim::GaugeFitState::contradiction:
      break;
  }
  return {SHIMWRIGHT_TEXT("job",
                          "Two trials contradict each other. Seat the bearing and try both shims again, or take "
                          "back the wrong one."),
          {}};
}

Message depth_reason(const shim::DepthAnswer& answer, const shim::DepthCase& depth) {
  const std::string required = answer.required_mm ? mm(*answer.required_mm, 3) : std::string();
  switch (answer.state) {
    case shim::DepthState::tilted:
      return {SHIMWRIGHT_TEXT("job",
                              "The depths differ by {0} mm, allowed {1} mm: the bearing or the straightedge is tilted. "
                              "Seat it and measure again."),
              {millimetre_text(answer.spread, 2), millimetre_text(depth.max_spread, 2)}};
    case shim::DepthState::impossible:
      return {SHIMWRIGHT_TEXT("job", "{0} mm of shim cannot be: look for a wrong sign, constant or reference."),
              {required}};
    case shim::DepthState::outside:
      return {SHIMWRIGHT_TEXT("job", "{0} mm lies outside the tray. Measure again, then look at the parts."),
              {required}};
    case shim::DepthState::far:
      return answer.shim
                 ? Message{SHIMWRIGHT_TEXT(
                               "job", "{0} mm is wanted; {1} is the nearest and lies far from it. Choose with reason."),
                           {required, *answer.shim}}
                 : Message{SHIMWRIGHT_TEXT("job",
                                           "{0} mm is wanted and no shim of the tray is near it. Choose with reason."),
                           {required}};
    case shim::DepthState::edge:
      return edge_reason(answer, required);
    case shim::DepthState::shim:
      break;
  }
  return answer.shim ? Message{SHIMWRIGHT_TEXT("job", "Fit {0}: {1} mm is wanted."), {*answer.shim, required}}
                     : none_named();
}

Message float_reason(Conclusion conclusion, const shim::FloatAnswer& answer, const shim::FloatCase& disc_float,
                     Side side, bool trials_disagree) {
  switch (conclusion) {
    case Conclusion::zero_again:
      return {SHIMWRIGHT_TEXT("job", "Floats of both signs: zero was lost. Set the dial to zero and measure again."),
              {}};
    case Conclusion::question:
      return question_reason(answer);
    case Conclusion::measure_again:
      return {SHIMWRIGHT_TEXT("job", "Measure each spot once more: the runs so far do not decide it."), {}};
    case Conclusion::seat_again:
      if (trials_disagree) {
        return {
            SHIMWRIGHT_TEXT("job",
                            "Trials and float disagree: both cannot be right with {0} fitted. Seat the {1} again and "
                            "measure once more before the pack comes off."),
            {disc_float.fitted_shim, bearing_name(side)}};
      }
      return {
          SHIMWRIGHT_TEXT("job",
                          "The spots differ by {0} mm, allowed {1} mm: a seat or a tilt, no shim cures it. Seat the "
                          "{2} again and measure once more."),
          {spread_text(answer), millimetre_text(disc_float.max_spread, 2), bearing_name(side)}};
    case Conclusion::keep:
      return {SHIMWRIGHT_TEXT("job", "Free within {0} to {1} mm at every spot: {2} stays."),
              {millimetre_text(disc_float.lower_limit, 2), millimetre_text(disc_float.upper_limit, 2),
               disc_float.fitted_shim}};
    case Conclusion::change_shim:
      return change_reason(answer);
    case Conclusion::step_shim:
      return step_reason(answer);
    case Conclusion::decide:
      return {SHIMWRIGHT_TEXT(
                  "job", "On the limit, and more runs will not decide it: change the shim, or accept with reason."),
              {}};
    case Conclusion::for_information:
      return {SHIMWRIGHT_TEXT("job", "Float as found, for information."), {}};
    default:
      return {
          SHIMWRIGHT_TEXT("job", "No shim of the tray brings this disc within its limits. Look at seating and parts."),
          {}};
  }
}

}  // namespace shimwright::job
