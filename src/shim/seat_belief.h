#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "seat_model.h"
#include "shimwright/shim/gauge_fit.h"

namespace shimwright::shim {

/// The belief in the seat: one weight per micrometre, the cumulative belief linear inside a cell.
class SeatBelief {
 public:
  /// Prior times every trial. Nothing where the belief is 0 everywhere.
  [[nodiscard]] static std::optional<SeatBelief> after_trials(const SeatModel& model, const GaugeFitCase& gauge_fit);

  /// The belief that S lies below here; 0 and 1 beyond the grid.
  [[nodiscard]] double below(double position_um) const;
  [[nodiscard]] double below(std::int64_t position_um) const;
  [[nodiscard]] double between(const Stretch& stretch) const { return below(stretch.to_um) - below(stretch.from_um); }

  [[nodiscard]] double mean_um() const;
  [[nodiscard]] double quantile_um(double share) const;

 private:
  SeatBelief(const SeatModel& model, const std::optional<SeatPrior>& prior);
  void apply(std::int64_t thickness_um, double u_um, std::int64_t band_um, Fit fit);
  [[nodiscard]] bool normalise();
  void accumulate();
  [[nodiscard]] double centre_um(std::size_t cell) const;

  std::int64_t from_um_;
  std::vector<double> cells_;
  std::vector<double> below_;  ///< before each cell, and after the last
};

}  // namespace shimwright::shim
