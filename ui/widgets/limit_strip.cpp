#include "shimwright/widgets/limit_strip.h"

#include <QPainter>
#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "paint.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/units.h"

namespace shimwright::widgets {

namespace {

constexpr double side_room = 34;
constexpr double bar_top = 24;
constexpr double bar_height = 54;
constexpr double widest = 1.5;  ///< times the span of the limits is seen beyond them

/// From millimetres to pixels and back.
struct LimitScale {
  double low = 0;
  double high = 1;
  double left = 0;
  double right = 1;
  [[nodiscard]] double x(double mm) const { return left + (right - left) * (mm - low) / (high - low); }
  [[nodiscard]] bool holds(double mm) const { return mm >= low && mm <= high; }
};

LimitScale scale_of(const LimitStripView& view, int width) {
  const double span = std::max(view.most_mm - view.least_mm, 0.001);
  LimitScale scale{view.least_mm - span * 0.2, view.most_mm + span * 0.2, side_room, width - side_room};
  for (const LimitMark& mark : view.marks) {
    scale.low = std::min(scale.low, mark.mm - span * 0.05);
    scale.high = std::max(scale.high, mark.mm + span * 0.05);
  }
  scale.low = std::max(scale.low, view.least_mm - widest * span);
  scale.high = std::min(scale.high, view.most_mm + widest * span);
  return scale;
}

/// Pushes places, which are sorted, apart to `step`, to both sides alike, and keeps them between `low` and `high`.
void spread(std::vector<double>& places, double step, double low, double high) {
  std::vector<double> leftwards = places;
  for (std::size_t at = 1; at < places.size(); ++at) {
    places[at] = std::max(places[at], places[at - 1] + step);
    const std::size_t back = places.size() - 1 - at;
    leftwards[back] = std::min(leftwards[back], leftwards[back + 1] - step);
  }
  double least = low;
  for (std::size_t at = 0; at < places.size(); ++at) {
    places[at] = std::max((places[at] + leftwards[at]) / 2, least);
    least = places[at] + step;
  }
  double most = high;
  for (auto place = places.rbegin(); place != places.rend(); ++place) {
    *place = std::min(*place, most);
    most = *place - step;
  }
}

double mark_side(std::size_t count, int width) {
  return static_cast<double>(count) * 33 > width - 8 ? 25.0 : 31.0;
}

/// Places so that each mark stands on its own side of the limits, as far as there is room for that.
void keep_sides(std::vector<double>& places, const std::vector<double>& mm, const LimitStripView& view,
                const LimitScale& scale, double step) {
  const double half = step / 2 + 1;
  const std::array<double, 4> borders{scale.left - side_room + 3, scale.x(view.least_mm), scale.x(view.most_mm),
                                      scale.right + side_room - 3};
  const auto below = std::lower_bound(mm.begin(), mm.end(), view.least_mm) - mm.begin();
  const auto inside = std::upper_bound(mm.begin(), mm.end(), view.most_mm) - mm.begin();
  const std::array<std::ptrdiff_t, 4> ends{0, below, inside, static_cast<std::ptrdiff_t>(mm.size())};
  for (std::size_t part = 0; part < 3; ++part) {
    std::vector<double> own(places.begin() + ends[part], places.begin() + ends[part + 1]);
    const double low = borders[part] + half;
    const double high = borders[part + 1] - half;
    if (!own.empty() && high - low >= static_cast<double>(own.size() - 1) * step) {
      spread(own, step, low, high);
      std::copy(own.begin(), own.end(), places.begin() + ends[part]);
    }
  }
}

/// Marks side by side; in two rows where they would not fit into one.
std::vector<QRectF> boxes_of(const LimitStripView& view, int width) {
  const std::size_t count = view.marks.size();
  const double side = mark_side(count, width);
  const double step = side + 2;
  const bool two_rows = static_cast<double>(count) * step > width - 8;
  const LimitScale scale = scale_of(view, width);
  std::vector<std::size_t> order(count);
  std::iota(order.begin(), order.end(), 0U);
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t left, std::size_t right) { return view.marks[left].mm < view.marks[right].mm; });
  std::vector<QRectF> boxes(count);
  const std::size_t rows = two_rows ? 2 : 1;
  for (std::size_t row = 0; row < rows; ++row) {
    std::vector<double> places;
    std::vector<double> values;
    for (std::size_t at = row; at < count; at += rows) {
      values.push_back(view.marks[order[at]].mm);
      places.push_back(scale.x(std::clamp(values.back(), scale.low, scale.high)));
    }
    keep_sides(places, values, view, scale, step);
    spread(places, step, 4 + side / 2, width - 4 - side / 2);
    const double middle = bar_top + bar_height * (two_rows ? (row == 0 ? 0.25 : 0.75) : 0.5);
    for (std::size_t at = 0; at < places.size(); ++at) {
      boxes[order[row + at * rows]] = QRectF(places[at] - side / 2, middle - side / 2, side, side);
    }
  }
  return boxes;
}

/// The largest of 1, 2, 5, 10, … that gives at least four ticks.
double tick_step(double range) {
  const double ten = std::pow(10.0, std::floor(std::log10(range)));
  for (const double part : {1.0, 0.5, 0.2, 0.1}) {
    if (range / (ten * part) >= 4) {
      return ten * part;
    }
  }
  return ten * 0.05;
}

void paint_ticks(QPainter& painter, const LimitScale& scale, const Colours& colours, const QFont& type) {
  const double one = millimetres_of_unit_shown();
  const double figure = tick_step((scale.high - scale.low) / one);
  const double step = figure * one;
  const int decimals = std::clamp(static_cast<int>(std::ceil(-std::log10(figure) - 1e-9)), 0, 5);
  painter.setFont(type);
  for (double at = std::ceil(scale.low / step); at * step <= scale.high; at += 1) {
    const double x = scale.x(at * step);
    painter.setPen(QPen(colours.edge, 1));
    painter.drawLine(QPointF(x, bar_top + bar_height + 5), QPointF(x, bar_top + bar_height + 11));
    painter.setPen(colours.soft);
    // Adding nothing turns a zero with a sign into a plain one.
    text_at(painter, {x, bar_top + bar_height + 21}, QString::number(at * figure + 0.0, 'f', decimals));
  }
}

void paint_guard(QPainter& painter, const QRectF& zone, const Colours& colours) {
  painter.save();
  painter.setClipRect(zone);
  painter.setPen(QPen(colours.amber_edge, 1.4));
  const double apart = 8;
  const int strokes = static_cast<int>(std::ceil((zone.width() + zone.height()) / apart));
  for (int stroke = 0; stroke < strokes; ++stroke) {
    const double x = zone.left() - zone.height() + stroke * apart;
    painter.drawLine(QPointF(x, zone.bottom()), QPointF(x + zone.height(), zone.top()));
  }
  painter.restore();
}

void paint_limits(QPainter& painter, const LimitStripView& view, const LimitScale& scale, const Colours& colours,
                  const QFont& type) {
  const double least = scale.x(view.least_mm);
  const double most = scale.x(view.most_mm);
  const double guard = std::min(scale.x(view.least_mm + view.guard_mm) - least, (most - least) / 2);
  painter.fillRect(QRectF(least, bar_top, most - least, bar_height), colours.wash);
  if (view.guard_mm > 0) {
    paint_guard(painter, QRectF(least, bar_top, guard, bar_height), colours);
    paint_guard(painter, QRectF(most - guard, bar_top, guard, bar_height), colours);
  }
  painter.setFont(type);
  for (const double mm : {view.least_mm, view.most_mm}) {
    painter.setPen(QPen(colours.text, 3));
    const double x = scale.x(mm);
    painter.drawLine(QPointF(x, bar_top - 5), QPointF(x, bar_top + bar_height + 5));
    text_at(painter, {x, bar_top - 15}, length_shown(mm, view.decimals));
  }
}

/// How far down in its box the digit of a mark stands, and in which colour.
std::pair<double, QColor> digit_of(Mark mark, const Colours& colours) {
  switch (mark) {
    case Mark::within:
      return {0.5, colours.on_blue};
    case Mark::too_small:
      return {0.36, colours.on_blue};
    case Mark::too_large:
      return {0.67, colours.on_blue};
    case Mark::on_limit:
      return {0.54, colours.on_amber};
    default:
      return {0.2, colours.text};
  }
}

void paint_numbered(QPainter& painter, const QRectF& box, const LimitMark& mark, const Colours& colours) {
  if (mark.mark == Mark::none) {
    painter.setPen(QPen(colours.text, 3));
    painter.drawLine(QPointF(box.center().x(), box.center().y() - 1), QPointF(box.center().x(), box.bottom() + 4));
  }
  paint_mark(painter, box, mark.mark, colours);
  const auto [down, colour] = digit_of(mark.mark, colours);
  painter.setPen(colour);
  text_at(painter, {box.center().x(), box.top() + box.height() * down}, QString::number(mark.number));
}

/// What leads from a mark to its true place: a fine line, or an arrow where the strip ends before it.
void paint_lead(QPainter& painter, const QRectF& box, double mm, const LimitScale& scale, const Colours& colours) {
  const double x = scale.x(std::clamp(mm, scale.low, scale.high));
  painter.setPen(QPen(colours.text, 1.2));
  if (scale.holds(mm)) {
    painter.drawLine(QPointF(box.center().x(), box.bottom()), QPointF(x, bar_top + bar_height + 8));
    return;
  }
  const double towards = mm > scale.high ? 1 : -1;
  const double y = bar_top + bar_height + 4;
  const QPointF tip(box.center().x() + towards * 14, y);
  painter.drawLine(QPointF(box.center().x() - towards * 12, y), tip);
  painter.setBrush(colours.text);
  painter.drawPolygon(QPolygonF({tip, tip + QPointF(-towards * 8, -5), tip + QPointF(-towards * 8, 5)}));
}

}  // namespace

LimitStrip::LimitStrip(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAccessibleName(tr("Limits"));
}

void LimitStrip::set_view(const LimitStripView& view) {
  view_ = view;
  const auto written = [&view](double mm) { return length_shown(mm, view.decimals); };
  QStringList said;
  for (const LimitMark& mark : view.marks) {
    said << (mark.mark == Mark::none ? tr("spot %1: %2").arg(mark.number).arg(written(mark.mm))
                                     : tr("spot %1: %2 %3").arg(mark.number).arg(written(mark.mm), word_of(mark.mark)));
  }
  setAccessibleName(with_length_unit(tr("Limits %1 to %2 mm")).arg(written(view.least_mm), written(view.most_mm)));
  setAccessibleDescription(said.join(QStringLiteral("; ")));
  update();
}

std::vector<QRectF> LimitStrip::mark_boxes() const {
  return boxes_of(view_, width());
}

void LimitStrip::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const LimitScale scale = scale_of(view_, width());
  paint_limits(painter, view_, scale, colours, type_of(font(), 17, true));
  paint_ticks(painter, scale, colours, type_of(font(), 15));
  const std::vector<QRectF> boxes = mark_boxes();
  for (std::size_t at = 0; at < boxes.size(); ++at) {
    paint_lead(painter, boxes[at], view_.marks[at].mm, scale, colours);
  }
  painter.setFont(type_of(font(), mark_side(boxes.size(), width()) > 28 ? 15 : 13, true));
  for (std::size_t at = 0; at < boxes.size(); ++at) {
    paint_numbered(painter, boxes[at], view_.marks[at], colours);
  }
}

}  // namespace shimwright::widgets
