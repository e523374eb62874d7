#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "seat_belief.h"
#include "seat_model.h"

namespace shimwright::shim {

/// The least expected number of trials by dynamic programming over intervals of the seat, trials taken as exact.
/// Without noise this is an optimal search tree over the regions (Knuth 1971); docs/method.md, section 1.5.
class TrialPlanner {
 public:
  /// `proved` by region, from real trials. All three must outlive the planner.
  TrialPlanner(const SeatModel& model, const SeatBelief& belief, const std::vector<bool>& proved);

  struct Plan {
    bool qualifies = false;     ///< one region holds nearly all the belief
    bool proved = false;        ///< … and is shown by hand: nothing is left to try
    std::size_t region = 0;     ///< that region, where it qualifies
    std::size_t next_shim = 0;  ///< to try, where not proved
    double expected_trials = 0.0;
  };
  [[nodiscard]] Plan plan();

 private:
  /// Seats from one boundary to another. `carried`: the lower end came from a trial of the very shim whose region
  /// begins the interval, which proves that region. (An upper end proves only region 0, and only where it lies on the
  /// thinnest shim; any other carrier can prove nothing that lies in the interval.)
  struct Interval {
    std::size_t from = 0;
    std::size_t to = 0;
    bool carried = false;
  };
  struct Standing {
    bool qualifies = false;
    bool proved = false;
    std::size_t region = 0;
  };

  void place_boundaries();
  void place_regions();
  [[nodiscard]] double belief_in(std::size_t from, std::size_t to) const { return below_[to] - below_[from]; }
  [[nodiscard]] bool is_proved(std::size_t region, const Interval& interval) const;
  [[nodiscard]] std::size_t largest_region(const Interval& interval, double whole) const;
  [[nodiscard]] Standing standing(const Interval& interval) const;
  [[nodiscard]] bool carries(std::size_t shim, std::size_t boundary) const;
  [[nodiscard]] double expected(const Interval& interval);
  [[nodiscard]] double least_over_shims(const Interval& interval);
  [[nodiscard]] bool is_move(std::size_t shim, const Interval& interval) const;
  [[nodiscard]] double expected_with(std::size_t shim, const Interval& interval, double enough);

  const SeatModel& model_;
  const SeatBelief& belief_;
  const std::vector<bool>& proved_;
  std::vector<std::int64_t> boundary_um_;  ///< ascending; first and last are the ends of the grid
  std::vector<double> below_;              ///< belief below each boundary
  std::vector<std::size_t> at_thickness_;  ///< boundary of each shim: tight below it
  std::vector<std::size_t> at_band_end_;   ///< boundary of each shim: loose from it
  std::vector<std::size_t> region_at_;     ///< region that begins at or holds each boundary
  std::vector<std::size_t> region_from_;   ///< boundary where each region begins, and one more at the end
  std::vector<double> widened_from_;       ///< belief below the widened region
  std::vector<double> widened_to_;
  std::vector<double> memo_;  ///< by from, to, carried; below 0: not yet known
};

}  // namespace shimwright::shim
