#include "pack_shapes.h"

#include <algorithm>
#include <iterator>
#include <optional>

namespace shimwright::widgets {

namespace {

using sheet::Drawing;

QPainterPath rectangle(double x, double y, double width, double height, double corner = 0) {
  QPainterPath path;
  path.addRoundedRect(x, y, width, height, corner, corner);
  return path;
}

QPainterPath bent(const std::vector<QPointF>& points) {
  QPainterPath path(points.front());
  std::for_each(std::next(points.begin()), points.end(), [&path](const QPointF& point) { path.lineTo(point); });
  return path;
}

std::optional<double> laid_on(const PackView& view, sheet::Side side) {
  const auto found = view.shim_mm.find(side);
  return found == view.shim_mm.end() ? std::nullopt : std::optional(found->second);
}

/// Thicker than true to scale, so that a tenth of a millimetre more can be seen.
double shim_height(const std::optional<double>& mm) {
  return mm ? std::clamp(3.0 + (*mm - 1.0) * 8.0, 4.0, 16.0) : 8.0;
}

void add_shafts_and_hub(std::vector<PackShape>& shapes) {
  shapes.push_back({Drawing::shafts, PackReach::both, PackLook::shaft, rectangle(16, 20, 15, 412)});
  shapes.push_back({Drawing::shafts, PackReach::both, PackLook::shaft, rectangle(31, 116, 10, 316)});
  QPainterPath hub = rectangle(31, 64, 18, 36).united(rectangle(48, 73, 82, 17));
  shapes.push_back({Drawing::hub, PackReach::upper, PackLook::shaft, hub.simplified()});
  shapes.push_back({Drawing::hub_ring, PackReach::upper, PackLook::ring, rectangle(31, 52, 12, 8)});
}

void add_pack(std::vector<PackShape>& shapes) {
  shapes.push_back({Drawing::pack, PackReach::upper, PackLook::metal, rectangle(96, 109, 70, 24)});
  shapes.push_back({Drawing::upper_disc, PackReach::upper, PackLook::shaft, rectangle(31, 136, 22, 29)});
  shapes.push_back({Drawing::upper_disc, PackReach::upper, PackLook::lining, rectangle(53, 146, 112, 11)});
  shapes.push_back({Drawing::pack, PackReach::both, PackLook::metal, rectangle(80, 171, 91, 43)});
  shapes.push_back({Drawing::pack, PackReach::both, PackLook::bearing, rectangle(41, 182, 36, 21, 4)});
  shapes.push_back({Drawing::pack_ring, PackReach::both, PackLook::ring, rectangle(41, 170, 13, 9)});
  shapes.push_back({Drawing::lower_disc, PackReach::lower, PackLook::shaft, rectangle(41, 219, 19, 28)});
  shapes.push_back({Drawing::lower_disc, PackReach::lower, PackLook::lining, rectangle(60, 228, 105, 11)});
  shapes.push_back({Drawing::pack, PackReach::lower, PackLook::metal, rectangle(96, 245, 70, 21)});
  shapes.push_back({Drawing::pack, PackReach::both, PackLook::wall, bent({{134, 99}, {175, 99}, {175, 264}})});
}

/// From below: lever, shim, bearing, and the finger of the pack that the bearing pushes.
void add_large(std::vector<PackShape>& shapes, const PackView& view) {
  const std::optional<double> mm = laid_on(view, sheet::Side::lower);
  const double shim_top = 398 - shim_height(mm);
  const PackReach reach = PackReach::lower;
  shapes.push_back({Drawing::large_lever, reach, PackLook::lever, bent({{66, 402}, {129, 405}, {182, 420}})});
  shapes.push_back({Drawing::large_shim, reach, mm ? PackLook::shim : PackLook::no_shim,
                    rectangle(88, shim_top, 40, 398 - shim_top)});
  shapes.push_back({Drawing::large_bearing, reach, PackLook::bearing, rectangle(90, shim_top - 22, 37, 21, 4)});
  shapes.push_back({Drawing::pack, reach, PackLook::finger, bent({{108, shim_top - 24}, {128, 318}, {165, 271}})});
}

void add_small(std::vector<PackShape>& shapes, const PackView& view) {
  const std::optional<double> mm = laid_on(view, sheet::Side::upper);
  const double shim_top = 347 - shim_height(mm);
  const PackReach reach = PackReach::upper;
  shapes.push_back({Drawing::small_lever, reach, PackLook::lever, bent({{51, 352}, {126, 357}, {176, 377}})});
  shapes.push_back({Drawing::small_shim, reach, mm ? PackLook::shim : PackLook::no_shim,
                    rectangle(42, shim_top, 34, 347 - shim_top)});
  shapes.push_back({Drawing::small_bearing, reach, PackLook::bearing, rectangle(43, shim_top - 20, 32, 19, 4)});
  shapes.push_back({Drawing::pack, reach, PackLook::finger,
                    bent({{59, shim_top - 22}, {92, 286}, {134, 270}, {152, 252}, {162, 216}})});
}

}  // namespace

std::vector<PackShape> shapes_of(const PackView& view) {
  std::vector<PackShape> shapes;
  add_shafts_and_hub(shapes);
  add_small(shapes, view);
  add_large(shapes, view);
  add_pack(shapes);
  shapes.push_back({Drawing::housing, PackReach::both, PackLook::wall, bent({{48, 437}, {186, 437}, {186, 402}})});
  return shapes;
}

}  // namespace shimwright::widgets
