#include "float_judgement.h"

#include <algorithm>
#include <cmath>

#include "shimwright/metrology/harmonic.h"
#include "shimwright/metrology/normal.h"
#include "shimwright/metrology/sample.h"

namespace shimwright::shim {

using metrology::length_slack_mm;
using quantity::in_millimetres;

metrology::Indicator indicator_of(const FloatCase& disc_float) {
  return {disc_float.resolution_mm, disc_float.mpe_mm, disc_float.repeatability_mm};
}

metrology::Limits limits_of(const FloatCase& disc_float) {
  return {in_millimetres(disc_float.lower_limit), in_millimetres(disc_float.upper_limit)};
}

std::optional<metrology::SlopeEstimate> sensitivity_of(const FloatCase& disc_float) {
  std::optional<metrology::Slope> prior;
  if (disc_float.sensitivity) {
    prior = metrology::Slope{disc_float.sensitivity->mean, disc_float.sensitivity->sd};
  }
  std::vector<metrology::Pair> pairs;
  pairs.reserve(disc_float.history.size());
  for (const auto& pair : disc_float.history) {
    pairs.push_back({in_millimetres(pair.shim_change), -in_millimetres(pair.float_change)});
  }
  return metrology::slope_through_origin(prior, pairs, disc_float.history_u_mm);
}

FloatJudgement judge_float(const FloatCase& disc_float, const SpotRuns& runs) {
  const auto indicator = indicator_of(disc_float);
  const auto limits = limits_of(disc_float);
  FloatJudgement judgement;
  judgement.float_mm = spot_floats_mm(runs);
  judgement.mean_mm = metrology::mean_of(judgement.float_mm);
  judgement.spread_mm = metrology::range_of(judgement.float_mm);
  std::vector<metrology::AngledValue> angled;
  std::vector<std::size_t> counts;
  for (std::size_t spot = 0; spot < runs.size(); ++spot) {
    angled.push_back({disc_float.spots[spot].angle_deg, judgement.float_mm[spot]});
    counts.push_back(runs[spot].size());
    const double u_mm = metrology::spot_uncertainty_mm(indicator, counts.back());
    judgement.u_spot_mm.push_back(u_mm);
    judgement.spot_verdicts.push_back(
        metrology::guarded_verdict(judgement.float_mm[spot], limits, disc_float.guard_factor * u_mm));
  }
  const metrology::Tilt tilt = metrology::fit_tilt(angled);
  judgement.tilt_mm = tilt.amplitude_mm;
  judgement.high_at_deg = tilt.high_at_deg;
  judgement.u_mean_mm = metrology::mean_uncertainty_mm(indicator, counts);
  judgement.verdict = metrology::disc_verdict(judgement.spot_verdicts);
  const auto [least, most] = std::minmax_element(judgement.float_mm.begin(), judgement.float_mm.end());
  judgement.p_within =
      metrology::probability_inside(limits.lower_mm, limits.upper_mm, *least, *most, judgement.u_mean_mm);
  judgement.sensitivity = sensitivity_of(disc_float);
  return judgement;
}

bool too_coarse(const FloatCase& disc_float, const FloatJudgement& judgement) {
  const double window = in_millimetres(disc_float.upper_limit - disc_float.lower_limit);
  return std::any_of(judgement.u_spot_mm.begin(), judgement.u_spot_mm.end(),
                     [&](double u_mm) { return 2.0 * disc_float.guard_factor * u_mm >= window - length_slack_mm; });
}

bool runs_disagree(const FloatCase& disc_float, const SpotRuns& runs) {
  const double allowed = std::max(3.0 * std::sqrt(2.0) * disc_float.repeatability_mm, 2.0 * disc_float.resolution_mm);
  return std::any_of(runs.begin(), runs.end(), [&](const auto& spot) {
    const auto [least, most] = std::minmax_element(spot.begin(), spot.end());
    return static_cast<double>(*most - *least) / 1000.0 > allowed + length_slack_mm;
  });
}

}  // namespace shimwright::shim
