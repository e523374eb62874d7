#include "judge_float.h"

#include <algorithm>
#include <cmath>

#include "advice_wording.h"
#include "round.h"
#include "shimwright/job/questions.h"
#include "tray_steps.h"

namespace shimwright::job {

namespace {

using quantity::in_millimetres;
using quantity::Length;

struct Confirmations {
  bool unit = false;
  bool direction = false;
};

/// What was confirmed holds for the runs it was said of: a new series asks again.
Confirmations confirmations(const JobState& state, const sheet::Step& step) {
  Confirmations confirmed;
  for (const Entry* entry : round_entries(state, step)) {
    if (std::holds_alternative<SeriesBegun>(entry->body)) {
      confirmed = {};
    }
    if (const auto* each = std::get_if<Confirmed>(&entry->body)) {
      confirmed.unit = confirmed.unit || each->question == "unit_in_doubt";
      confirmed.direction = confirmed.direction || each->question == "dial_reversed";
    }
  }
  return confirmed;
}

bool seated_again(const JobState& state, const sheet::Step& step) {
  for (const Entry* entry : round_entries(state, step)) {
    const auto* series = std::get_if<SeriesBegun>(&entry->body);
    if (series != nullptr && series->reason == SeriesReason::seated_again) {
      return true;
    }
  }
  return false;
}

/// The repeatability the runs are judged with: as the workshop tested it, the coarsest where several dials were used;
/// the sheet's speaks for a dial that was not tested.
double repeatability_mm(const std::vector<std::vector<const FloatRun*>>& runs, double by_sheet_mm) {
  std::optional<double> coarsest;
  for (const auto& spot : runs) {
    for (const FloatRun* run : spot) {
      const bool tested = run->instrument && run->instrument->repeatability;
      const double of_run = tested ? static_cast<double>(*run->instrument->repeatability) / 1e6 : by_sheet_mm;
      coarsest = std::max(coarsest.value_or(of_run), of_run);
    }
  }
  return coarsest.value_or(by_sheet_mm);
}

/// Runs of one series are taken with one dial as a rule; where not, the coarsest speaks for all.
void take_indicator(shim::FloatCase& disc_float, const FloatRun& run) {
  if (run.instrument) {
    disc_float.resolution_mm = std::max(disc_float.resolution_mm, in_millimetres(Length(run.instrument->resolution)));
    disc_float.mpe_mm = std::max(disc_float.mpe_mm, in_millimetres(Length(run.instrument->permissible_error)));
  }
}

/// The shim chosen last for a side, as it was that day.
std::optional<TrayShim> chosen_shim(const JobState& state, Side side) {
  const auto chosen = state.shims.find(side);
  std::optional<TrayShim> found;
  for (const Entry* entry : state.live()) {
    const auto* each = std::get_if<ShimChosen>(&entry->body);
    if (chosen != state.shims.end() && each != nullptr && each->side == side && each->shim == chosen->second) {
      found = TrayShim{each->shim, each->thickness, each->u_mm, std::nullopt};
    }
  }
  return found;
}

/// The mark by which the shim under the disc goes in `tray`; put back into it where it has left it since. Nothing where
/// no shim is known.
std::optional<std::string> fitted_shim(const JobState& state, const sheet::Step& step, bool as_found,
                                       std::vector<TrayShim>& tray) {
  const auto chosen = as_found ? std::nullopt : chosen_shim(state, step.its_side());
  if (chosen) {
    return keep_in_tray(tray, *chosen);
  }
  const sheet::Step* old = step_with_role(*state.sheets.job, sheet::Role::old_shim, step.side);
  const auto* body = old == nullptr ? nullptr : std::get_if<sheet::ReadStep>(&old->body);
  const Reading* reading = body == nullptr ? nullptr : latest_reading(state, old->id, body->channels.front().id);
  const TrayShim* nearest = nearest_shim(tray, reading == nullptr ? Length() : Length(reading->number.base));
  const bool known = as_found || reading != nullptr;
  return nearest != nullptr && known ? std::optional(nearest->id) : std::nullopt;
}

shim::FloatCase float_case(const JobState& state, const sheet::Step& step, const Context& context, bool as_found,
                           const std::vector<std::vector<const FloatRun*>>& runs) {
  const sheet::FloatSpec& spec = state.sheets.spec->side(step.its_side()).disc_float;
  const Confirmations confirmed = confirmations(state, step);
  shim::FloatCase disc_float;
  disc_float.lower_limit = spec.least;
  disc_float.upper_limit = spec.most;
  disc_float.target = spec.target;
  disc_float.max_spread = spec.max_spread;
  disc_float.repeatability_mm = repeatability_mm(runs, spec.repeatability_mm);
  disc_float.guard_factor = spec.guard_factor;
  disc_float.unit_confirmed = confirmed.unit;
  disc_float.direction_confirmed = confirmed.direction;
  disc_float.history_u_mm = spec.history_u_mm;
  if (spec.sensitivity && !as_found) {
    disc_float.sensitivity = shim::SensitivityPrior{spec.sensitivity->mean, spec.sensitivity->sd};
  }
  const auto history = context.history.find(step.its_side());
  if (history != context.history.end() && !as_found) {
    for (const Pair& pair : history->second) {
      disc_float.history.push_back({pair.shim_change, pair.float_change});
    }
  }
  for (std::size_t spot = 0; spot < runs.size(); ++spot) {
    shim::FloatSpot& place = disc_float.spots.emplace_back();
    place.angle_deg = spec.spot_angles_deg[spot];
    for (const FloatRun* run : runs[spot]) {
      place.runs.push_back({Length(run->rest.base), Length(run->lifted.base)});
      take_indicator(disc_float, *run);
    }
  }
  return disc_float;
}

ReadingVerdict as_reading_verdict(metrology::Verdict verdict) {
  switch (verdict) {
    case metrology::Verdict::within:
      return ReadingVerdict::within;
    case metrology::Verdict::too_small:
      return ReadingVerdict::too_small;
    case metrology::Verdict::too_large:
      return ReadingVerdict::too_large;
    case metrology::Verdict::on_limit:
    case metrology::Verdict::mixed:
      return ReadingVerdict::on_limit;
  }
  return ReadingVerdict::none;
}

Conclusion plain_conclusion(shim::FloatAdvice advice) {
  switch (advice) {
    case shim::FloatAdvice::zero_again:
      return Conclusion::zero_again;
    case shim::FloatAdvice::confirm_direction:
    case shim::FloatAdvice::confirm_unit:
      return Conclusion::question;
    case shim::FloatAdvice::measure_again:
      return Conclusion::measure_again;
    case shim::FloatAdvice::seat_again:
      return Conclusion::seat_again;
    case shim::FloatAdvice::keep:
      return Conclusion::keep;
    case shim::FloatAdvice::decide:
      return Conclusion::decide;
    case shim::FloatAdvice::step:
      return Conclusion::step_shim;
    case shim::FloatAdvice::no_shim:
      return Conclusion::no_shim;
    case shim::FloatAdvice::change:
      return Conclusion::change_shim;
  }
  return Conclusion::no_shim;
}

bool each_spot_often_enough(const std::vector<std::vector<const FloatRun*>>& runs, int least) {
  return std::all_of(runs.begin(), runs.end(),
                     [&](const auto& spot) { return static_cast<int>(spot.size()) >= least; });
}

bool keeps_or_changes(Conclusion conclusion) {
  return conclusion == Conclusion::keep || conclusion == Conclusion::change_shim || conclusion == Conclusion::step_shim;
}

struct Outcome {
  Conclusion conclusion = Conclusion::question;
  bool trials_disagree = false;
};

Outcome outcome(const JobState& state, const sheet::Step& step, const shim::FloatAnswer& answer,
                const std::optional<shim::CrossCheckAnswer>& cross_check,
                const std::vector<std::vector<const FloatRun*>>& runs, bool as_found) {
  Outcome found{plain_conclusion(answer.advice), false};
  if (as_found) {
    const bool open = found.conclusion == Conclusion::zero_again || found.conclusion == Conclusion::question;
    return {open ? found.conclusion : Conclusion::for_information, false};
  }
  found.trials_disagree = cross_check && cross_check->state == shim::CrossCheckState::disagree;
  if (found.trials_disagree && keeps_or_changes(found.conclusion) && !seated_again(state, step)) {
    found.conclusion = Conclusion::seat_again;
  } else if (found.conclusion == Conclusion::keep &&
             !each_spot_often_enough(runs, state.sheets.spec->side(step.its_side()).disc_float.least_runs)) {
    found.conclusion = Conclusion::measure_again;
  }
  return found;
}

void keep_numbers(Advised& advised, const shim::FloatJudgement& judgement) {
  advised.mean = std::llround(judgement.mean_mm * 1000.0);
  for (const double each : judgement.float_mm) {
    advised.spot_floats.push_back(std::llround(each * 1000.0));
  }
  for (const metrology::Verdict each : judgement.spot_verdicts) {
    advised.spot_verdicts.push_back(as_reading_verdict(each));
  }
  const double largest = *std::max_element(judgement.u_spot_mm.begin(), judgement.u_spot_mm.end());
  advised.expanded_u = static_cast<std::int64_t>(std::ceil(1.96 * largest * 1000.0));
}

std::optional<Length> turn_of(const Context& context, const std::vector<std::vector<const FloatRun*>>& runs) {
  const auto& used = runs.front().back()->instrument;
  for (const Instrument& each : context.instruments) {
    if (used && each.id == used->id) {
      return each.turn;
    }
  }
  return std::nullopt;
}

std::vector<Question> float_questions(const JobState& state, const sheet::Step& step, const Context& context,
                                      const Advised& advised, const shim::FloatJudgement& judgement,
                                      std::optional<Length> turn) {
  if (advised.conclusion == Conclusion::for_information && advised.mean) {
    return as_found_questions(state, step.its_side(), Length(*advised.mean), context);
  }
  std::vector<Question> questions;
  const auto slope = judgement.sensitivity ? std::optional(judgement.sensitivity->slope.mean) : std::nullopt;
  if (turn) {
    if (auto missed = turn_missed(state, step, advised.spot_floats, slope, *turn)) {
      questions.push_back(*std::move(missed));
    }
  }
  if (auto exchanged = shims_exchanged(state, step.its_side(), as_reading_verdict(judgement.verdict), context)) {
    questions.push_back(*std::move(exchanged));
  }
  return questions;
}

Question engine_question(const shim::FloatAnswer& answer, const Message& reason) {
  return {answer.advice == shim::FloatAdvice::confirm_direction ? "dial_reversed" : "unit_in_doubt", reason};
}

}  // namespace

int present_series(const JobState& state, const sheet::Step& step, int spot) {
  int series = 1;
  for (const Entry* entry : round_entries(state, step)) {
    const auto* begun = std::get_if<SeriesBegun>(&entry->body);
    if (begun != nullptr && std::find(begun->spots.begin(), begun->spots.end(), spot) != begun->spots.end()) {
      series = begun->series;
    }
  }
  return series;
}

std::vector<std::vector<const FloatRun*>> present_runs(const JobState& state, const sheet::Step& step) {
  std::vector<std::vector<const FloatRun*>> runs;
  if (!step.side) {
    return runs;
  }
  runs.resize(state.sheets.spec->side(*step.side).disc_float.spot_angles_deg.size());
  for (std::size_t spot = 0; spot < runs.size(); ++spot) {
    const int series = present_series(state, step, static_cast<int>(spot) + 1);
    for (const Entry* entry : round_entries(state, step)) {
      const auto* run = std::get_if<FloatRun>(&entry->body);
      if (run != nullptr && run->spot == static_cast<int>(spot) + 1 && run->series == series) {
        runs[spot].push_back(run);
      }
    }
  }
  return runs;
}

Result<std::optional<Judgement>> judge_float(const JobState& state, const sheet::Step& step, const Context& context) {
  const auto runs = present_runs(state, step);
  if (std::any_of(runs.begin(), runs.end(), [](const auto& spot) { return spot.empty(); })) {
    return std::nullopt;
  }
  const bool as_found = std::get<sheet::FloatStep>(step.body).as_found;
  const auto today = tray_of(state, step.its_side(), context);
  auto tray = today;
  auto fitted = fitted_shim(state, step, as_found, tray);
  if (!fitted) {
    Judgement judgement;
    judgement.advised = not_judged(state, step, no_shim_known_reason(step.its_side()));
    return judgement;
  }
  Judgement judgement;
  shim::FloatCase disc_float = float_case(state, step, context, as_found, runs);
  disc_float.fitted_shim = *std::move(fitted);
  judgement.engine_case.disc_float = disc_float;
  if (!as_found) {
    judgement.engine_case.gauge_fit = gauge_fit_case(state, step.its_side(), tray);
  }
  judgement.engine_case.tray = engine_tray(tray);
  const auto checked = shim::checked(judgement.engine_case);
  if (!checked) {
    return tl::make_unexpected(checked.error());
  }
  judgement.answer = shim::advise(*checked);
  if (!judgement.answer.disc_float) {
    return std::nullopt;
  }
  const shim::FloatAnswer& answer = *judgement.answer.disc_float;
  const Outcome found = outcome(state, step, answer, judgement.answer.cross_check, runs, as_found);
  Advised& advised = judgement.advised;
  advised = advised_on(state, step, judgement.engine_case, judgement.answer);
  advised.conclusion = found.conclusion;
  if (!as_found) {  // whose shim was fitted by somebody else, and may not even be measured yet
    advised.shim = answer.shim;
  }
  advised.reason = float_reason(found.conclusion, answer, disc_float, step.its_side(), found.trials_disagree);
  say_where_gone(advised, today);
  if (!as_found && judgement.answer.cross_check &&
      judgement.answer.cross_check->state != shim::CrossCheckState::unknown) {
    advised.trials_agree = judgement.answer.cross_check->state == shim::CrossCheckState::agree;
  }
  if (answer.judgement) {
    keep_numbers(advised, *answer.judgement);
    advised.questions = float_questions(state, step, context, advised, *answer.judgement, turn_of(context, runs));
  } else if (found.conclusion == Conclusion::question) {
    advised.questions.push_back(engine_question(answer, advised.reason));
  }
  return judgement;
}

}  // namespace shimwright::job
