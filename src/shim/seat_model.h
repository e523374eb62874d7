#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "shimwright/shim/gauge_fit.h"
#include "shimwright/shim/tray.h"
#include "sorted_tray.h"

namespace shimwright::shim {

/// A half-open stretch of seats in micrometres.
struct Stretch {
  double from_um = 0.0;
  double to_um = 0.0;
};

/// The tray and the gauge as the belief and the planner see them: thin to thick, in micrometres, shims counted from 0.
/// Region 0 lies below the thinnest, region j + 1 is that of shim j, the last one lies above all.
struct SeatModel {
  std::vector<const Shim*> shims;
  std::vector<std::int64_t> thickness_um;
  std::vector<double> u_um;  ///< of one feel with this shim: √(feel² + shim²)
  std::int64_t band_um = 0;

  [[nodiscard]] std::size_t size() const { return shims.size(); }
  [[nodiscard]] std::size_t region_count() const { return shims.size() + 2; }
  [[nodiscard]] std::size_t top_region() const { return shims.size() + 1; }
  /// The shim a region is tried with: its own; the thinnest below all, the thickest above all.
  [[nodiscard]] std::size_t shim_of_region(std::size_t region) const;

  /// All the seats believed possible.
  [[nodiscard]] std::int64_t grid_from_um() const { return thickness_um.front() - band_um; }
  [[nodiscard]] std::int64_t grid_to_um() const { return thickness_um.back() + 2 * band_um; }

  /// Ends of a region, the outer ones at the ends of the grid.
  [[nodiscard]] std::int64_t region_from_um(std::size_t region) const;
  [[nodiscard]] std::int64_t region_to_um(std::size_t region) const;
  /// The region widened by 2u at each inner end, at most by a quarter of the step there.
  [[nodiscard]] Stretch widened_region(std::size_t region) const;
};

[[nodiscard]] SeatModel seat_model(const Tray& tray, const GaugeFitCase& gauge_fit);

}  // namespace shimwright::shim
