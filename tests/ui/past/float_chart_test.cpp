#include "float_chart.h"

#include <QImage>
#include <catch2/catch.hpp>

#include "shimwright/widgets/style.h"

using namespace shimwright;

namespace {

past::ChartPoint point(double x, double mm, bool as_found = false) {
  past::ChartPoint made;
  made.x = x;
  made.x_text = QString::number(x) + " km";
  made.job = "1102";
  made.as_found = as_found;
  made.mm = mm;
  made.u_mm = 0.02;
  made.least_mm = 0.25;
  made.most_mm = 0.85;
  made.verdict = "within";
  return made;
}

QImage painted(past::FloatChart& chart) {
  chart.resize(420, 250);
  return chart.grab().toImage();
}

}  // namespace

TEST_CASE("a larger float lies higher, a later job farther to the right, and all of it in the chart") {
  past::FloatChart chart("Lower disc");
  chart.resize(420, 250);
  chart.set_points({point(41020, 0.62), point(88150, 0.71, true), point(121400, 1.40)});
  const auto places = chart.places();
  REQUIRE(places.size() == 3);
  CHECK(places[0].x() < places[1].x());
  CHECK(places[1].x() < places[2].x());
  CHECK(places[0].y() > places[1].y());
  CHECK(places[1].y() > places[2].y());
  for (const QPointF& each : places) {
    CHECK(QRectF(chart.rect()).contains(each));
  }
}

TEST_CASE("one point alone, and none, can be drawn") {
  past::FloatChart chart("Lower disc");
  CHECK(chart.places().empty());
  CHECK_FALSE(painted(chart).isNull());
  chart.set_points({point(41020, 0.62)});
  CHECK(QRectF(0, 0, 420, 250).contains(chart.places().front()));
  CHECK_FALSE(painted(chart).isNull());
}

TEST_CASE("a final float and one as found are told apart by their shape, not by colour") {
  past::FloatChart chart("Lower disc");
  chart.resize(420, 250);
  auto only = point(41020, 0.55);
  only.u_mm.reset();
  chart.set_points({only});
  const QPoint middle = chart.places().front().toPoint();
  const QColor final_middle = painted(chart).pixelColor(middle);
  only.as_found = true;
  chart.set_points({only});
  const QImage ring = painted(chart);
  const auto& colours = widgets::colours_of(chart);
  CHECK(final_middle == colours.blue);
  CHECK(ring.pixelColor(middle) == colours.card);
}

TEST_CASE("limits that changed are drawn as they were at each time") {
  past::FloatChart chart("Lower disc");
  auto early = point(10000, 0.5);
  auto late = point(90000, 0.5);
  late.least_mm = 0.45;
  chart.set_points({early, late});
  const QImage image = painted(chart);
  const auto& colours = widgets::colours_of(chart);
  const auto places = chart.places();
  // Between the old and the new lower limit, a little right of each point.
  const int y = static_cast<int>(places[0].y() + 12);
  early.least_mm = late.least_mm = 0.25;
  CHECK(image.pixelColor(static_cast<int>(places[0].x()) + 30, y + 20) == colours.wash);
  CHECK(image.pixelColor(static_cast<int>(places[1].x()) + 14, y + 20) != colours.wash);
}

TEST_CASE("who does not see it is told every point with its limits and verdict") {
  past::FloatChart chart("Float of the lower disc");
  chart.set_points({point(41020, 0.62), point(88150, 0.71, true)});
  CHECK(chart.accessibleName() == "Float of the lower disc");
  CHECK(chart.accessibleDescription() ==
        "job 1102, 41020 km: final 0.62, limits 0.25 to 0.85, within; "
        "job 1102, 88150 km: as found 0.71, limits 0.25 to 0.85, within");
}
