#pragma once

#include <vector>

#include <QPainterPath>

#include "shimwright/widgets/pack_drawing.h"

namespace shimwright::widgets {

/// How a part is filled or drawn.
enum class PackLook { shaft, metal, lining, bearing, ring, shim, no_shim, finger, lever, wall };

/// Which side a part belongs to.
enum class PackReach { both, lower, upper };

struct PackShape {
  sheet::Drawing part = sheet::Drawing::none;
  PackReach reach = PackReach::both;
  PackLook look = PackLook::metal;
  QPainterPath path;
};

/// The drawing's own measure, in which shapes are given.
inline constexpr double pack_width = 200;
inline constexpr double pack_height = 446;
inline constexpr double pack_axis = 16;

/// All parts of the half section, back to front.
[[nodiscard]] std::vector<PackShape> shapes_of(const PackView& view);

}  // namespace shimwright::widgets
