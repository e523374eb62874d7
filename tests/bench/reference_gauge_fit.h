#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

#include "shimwright/shim/gauge_fit.h"
#include "shimwright/shim/tray.h"

namespace shimwright::reference {

/// The order `fewest` word for word, without any of the engine's short cuts: every end of an interval keeps the shim
/// that carries it, results are kept in a map, every chance is computed in full. Plain, and an oracle for the engine.
class GaugeFit {
 public:
  GaugeFit(const shim::Tray& tray, const shim::GaugeFitCase& gauge_fit);

  struct Plan {
    bool qualifies = false;
    bool proved = false;
    int region = 0;
    int next_shim = 0;  ///< from 1, thin to thick
    double expected_trials = 0.0;
  };
  [[nodiscard]] Plan plan();
  [[nodiscard]] const std::string& id_of(int shim) const { return shims_[static_cast<std::size_t>(shim) - 1].id; }
  [[nodiscard]] double belief_below(double position_um) const;

 private:
  using Carrier = int;  ///< a shim, or 0 for none
  struct Interval {
    double from;
    double to;
    Carrier lower;
    Carrier upper;
    [[nodiscard]] auto key() const { return std::tuple(from, to, lower, upper); }
  };
  struct Qualified {
    bool qualifies;
    bool proved;
    int region;
  };

  void spread_prior(const shim::GaugeFitCase& gauge_fit);
  void multiply(const shim::Trial& trial, double feel_u_mm);
  [[nodiscard]] int shim_named(const std::string& id) const;
  [[nodiscard]] int count() const { return static_cast<int>(shims_.size()); }
  [[nodiscard]] double t(int shim) const;
  [[nodiscard]] double u(int shim) const;
  [[nodiscard]] double region_from(int region) const;
  [[nodiscard]] double region_to(int region) const;
  [[nodiscard]] double belief(double from, double to) const;
  [[nodiscard]] double widening(int own, double step) const;
  [[nodiscard]] double widened_belief(int region, const Interval& interval) const;
  [[nodiscard]] bool proved_by_trial(int region) const;
  [[nodiscard]] bool proved(int region, const Interval& interval) const;
  [[nodiscard]] Qualified qualified(const Interval& interval) const;
  [[nodiscard]] std::vector<Interval> outcomes(int shim, const Interval& interval) const;
  [[nodiscard]] std::optional<double> expected_with(int shim, const Interval& interval);
  [[nodiscard]] double expected(const Interval& interval);

  shim::Tray shims_;
  double band_ = 0.0;
  double feel_u_mm_ = 0.0;
  double grid_from_ = 0.0;
  std::vector<double> cells_;
  std::vector<double> below_;
  std::vector<std::optional<shim::Fit>> last_fit_;
  std::map<std::tuple<double, double, Carrier, Carrier>, double> known_;
};

}  // namespace shimwright::reference
