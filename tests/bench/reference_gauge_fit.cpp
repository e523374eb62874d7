#include "reference_gauge_fit.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace shimwright::reference {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

double phi(double z) {
  return 0.5 * std::erfc(-z / std::sqrt(2.0));
}

void normalise(std::vector<double>& cells) {
  double sum = 0.0;
  for (const double cell : cells) {
    sum += cell;
  }
  for (double& cell : cells) {
    cell /= sum;
  }
}

}  // namespace

GaugeFit::GaugeFit(const shim::Tray& tray, const shim::GaugeFitCase& gauge_fit)
    : shims_(tray),
      band_(static_cast<double>(gauge_fit.snug_band.count())),
      feel_u_mm_(gauge_fit.feel_u_mm),
      last_fit_(tray.size()) {
  std::sort(shims_.begin(), shims_.end(),
            [](const auto& left, const auto& right) { return left.thickness < right.thickness; });
  spread_prior(gauge_fit);
  for (const auto& trial : gauge_fit.trials) {
    multiply(trial, gauge_fit.feel_u_mm);
    last_fit_[static_cast<std::size_t>(shim_named(trial.shim)) - 1] = trial.fit;
  }
  below_.push_back(0.0);
  for (const double cell : cells_) {
    below_.push_back(below_.back() + cell);
  }
}

void GaugeFit::spread_prior(const shim::GaugeFitCase& gauge_fit) {
  grid_from_ = t(1) - band_;
  const auto size = static_cast<std::size_t>(t(count()) + 2.0 * band_ - grid_from_);
  cells_.assign(size, 1.0 / static_cast<double>(size));
  if (!gauge_fit.prior) {
    return;
  }
  std::vector<double> bell;
  for (std::size_t cell = 0; cell < size; ++cell) {
    const double centre = grid_from_ + static_cast<double>(cell) + 0.5;
    const double z = (centre / 1000.0 - gauge_fit.prior->mean_mm) / gauge_fit.prior->sd_mm;
    bell.push_back(std::exp(-0.5 * z * z));
  }
  normalise(bell);
  for (std::size_t cell = 0; cell < size; ++cell) {
    cells_[cell] = 0.95 * bell[cell] + 0.05 * cells_[cell];
  }
}

void GaugeFit::multiply(const shim::Trial& trial, double feel_u_mm) {
  const int shim = shim_named(trial.shim);
  const double u_shim = shims_[static_cast<std::size_t>(shim) - 1].u_mm;
  const double u_um = 1000.0 * std::sqrt(feel_u_mm * feel_u_mm + u_shim * u_shim);
  for (std::size_t cell = 0; cell < cells_.size(); ++cell) {
    const double seat = grid_from_ + static_cast<double>(cell) + 0.5;
    const double tight = phi((t(shim) - seat) / u_um);
    const double loose = phi((seat - band_ - t(shim)) / u_um);
    const double snug = std::max(0.0, 1.0 - tight - loose);
    cells_[cell] *= trial.fit == shim::Fit::tight ? tight : trial.fit == shim::Fit::loose ? loose : snug;
  }
  normalise(cells_);
}

int GaugeFit::shim_named(const std::string& id) const {
  int shim = 1;
  while (id_of(shim) != id) {
    ++shim;
  }
  return shim;
}

double GaugeFit::t(int shim) const {
  return static_cast<double>(shims_[static_cast<std::size_t>(shim) - 1].thickness.count());
}

double GaugeFit::u(int shim) const {
  const double u_shim = shims_[static_cast<std::size_t>(shim) - 1].u_mm;
  return 1000.0 * std::sqrt(feel_u_mm_ * feel_u_mm_ + u_shim * u_shim);
}

double GaugeFit::region_from(int region) const {
  if (region == 0) {
    return -infinite;
  }
  return region > count() ? t(count()) + band_ : t(region);
}

double GaugeFit::region_to(int region) const {
  return region > count() ? infinite : region_from(region + 1);
}

double GaugeFit::belief_below(double position_um) const {
  const double offset = std::clamp(position_um - grid_from_, 0.0, static_cast<double>(cells_.size()));
  const double cell = std::floor(offset);
  const auto whole = static_cast<std::size_t>(cell);
  return below_[whole] + (whole < cells_.size() ? (offset - cell) * cells_[whole] : 0.0);
}

double GaugeFit::belief(double from, double to) const {
  return from < to ? belief_below(to) - belief_below(from) : 0.0;
}

double GaugeFit::widening(int own, double step) const {
  return std::min(2.0 * u(own), step / 4.0);
}

double GaugeFit::widened_belief(int region, const Interval& interval) const {
  const int n = count();
  double from = region_from(region);
  double to = region_to(region);
  const double lowest_step = n > 1 ? t(2) - t(1) : band_;
  if (region == 0) {
    to += widening(1, lowest_step);
  } else if (region == n + 1) {
    from -= widening(n, band_);
  } else {
    from -= widening(region, region > 1 ? t(region) - t(region - 1) : lowest_step);
    to += widening(region, region < n ? t(region + 1) - t(region) : band_);
  }
  return belief(std::max(from, interval.from), std::min(to, interval.to));
}

bool GaugeFit::proved_by_trial(int region) const {
  const int n = count();
  if (region == 0) {
    return last_fit_.front() == shim::Fit::tight;
  }
  if (region == n + 1) {
    return last_fit_.back() == shim::Fit::loose;
  }
  const auto& fit = last_fit_[static_cast<std::size_t>(region) - 1];
  return fit == shim::Fit::snug || (fit == shim::Fit::loose && region < n && t(region) + band_ < t(region + 1));
}

bool GaugeFit::proved(int region, const Interval& interval) const {
  if (proved_by_trial(region)) {
    return true;
  }
  return region == 0 ? interval.upper == 1 : interval.lower == std::min(region, count());
}

GaugeFit::Qualified GaugeFit::qualified(const Interval& interval) const {
  const double whole = belief(interval.from, interval.to);
  std::vector<double> held;
  for (int region = 0; region <= count() + 1; ++region) {
    held.push_back(belief(std::max(interval.from, region_from(region)), std::min(interval.to, region_to(region))));
  }
  const double most = *std::max_element(held.begin(), held.end());
  int chosen = -1;
  for (int region = 0; region <= count() + 1; ++region) {
    const bool largest = held[static_cast<std::size_t>(region)] >= most - 1e-9 * whole;
    if (largest && (chosen < 0 || proved(region, interval) || !proved(chosen, interval))) {
      chosen = region;
    }
  }
  const bool enough = widened_belief(chosen, interval) >= (0.90 - 1e-12) * whole;
  return {enough, enough && proved(chosen, interval), chosen};
}

std::vector<GaugeFit::Interval> GaugeFit::outcomes(int shim, const Interval& interval) const {
  const double thickness = t(shim);
  const double band_end = thickness + band_;
  return {{interval.from, std::min(interval.to, thickness), interval.lower,
           thickness < interval.to ? shim : interval.upper},
          {std::max(interval.from, thickness), std::min(interval.to, band_end), shim,
           band_end < interval.to ? shim : interval.upper},
          {std::max(interval.from, band_end), interval.to, shim, interval.upper}};
}

std::optional<double> GaugeFit::expected_with(int shim, const Interval& interval) {
  const double whole = belief(interval.from, interval.to);
  double trials = 1.0;
  for (const auto& outcome : outcomes(shim, interval)) {
    if (outcome.from == interval.from && outcome.to == interval.to) {
      return std::nullopt;
    }
    const double chance = belief(outcome.from, outcome.to) / whole;
    if (chance > 1e-9) {
      trials += chance * expected(outcome);
    }
  }
  return trials;
}

double GaugeFit::expected(const Interval& interval) {
  const auto found = known_.find(interval.key());
  if (found != known_.end()) {
    return found->second;
  }
  const Qualified now = qualified(interval);
  double least = now.proved ? 0.0 : 1.0;
  if (!now.qualifies) {
    least = infinite;
    for (int shim = 1; shim <= count(); ++shim) {
      least = std::min(least, expected_with(shim, interval).value_or(infinite));
    }
  }
  known_[interval.key()] = least;
  return least;
}

GaugeFit::Plan GaugeFit::plan() {
  const Interval everything{-infinite, infinite, 0, 0};
  const Qualified now = qualified(everything);
  if (now.qualifies) {
    return {true, now.proved, now.region, std::clamp(now.region, 1, count()), now.proved ? 0.0 : 1.0};
  }
  Plan plan;
  plan.expected_trials = expected(everything);
  for (int shim = 1; shim <= count(); ++shim) {
    if (expected_with(shim, everything).value_or(infinite) <= plan.expected_trials + 1e-9) {
      plan.next_shim = shim;
    }
  }
  return plan;
}

}  // namespace shimwright::reference
