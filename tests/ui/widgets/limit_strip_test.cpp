#include "shimwright/widgets/limit_strip.h"

#include <catch2/catch.hpp>

#include "painted.h"

using namespace shimwright;
using widgets::LimitStrip;
using widgets::LimitStripView;
using widgets::Mark;

namespace {

LimitStripView lower_float(const std::vector<widgets::LimitMark>& marks) {
  return {.least_mm = 0.25, .most_mm = 0.85, .guard_mm = 0.015, .decimals = 2, .marks = marks};
}

void check_apart_and_inside(const LimitStrip& strip) {
  const std::vector<QRectF> boxes = strip.mark_boxes();
  for (std::size_t at = 0; at < boxes.size(); ++at) {
    CHECK(QRectF(strip.rect()).contains(boxes[at]));
    for (std::size_t other = at + 1; other < boxes.size(); ++other) {
      CHECK_FALSE(boxes[at].intersects(boxes[other]));
    }
  }
}

}  // namespace

TEST_CASE("marks never hide each other and never leave the strip") {
  test::in_both_schemes([](const widgets::Colours&) {
    LimitStrip strip;
    for (const int width : {300, 810, 1400}) {
      for (const std::vector<double>& values :
           {std::vector<double>{0.93, 0.905, 0.96},
            {0.5, 0.5, 0.5, 0.5},
            {0.25, 0.25, 0.85},
            {-7.0, 40.0, 40.0, 0.5},
            {0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.84, 0.85, 0.86, 9.0, 9.0}}) {
        std::vector<widgets::LimitMark> marks;
        for (const double mm : values) {
          marks.push_back({static_cast<int>(marks.size()) + 1, mm, mm > 0.85 ? Mark::too_large : Mark::on_limit});
        }
        strip.set_view(lower_float(marks));
        test::painted(strip, {width, 112});
        check_apart_and_inside(strip);
      }
    }
  });
}

TEST_CASE("marks stand in the order of their values, a lone one at its place") {
  LimitStrip strip;
  strip.resize(810, 112);
  strip.set_view(lower_float({{1, 0.93, Mark::too_large}, {2, 0.905, Mark::too_large}, {3, 0.96, Mark::too_large}}));
  const std::vector<QRectF> boxes = strip.mark_boxes();
  REQUIRE(boxes.size() == 3);
  CHECK(boxes[1].center().x() < boxes[0].center().x());
  CHECK(boxes[0].center().x() < boxes[2].center().x());
  strip.set_view(lower_float({{1, 0.55, Mark::within}}));
  CHECK(strip.mark_boxes().front().center().x() == Approx(405));
}

TEST_CASE("a mark that gives way stays on its own side of the limits") {
  LimitStrip strip;
  strip.resize(810, 112);
  const std::vector<widgets::LimitMark> inside{
      {1, 0.84, Mark::within}, {2, 0.84, Mark::within}, {3, 0.84, Mark::within}};
  strip.set_view(lower_float(inside));
  // The scale is that of the limits alone: 0.25 and 0.85 lie a seventh of it from its ends.
  const double most = 34 + 742 * 6.0 / 7.0;
  for (const QRectF& box : strip.mark_boxes()) {
    CHECK(box.right() < most);
  }
}

TEST_CASE("the strip says in words what it shows") {
  LimitStrip strip;
  strip.set_view(lower_float({{2, 0.905, Mark::too_large}, {3, 0.5, Mark::none}}));
  CHECK(strip.accessibleName() == "Limits 0.25 to 0.85 mm");
  CHECK(strip.accessibleDescription() == "spot 2: 0.91 too large; spot 3: 0.50");
}

TEST_CASE("limits that are equal or unset still paint") {
  LimitStrip strip;
  test::painted(strip, {300, 112});
  LimitStripView view;
  view.least_mm = 1;
  view.most_mm = 1;
  view.guard_mm = 0.2;
  view.marks = {{1, 1, Mark::within}, {2, 2, Mark::none}};
  strip.set_view(view);
  test::painted(strip, {300, 112});
  check_apart_and_inside(strip);
}
