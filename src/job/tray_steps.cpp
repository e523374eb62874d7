#include "tray_steps.h"

#include <algorithm>
#include <cstdlib>

namespace shimwright::job {

using quantity::Length;

namespace {

Length distance(Length one, Length other) {
  return Length(std::abs((one - other).count()));
}

}  // namespace

const TrayShim* shim_with_id(const std::vector<TrayShim>& tray, std::string_view id) {
  const auto found = std::find_if(tray.begin(), tray.end(), [&](const TrayShim& each) { return each.id == id; });
  return found == tray.end() ? nullptr : &*found;
}

std::string keep_in_tray(std::vector<TrayShim>& tray, const TrayShim& shim) {
  if (shim_with_id(tray, shim.id) != nullptr) {
    return shim.id;
  }
  const auto as_thick =
      std::find_if(tray.begin(), tray.end(), [&](const TrayShim& each) { return each.thickness == shim.thickness; });
  if (as_thick != tray.end()) {
    return as_thick->id;
  }
  const auto thicker =
      std::find_if(tray.begin(), tray.end(), [&](const TrayShim& each) { return each.thickness > shim.thickness; });
  tray.insert(thicker, {shim.id, shim.thickness, shim.u_mm, 0});
  return shim.id;
}

const TrayShim* nearest_shim(const std::vector<TrayShim>& tray, Length thickness) {
  const auto found = std::min_element(tray.begin(), tray.end(), [&](const TrayShim& one, const TrayShim& other) {
    return distance(one.thickness, thickness) < distance(other.thickness, thickness);
  });
  return found == tray.end() ? nullptr : &*found;
}

std::optional<Length> step_beside(const std::vector<TrayShim>& tray, Length thickness) {
  const TrayShim* own = nearest_shim(tray, thickness);
  std::optional<Length> smallest;
  for (const TrayShim& each : tray) {
    if (&each != own) {
      const Length step = distance(each.thickness, own->thickness);
      smallest = smallest ? std::min(*smallest, step) : step;
    }
  }
  return smallest;
}

}  // namespace shimwright::job
