#include "shimwright/shim/gauge_fit.h"

#include <algorithm>

#include "seat_belief.h"
#include "seat_model.h"
#include "trial_log.h"
#include "trial_planner.h"

namespace shimwright::shim {

namespace {

constexpr int most_tries = 3;
constexpr double tie = 1e-9;

/// What to do next, before it is put into words.
struct Decision {
  std::optional<std::size_t> settled_region;
  std::size_t next_shim = 0;
  double expected_trials = 0.0;
  bool feel_too_coarse = false;
};

double belief_in_region(const SeatModel& model, const SeatBelief& belief, std::size_t region) {
  return belief.below(model.region_to_um(region)) - belief.below(model.region_from_um(region));
}

/// The proved region with the largest belief, of equal ones the thicker.
std::optional<std::size_t> best_proved(const SeatModel& model, const SeatBelief& belief,
                                       const std::vector<bool>& proved) {
  std::optional<std::size_t> best;
  double most = -1.0;
  for (std::size_t region = 0; region < proved.size(); ++region) {
    const double held = belief_in_region(model, belief, region);
    if (proved[region] && held >= most - tie) {
      best = region;
      most = std::max(most, held);
    }
  }
  return best;
}

Decision decide(const SeatModel& model, const SeatBelief& belief, const TrialLog& log, TrialOrder order) {
  const std::vector<bool> proved = log.proved_regions(model);
  const TrialPlanner::Plan plan = TrialPlanner(model, belief, proved).plan();
  const auto below = log.still_below();
  if (order == TrialOrder::thick_to_thin && log.all_tight() && !below.empty()) {
    return {std::nullopt, below.back(), plan.expected_trials, false};
  }
  if (plan.proved) {
    return {plan.region, 0, 0.0, false};
  }
  if (log.times_tried[plan.next_shim] >= most_tries) {
    if (const auto region = best_proved(model, belief, proved)) {
      return {region, 0, 0.0, true};
    }
  }
  return {std::nullopt, plan.next_shim, plan.expected_trials, false};
}

/// Σ belief × trials when going down from the thickest that may still go in.
double step_down_trials(const SeatModel& model, const SeatBelief& belief, const TrialLog& log) {
  const auto below = log.still_below();
  double trials = 0.0;
  for (std::size_t region = 0; region < model.region_count(); ++region) {
    const std::size_t own = model.shim_of_region(region);
    const auto thicker = below.end() - std::upper_bound(below.begin(), below.end(), own);
    const auto needed = region == 0 ? below.size() : std::min(below.size(), 1 + static_cast<std::size_t>(thicker));
    trials += belief_in_region(model, belief, region) * static_cast<double>(needed);
  }
  return trials;
}

SeatEstimate estimate(const SeatModel& model, const SeatBelief& belief, const TrialLog& log, const Decision& decision) {
  SeatEstimate seat;
  seat.mean_mm = belief.mean_um() / 1000.0;
  seat.low_mm = belief.quantile_um(0.025) / 1000.0;
  seat.high_mm = belief.quantile_um(0.975) / 1000.0;
  seat.p_best.reserve(model.size());
  for (std::size_t shim = 0; shim < model.size(); ++shim) {
    seat.p_best.push_back({model.shims[shim]->id, belief_in_region(model, belief, shim + 1)});
  }
  seat.p_tray_too_thick = belief_in_region(model, belief, 0);
  seat.p_tray_too_thin = belief_in_region(model, belief, model.top_region());
  seat.expected_trials_left = decision.expected_trials;
  seat.step_down_trials_left = decision.settled_region ? 0.0 : step_down_trials(model, belief, log);
  return seat;
}

/// Nothing that was felt bounds the seat near the upper end of the settled region.
bool upper_side_untried(const SeatModel& model, const TrialLog& log, std::size_t region) {
  const auto bound = log.lowest_upper_bound_um(model);
  const double reach = 2.0 * model.u_um[model.shim_of_region(region)];
  return !bound || static_cast<double>(*bound - model.region_to_um(region)) > reach;
}

void put_state(const SeatModel& model, const TrialLog& log, const Decision& decision, GaugeFitAnswer& answer) {
  if (decision.feel_too_coarse) {
    answer.findings.push_back(GaugeFitFinding::feel_too_coarse);
  }
  if (!decision.settled_region) {
    answer.state = GaugeFitState::try_shim;
    answer.shim = model.shims[decision.next_shim]->id;
  } else if (*decision.settled_region == 0) {
    answer.state = GaugeFitState::tray_too_thick;
  } else if (*decision.settled_region == model.top_region()) {
    answer.state = GaugeFitState::tray_too_thin;
  } else {
    answer.state = GaugeFitState::settled;
    answer.shim = model.shims[model.shim_of_region(*decision.settled_region)]->id;
    if (upper_side_untried(model, log, *decision.settled_region)) {
      answer.findings.push_back(GaugeFitFinding::upper_side_untried);
    }
  }
}

}  // namespace

GaugeFitAnswer advise_gauge_fit(const Tray& tray, const GaugeFitCase& gauge_fit) {
  const SeatModel model = seat_model(tray, gauge_fit);
  GaugeFitAnswer answer;
  answer.state = GaugeFitState::contradiction;
  answer.contradictions = contradictions(model, gauge_fit.trials);
  if (!answer.contradictions.empty()) {
    return answer;
  }
  const auto belief = SeatBelief::after_trials(model, gauge_fit);
  if (!belief) {
    return answer;
  }
  const TrialLog log = trial_log(model, gauge_fit.trials);
  const Decision decision = decide(model, *belief, log, gauge_fit.order);
  answer.seat = estimate(model, *belief, log, decision);
  put_state(model, log, decision, answer);
  return answer;
}

}  // namespace shimwright::shim
