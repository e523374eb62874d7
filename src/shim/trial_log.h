#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "seat_model.h"
#include "shimwright/shim/gauge_fit.h"

namespace shimwright::shim {

/// What the trials made so far say by themselves, without any belief. Shims are counted from 0, thin to thick.
struct TrialLog {
  std::vector<std::optional<Fit>> last_fit;  ///< of each shim; nothing: untried
  std::vector<int> times_tried;

  [[nodiscard]] bool all_tight() const;
  /// The shims untried and thinner than all that last felt tight, thin to thick.
  [[nodiscard]] std::vector<std::size_t> still_below() const;
  /// By region: would a person take it as shown by hand.
  [[nodiscard]] std::vector<bool> proved_regions(const SeatModel& model) const;
  /// The lowest upper bound of the seat that a last feel gives, in µm.
  [[nodiscard]] std::optional<std::int64_t> lowest_upper_bound_um(const SeatModel& model) const;
};

[[nodiscard]] TrialLog trial_log(const SeatModel& model, const std::vector<Trial>& trials);

/// Every pair of trials that cannot both be right: their bounds of the seat cross by more than 3·√(u_i² + u_j²).
/// Sorted.
[[nodiscard]] std::vector<ContradictingTrials> contradictions(const SeatModel& model, const std::vector<Trial>& trials);

}  // namespace shimwright::shim
