#include "shimwright/shim/disc_float.h"

#include <algorithm>

#include "float_judgement.h"
#include "float_ranking.h"
#include "float_spots.h"
#include "sorted_tray.h"

namespace shimwright::shim {

namespace {

using metrology::length_slack_mm;
using metrology::Verdict;

constexpr double enough_for_keeping = 0.9;
constexpr double enough_for_changing = 0.5;
constexpr double firm_advice = 0.9;

/// What a shim does to the float is known well enough to predict with; says in the findings where it is not.
bool sensitivity_usable(const std::optional<metrology::SlopeEstimate>& sensitivity, FloatAnswer& answer) {
  if (!sensitivity) {
    return false;
  }
  if (!(sensitivity->slope.mean > 0.0)) {
    answer.findings.push_back(FloatFinding::sensitivity_wrong_way);
    return false;
  }
  if (sensitivity->slope.mean < 2.0 * sensitivity->slope.sd) {
    answer.findings.push_back(FloatFinding::sensitivity_unsure);
    return false;
  }
  return true;
}

bool every_spot_inside(const FloatCase& disc_float, const FloatJudgement& judgement) {
  const auto limits = limits_of(disc_float);
  return std::all_of(judgement.float_mm.begin(), judgement.float_mm.end(), [&](double float_mm) {
    return float_mm >= limits.lower_mm - length_slack_mm && float_mm <= limits.upper_mm + length_slack_mm;
  });
}

/// One step in the right direction where the size of a right change is not known.
void advise_step(const Tray& tray, const FloatCase& disc_float, Verdict verdict, FloatAnswer& answer) {
  const auto shims = thin_to_thick(tray);
  const std::size_t fitted = index_of(shims, disc_float.fitted_shim);
  const bool thicker = verdict == Verdict::too_large;
  if (thicker ? fitted + 1 == shims.size() : fitted == 0) {
    answer.advice = FloatAdvice::no_shim;
    return;
  }
  answer.advice = FloatAdvice::step;
  answer.shim = shims[thicker ? fitted + 1 : fitted - 1]->id;
}

void advise_best(const FloatCase& disc_float, const FloatRanking& ranking, FloatAnswer& answer) {
  const RankedShim& best = ranking.shims.front();
  if (best.p_within < enough_for_changing) {
    answer.advice = FloatAdvice::no_shim;
    return;
  }
  answer.shim = best.shim;
  answer.advice = best.shim == disc_float.fitted_shim ? FloatAdvice::keep : FloatAdvice::change;
  if (answer.advice == FloatAdvice::change && best.p_within < firm_advice) {
    answer.findings.push_back(FloatFinding::weak_advice);
  }
}

/// On the limit a person decides, unless the float is inside and nearly sure to be.
void advise_on_limit(const FloatCase& disc_float, const FloatJudgement& judgement, bool coarse, FloatAnswer& answer) {
  if (every_spot_inside(disc_float, judgement) && judgement.p_within >= enough_for_keeping && !coarse) {
    answer.findings.push_back(FloatFinding::near_limit);
    answer.advice = FloatAdvice::keep;
    answer.shim = disc_float.fitted_shim;
  } else {
    answer.advice = FloatAdvice::decide;
  }
}

/// Advice 4 to 6: the disc is not within, and what may be wrong is the shim.
void advise_shim(const Tray& tray, const FloatCase& disc_float, const FloatJudgement& judgement, bool coarse,
                 FloatAnswer& answer) {
  const bool usable = sensitivity_usable(judgement.sensitivity, answer);
  const bool on_limit = judgement.verdict == Verdict::on_limit;
  const bool one_run_somewhere = std::any_of(disc_float.spots.begin(), disc_float.spots.end(),
                                             [](const FloatSpot& spot) { return spot.runs.size() < 2; });
  if (on_limit && one_run_somewhere) {
    answer.advice = FloatAdvice::measure_again;
    return;
  }
  if (usable && judgement.sensitivity) {
    answer.ranking = rank_shims(tray, disc_float, judgement, judgement.sensitivity->slope);
  }
  if (on_limit) {
    advise_on_limit(disc_float, judgement, coarse, answer);
  } else if (answer.ranking) {
    advise_best(disc_float, *answer.ranking, answer);
  } else {
    advise_step(tray, disc_float, judgement.verdict, answer);
  }
}

}  // namespace

FloatAnswer advise_float(const Tray& tray, const FloatCase& disc_float) {
  FloatAnswer answer;
  const auto runs = runs_without_question(disc_float, answer);
  if (!runs) {
    return answer;
  }
  const FloatJudgement judgement = judge_float(disc_float, *runs);
  answer.judgement = judgement;
  const bool coarse = too_coarse(disc_float, judgement);
  if (coarse) {
    answer.findings.push_back(FloatFinding::too_coarse);
  }
  const double most_spread = quantity::in_millimetres(disc_float.max_spread);
  if (runs_disagree(disc_float, *runs)) {
    answer.findings.push_back(FloatFinding::runs_disagree);
    answer.advice = FloatAdvice::measure_again;
  } else if (judgement.spread_mm > most_spread + length_slack_mm || judgement.verdict == Verdict::mixed) {
    answer.advice = FloatAdvice::seat_again;
  } else if (judgement.verdict == Verdict::within) {
    answer.advice = FloatAdvice::keep;
    answer.shim = disc_float.fitted_shim;
  } else {
    advise_shim(tray, disc_float, judgement, coarse, answer);
  }
  return answer;
}

}  // namespace shimwright::shim
