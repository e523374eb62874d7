#include "seat_model.h"

#include <algorithm>
#include <cmath>

namespace shimwright::shim {

std::size_t SeatModel::shim_of_region(std::size_t region) const {
  return std::clamp<std::size_t>(region, 1, size()) - 1;
}

std::int64_t SeatModel::region_from_um(std::size_t region) const {
  if (region == 0) {
    return grid_from_um();
  }
  return region <= size() ? thickness_um[region - 1] : thickness_um.back() + band_um;
}

std::int64_t SeatModel::region_to_um(std::size_t region) const {
  return region < region_count() - 1 ? region_from_um(region + 1) : grid_to_um();
}

Stretch SeatModel::widened_region(std::size_t region) const {
  const std::size_t own = shim_of_region(region);
  const double twice_u = 2.0 * u_um[own];
  // The step at a boundary: up from the thinnest for the lowest one, the band for the highest one.
  const auto widening = [&](std::size_t lower_shim, std::size_t upper_shim) {
    const bool step_there = upper_shim < size() && lower_shim != upper_shim;
    const auto step = step_there ? thickness_um[upper_shim] - thickness_um[lower_shim] : band_um;
    return std::min(twice_u, static_cast<double>(step) / 4.0);
  };
  Stretch stretch{static_cast<double>(region_from_um(region)), static_cast<double>(region_to_um(region))};
  if (region == top_region()) {
    stretch.from_um -= widening(own, size());
  } else if (region > 0) {
    stretch.from_um -= own > 0 ? widening(own - 1, own) : widening(0, 1);
  }
  if (region == 0) {
    stretch.to_um += widening(0, 1);
  } else if (region < top_region()) {
    stretch.to_um += widening(own, own + 1);
  }
  return stretch;
}

SeatModel seat_model(const Tray& tray, const GaugeFitCase& gauge_fit) {
  SeatModel model;
  model.shims = thin_to_thick(tray);
  model.band_um = gauge_fit.snug_band.count();
  for (const Shim* each : model.shims) {
    model.thickness_um.push_back(each->thickness.count());
    model.u_um.push_back(1000.0 * std::hypot(gauge_fit.feel_u_mm, each->u_mm));
  }
  return model;
}

}  // namespace shimwright::shim
