#include "seat_belief.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "shimwright/metrology/normal.h"

namespace shimwright::shim {

namespace {

/// Φ without the work where a double cannot tell it from 0 or 1.
double quick_cdf(double z) {
  if (z > 8.5) {
    return 1.0;
  }
  return z < -38.6 ? 0.0 : metrology::normal_cdf(z);
}

}  // namespace

SeatBelief::SeatBelief(const SeatModel& model, const std::optional<SeatPrior>& prior) : from_um_(model.grid_from_um()) {
  const auto count = static_cast<std::size_t>(model.grid_to_um() - from_um_);
  const double flat = 1.0 / static_cast<double>(count);
  cells_.assign(count, flat);
  if (!prior) {
    return;
  }
  // Taken from the largest cell, so that a mean far beyond the grid does not leave zeros everywhere.
  const auto squared = [&](std::size_t cell) {
    const double z = (centre_um(cell) - 1000.0 * prior->mean_mm) / (1000.0 * prior->sd_mm);
    return z * z;
  };
  const double last = static_cast<double>(count - 1);
  const double nearest = std::clamp(std::floor(1000.0 * prior->mean_mm - static_cast<double>(from_um_)), 0.0, last);
  const double least = squared(static_cast<std::size_t>(nearest));
  for (std::size_t cell = 0; cell < count; ++cell) {
    cells_[cell] = std::exp(0.5 * (least - squared(cell)));
  }
  const double sum = std::accumulate(cells_.begin(), cells_.end(), 0.0);
  for (double& cell : cells_) {
    cell = 0.95 * cell / sum + 0.05 * flat;
  }
}

double SeatBelief::centre_um(std::size_t cell) const {
  return static_cast<double>(from_um_) + static_cast<double>(cell) + 0.5;
}

void SeatBelief::apply(std::int64_t thickness_um, double u_um, std::int64_t band_um, Fit fit) {
  const auto thickness = static_cast<double>(thickness_um);
  const auto band = static_cast<double>(band_um);
  for (std::size_t cell = 0; cell < cells_.size(); ++cell) {
    const double above = centre_um(cell) - thickness;
    const double tight = fit == Fit::loose ? 0.0 : quick_cdf(-above / u_um);
    const double loose = fit == Fit::tight ? 0.0 : quick_cdf((above - band) / u_um);
    switch (fit) {
      case Fit::tight:
        cells_[cell] *= tight;
        break;
      case Fit::snug:
        cells_[cell] *= std::max(0.0, 1.0 - tight - loose);
        break;
      case Fit::loose:
        cells_[cell] *= loose;
        break;
    }
  }
}

bool SeatBelief::normalise() {
  const double sum = std::accumulate(cells_.begin(), cells_.end(), 0.0);
  if (!(sum > 0.0)) {
    return false;
  }
  // Divided, not multiplied by 1/sum: that overflows for a sum next to nothing.
  for (double& cell : cells_) {
    cell /= sum;
  }
  return true;
}

void SeatBelief::accumulate() {
  below_.assign(cells_.size() + 1, 0.0);
  std::partial_sum(cells_.begin(), cells_.end(), below_.begin() + 1);
  // A sum of many parts may end a bit above one, a chance must not.
  for (double& below : below_) {
    below = std::min(below, 1.0);
  }
}

std::optional<SeatBelief> SeatBelief::after_trials(const SeatModel& model, const GaugeFitCase& gauge_fit) {
  SeatBelief belief(model, gauge_fit.prior);
  bool possible = belief.normalise();
  for (const auto& trial : gauge_fit.trials) {
    const std::size_t shim = index_of(model.shims, trial.shim);
    belief.apply(model.thickness_um[shim], model.u_um[shim], model.band_um, trial.fit);
    possible = possible && belief.normalise();
  }
  if (!possible) {
    return std::nullopt;
  }
  belief.accumulate();
  return belief;
}

double SeatBelief::below(std::int64_t position_um) const {
  const auto last = static_cast<std::int64_t>(cells_.size());
  return below_[static_cast<std::size_t>(std::clamp<std::int64_t>(position_um - from_um_, 0, last))];
}

double SeatBelief::below(double position_um) const {
  const double offset = position_um - static_cast<double>(from_um_);
  if (!(offset > 0.0)) {
    return 0.0;
  }
  if (offset >= static_cast<double>(cells_.size())) {
    return below_.back();
  }
  const auto cell = static_cast<std::size_t>(offset);
  return below_[cell] + (offset - static_cast<double>(cell)) * cells_[cell];
}

double SeatBelief::mean_um() const {
  double sum = 0.0;
  for (std::size_t cell = 0; cell < cells_.size(); ++cell) {
    sum += cells_[cell] * (static_cast<double>(cell) + 0.5);
  }
  return static_cast<double>(from_um_) + sum;
}

double SeatBelief::quantile_um(double share) const {
  const auto reached = std::lower_bound(below_.begin(), below_.end(), share);
  const auto end = static_cast<std::size_t>(reached - below_.begin());
  if (end == 0 || reached == below_.end()) {
    return static_cast<double>(from_um_) + static_cast<double>(end);
  }
  const std::size_t cell = end - 1;
  return static_cast<double>(from_um_) + static_cast<double>(cell) + (share - below_[cell]) / cells_[cell];
}

}  // namespace shimwright::shim
