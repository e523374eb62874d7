#include "trial_log.h"

#include <algorithm>
#include <cmath>

namespace shimwright::shim {

bool TrialLog::all_tight() const {
  return std::all_of(last_fit.begin(), last_fit.end(), [](const auto& fit) { return !fit || *fit == Fit::tight; });
}

std::vector<std::size_t> TrialLog::still_below() const {
  std::vector<std::size_t> shims;
  for (std::size_t shim = 0; shim < last_fit.size() && last_fit[shim] != Fit::tight; ++shim) {
    if (!last_fit[shim]) {
      shims.push_back(shim);
    }
  }
  return shims;
}

std::vector<bool> TrialLog::proved_regions(const SeatModel& model) const {
  std::vector<bool> proved(model.region_count(), false);
  proved.front() = last_fit.front() == Fit::tight;
  proved.back() = last_fit.back() == Fit::loose;
  for (std::size_t shim = 0; shim < model.size(); ++shim) {
    const bool nothing_thicker_goes_in =
        shim + 1 < model.size() && model.thickness_um[shim] + model.band_um < model.thickness_um[shim + 1];
    proved[shim + 1] = last_fit[shim] == Fit::snug || (last_fit[shim] == Fit::loose && nothing_thicker_goes_in);
  }
  return proved;
}

std::optional<std::int64_t> TrialLog::lowest_upper_bound_um(const SeatModel& model) const {
  std::optional<std::int64_t> lowest;
  for (std::size_t shim = 0; shim < model.size(); ++shim) {
    if (!last_fit[shim] || last_fit[shim] == Fit::loose) {
      continue;
    }
    const auto bound = model.thickness_um[shim] + (last_fit[shim] == Fit::snug ? model.band_um : 0);
    lowest = std::min(lowest.value_or(bound), bound);
  }
  return lowest;
}

TrialLog trial_log(const SeatModel& model, const std::vector<Trial>& trials) {
  TrialLog log{std::vector<std::optional<Fit>>(model.size()), std::vector<int>(model.size(), 0)};
  for (const auto& trial : trials) {
    const std::size_t shim = index_of(model.shims, trial.shim);
    log.last_fit[shim] = trial.fit;
    ++log.times_tried[shim];
  }
  return log;
}

std::vector<ContradictingTrials> contradictions(const SeatModel& model, const std::vector<Trial>& trials) {
  std::vector<std::size_t> shims;
  shims.reserve(trials.size());
  for (const auto& trial : trials) {
    shims.push_back(index_of(model.shims, trial.shim));
  }
  std::vector<ContradictingTrials> found;
  for (std::size_t low = 0; low < trials.size(); ++low) {
    if (trials[low].fit == Fit::tight) {
      continue;
    }
    const auto at_least = model.thickness_um[shims[low]] + (trials[low].fit == Fit::loose ? model.band_um : 0);
    for (std::size_t high = 0; high < trials.size(); ++high) {
      if (trials[high].fit == Fit::loose) {
        continue;
      }
      const auto below = model.thickness_um[shims[high]] + (trials[high].fit == Fit::snug ? model.band_um : 0);
      const double allowed = 3.0 * std::hypot(model.u_um[shims[low]], model.u_um[shims[high]]);
      if (static_cast<double>(at_least - below) > allowed) {
        found.push_back({low, high});
      }
    }
  }
  return found;
}

}  // namespace shimwright::shim
