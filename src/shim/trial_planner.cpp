#include "trial_planner.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace shimwright::shim {

namespace {

constexpr double enough_belief = 0.90;
constexpr double negligible = 1e-9;  // parts of a belief, ties of beliefs and of trial counts

}  // namespace

TrialPlanner::TrialPlanner(const SeatModel& model, const SeatBelief& belief, const std::vector<bool>& proved)
    : model_(model), belief_(belief), proved_(proved) {
  place_boundaries();
  place_regions();
  memo_.assign(2 * boundary_um_.size() * boundary_um_.size(), -1.0);
}

void TrialPlanner::place_boundaries() {
  boundary_um_.reserve(2 * model_.size() + 2);
  boundary_um_.push_back(model_.grid_from_um());
  for (const auto thickness : model_.thickness_um) {
    boundary_um_.push_back(thickness);
    boundary_um_.push_back(thickness + model_.band_um);
  }
  boundary_um_.push_back(model_.grid_to_um());
  std::sort(boundary_um_.begin(), boundary_um_.end());
  boundary_um_.erase(std::unique(boundary_um_.begin(), boundary_um_.end()), boundary_um_.end());
  const auto boundary_at = [&](std::int64_t position) {
    const auto found = std::lower_bound(boundary_um_.begin(), boundary_um_.end(), position);
    return static_cast<std::size_t>(found - boundary_um_.begin());
  };
  for (const auto thickness : model_.thickness_um) {
    at_thickness_.push_back(boundary_at(thickness));
    at_band_end_.push_back(boundary_at(thickness + model_.band_um));
  }
  below_.reserve(boundary_um_.size());
  for (const auto position : boundary_um_) {
    below_.push_back(belief_.below(position));
  }
}

void TrialPlanner::place_regions() {
  region_from_.push_back(0);
  region_from_.insert(region_from_.end(), at_thickness_.begin(), at_thickness_.end());
  region_from_.push_back(at_band_end_.back());
  region_from_.push_back(boundary_um_.size() - 1);
  std::size_t region = 0;
  for (std::size_t boundary = 0; boundary < boundary_um_.size(); ++boundary) {
    while (region < model_.top_region() && boundary >= region_from_[region + 1]) {
      ++region;
    }
    region_at_.push_back(region);
  }
  for (region = 0; region < model_.region_count(); ++region) {
    const Stretch widened = model_.widened_region(region);
    widened_from_.push_back(belief_.below(widened.from_um));
    widened_to_.push_back(belief_.below(widened.to_um));
  }
}

bool TrialPlanner::is_proved(std::size_t region, const Interval& interval) const {
  if (proved_[region]) {
    return true;
  }
  if (region == 0) {
    return interval.to == at_thickness_.front();
  }
  return interval.carried && region == region_at_[interval.from];
}

std::size_t TrialPlanner::largest_region(const Interval& interval, double whole) const {
  const std::size_t first = region_at_[interval.from];
  const std::size_t last = region_at_[interval.to - 1];
  const auto belief_of = [&](std::size_t region) {
    return belief_in(std::max(interval.from, region_from_[region]), std::min(interval.to, region_from_[region + 1]));
  };
  double most = 0.0;
  for (std::size_t region = first; region <= last; ++region) {
    most = std::max(most, belief_of(region));
  }
  std::optional<std::size_t> thickest;
  for (std::size_t region = last + 1; region-- > first;) {
    if (belief_of(region) >= most - negligible * whole) {
      if (is_proved(region, interval)) {
        return region;
      }
      thickest = thickest.value_or(region);
    }
  }
  return thickest.value_or(last);
}

TrialPlanner::Standing TrialPlanner::standing(const Interval& interval) const {
  const double whole = belief_in(interval.from, interval.to);
  const std::size_t region = largest_region(interval, whole);
  const double widened =
      std::min(below_[interval.to], widened_to_[region]) - std::max(below_[interval.from], widened_from_[region]);
  // The slack only keeps a share of exactly 0.90 from hanging on the last bit of a sum.
  const bool qualifies = widened >= (enough_belief - 1e-12) * whole;
  return {qualifies, qualifies && is_proved(region, interval), region};
}

bool TrialPlanner::carries(std::size_t shim, std::size_t boundary) const {
  return model_.shim_of_region(region_at_[boundary]) == shim && region_at_[boundary] != 0;
}

double TrialPlanner::expected(const Interval& interval) {
  double& known = memo_[2 * (interval.from * boundary_um_.size() + interval.to) + (interval.carried ? 1 : 0)];
  if (known < 0.0) {
    const Standing now = standing(interval);
    known = now.qualifies ? (now.proved ? 0.0 : 1.0) : least_over_shims(interval);
  }
  return known;
}

double TrialPlanner::least_over_shims(const Interval& interval) {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t shim = 0; shim < model_.size(); ++shim) {
    if (is_move(shim, interval)) {
      least = std::min(least, expected_with(shim, interval, least));
    }
  }
  return least;
}

/// No move: every outcome but one is impossible, and that one leaves both ends where they are.
bool TrialPlanner::is_move(std::size_t shim, const Interval& interval) const {
  const std::size_t tight_below = at_thickness_[shim];
  const std::size_t loose_from = at_band_end_[shim];
  return tight_below < interval.to && loose_from > interval.from &&
         !(tight_below <= interval.from && loose_from >= interval.to);
}

/// One trial of this shim and what is left after each outcome; given up once it reaches `enough`.
double TrialPlanner::expected_with(std::size_t shim, const Interval& interval, double enough) {
  const std::size_t tight_below = at_thickness_[shim];
  const std::size_t loose_from = at_band_end_[shim];
  const std::size_t snug_from = std::max(interval.from, tight_below);
  const std::size_t snug_to = std::min(interval.to, loose_from);
  const std::size_t after_loose = std::max(interval.from, loose_from);
  const Interval outcomes[] = {{interval.from, std::min(interval.to, tight_below), interval.carried},
                               {snug_from, snug_to, carries(shim, snug_from)},
                               {after_loose, interval.to, carries(shim, after_loose)}};
  const double whole = belief_in(interval.from, interval.to);
  double trials = 1.0;
  for (const auto& outcome : outcomes) {
    if (outcome.from >= outcome.to || trials >= enough) {
      continue;
    }
    const double chance = belief_in(outcome.from, outcome.to) / whole;
    if (chance > negligible) {
      trials += chance * expected(outcome);
    }
  }
  return trials;
}

TrialPlanner::Plan TrialPlanner::plan() {
  const Interval everything{0, boundary_um_.size() - 1, false};
  const Standing now = standing(everything);
  if (now.qualifies) {
    return {true, now.proved, now.region, model_.shim_of_region(now.region), now.proved ? 0.0 : 1.0};
  }
  const double no_limit = std::numeric_limits<double>::infinity();
  std::vector<double> with_shim(model_.size(), no_limit);
  for (std::size_t shim = 0; shim < model_.size(); ++shim) {
    with_shim[shim] = is_move(shim, everything) ? expected_with(shim, everything, no_limit) : no_limit;
  }
  const double least = *std::min_element(with_shim.begin(), with_shim.end());
  std::size_t thickest = model_.size() - 1;
  while (thickest > 0 && with_shim[thickest] > least + negligible) {
    --thickest;
  }
  return {false, false, 0, thickest, least};
}

}  // namespace shimwright::shim
