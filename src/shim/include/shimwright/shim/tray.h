#pragma once

#include <string>
#include <vector>

#include "shimwright/quantity/quantity.h"

namespace shimwright::shim {

/// One graded shim.
struct Shim {
  std::string id;              ///< what is marked on it or on its place
  quantity::Length thickness;  ///< more than 0
  double u_mm = 0.0;           ///< standard uncertainty of the thickness, more than 0

  friend bool operator==(const Shim&, const Shim&) = default;
};

/// The shims for one bearing, in any order; ids and thicknesses each only once, at least one.
using Tray = std::vector<Shim>;

}  // namespace shimwright::shim
