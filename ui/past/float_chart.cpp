#include "float_chart.h"

#include <QPainter>
#include <QStringList>
#include <algorithm>
#include <utility>

#include "shimwright/widgets/style.h"
#include "shimwright/widgets/units.h"

namespace shimwright::past {

namespace {

constexpr double left_room = 58;
constexpr double right_room = 16;
constexpr double top_room = 62;
constexpr double bottom_room = 34;
constexpr double radius = 6;
constexpr double verdict_side = 14;

QFont chart_font(const QFont& base, int pixels, bool strong) {
  QFont font = base;
  font.setPixelSize(pixels);
  font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
  return font;
}

/// From values to pixels.
struct ChartScale {
  QRectF area;
  double low = 0;
  double high = 1;
  double first = 0;
  double last = 1;

  [[nodiscard]] double y(double mm) const { return area.bottom() - area.height() * (mm - low) / (high - low); }
  [[nodiscard]] double x(double at) const { return area.left() + area.width() * (at - first) / (last - first); }
};

ChartScale scale_of(const std::vector<ChartPoint>& points, const QSize& size) {
  ChartScale scale;
  scale.area = QRectF(left_room, top_room, std::max(size.width() - left_room - right_room, 40.0),
                      std::max(size.height() - top_room - bottom_room, 40.0));
  if (points.empty()) {
    return scale;
  }
  scale.low = points.front().least_mm;
  scale.high = points.front().most_mm;
  scale.first = scale.last = points.front().x;
  for (const ChartPoint& each : points) {
    const double u = each.u_mm.value_or(0);
    scale.low = std::min({scale.low, each.least_mm, each.mm - u});
    scale.high = std::max({scale.high, each.most_mm, each.mm + u});
    scale.first = std::min(scale.first, each.x);
    scale.last = std::max(scale.last, each.x);
  }
  const double above = std::max((scale.high - scale.low) * 0.08, 0.01);
  const double beside = std::max((scale.last - scale.first) * 0.1, 1.0);
  scale.low -= above;
  scale.high += above;
  scale.first -= beside;
  scale.last += beside;
  return scale;
}

/// The limits of a job hold until those of the next one do.
void paint_band(QPainter& painter, const std::vector<ChartPoint>& points, const ChartScale& scale,
                const widgets::Colours& colours) {
  std::optional<double> least;
  std::optional<double> most;
  for (std::size_t at = 0; at < points.size(); ++at) {
    const double from = at == 0 ? scale.area.left() : scale.x(points[at].x);
    const double to = at + 1 == points.size() ? scale.area.right() : scale.x(points[at + 1].x);
    const double top = scale.y(points[at].most_mm);
    const double bottom = scale.y(points[at].least_mm);
    painter.fillRect(QRectF(from, top, to - from, bottom - top), colours.wash);
    painter.setPen(QPen(colours.edge, 1.4));
    painter.drawLine(QPointF(from, top), QPointF(to, top));
    painter.drawLine(QPointF(from, bottom), QPointF(to, bottom));
    if (least == points[at].least_mm && most == points[at].most_mm) {
      continue;
    }
    // Limits that change are written where they change, the first beside the chart.
    const double end = at == 0 ? scale.area.left() - 6 : std::max(from - 4, scale.area.left() + 44);
    painter.setPen(colours.soft);
    for (const double mm : {points[at].least_mm, points[at].most_mm}) {
      painter.drawText(QRectF(end - 60, scale.y(mm) - 11, 60, 22), Qt::AlignRight | Qt::AlignVCenter,
                       widgets::length_shown(mm, 2));
    }
    least = points[at].least_mm;
    most = points[at].most_mm;
  }
}

void paint_joins(QPainter& painter, const std::vector<ChartPoint>& points, const ChartScale& scale,
                 const widgets::Colours& colours) {
  painter.setPen(QPen(colours.blue, 2.4));
  for (std::size_t at = 0; at < points.size(); ++at) {
    for (std::size_t later = at + 1; later < points.size() && !points[at].pack.isEmpty(); ++later) {
      if (points[later].pack == points[at].pack) {
        painter.drawLine(QPointF(scale.x(points[at].x), scale.y(points[at].mm)),
                         QPointF(scale.x(points[later].x), scale.y(points[later].mm)));
        break;
      }
    }
  }
}

enum class PointKind { final_float, as_found, so_far };

PointKind kind_of(const ChartPoint& point) {
  return point.as_found ? PointKind::as_found : point.so_far ? PointKind::so_far : PointKind::final_float;
}

QString kind_word(PointKind kind) {
  switch (kind) {
    case PointKind::final_float:
      return FloatChart::tr("final");
    case PointKind::as_found:
      return FloatChart::tr("as found");
    case PointKind::so_far:
      return FloatChart::tr("so far");
  }
  return {};
}

void paint_mark_of(QPainter& painter, const QPointF& at, PointKind kind, const widgets::Colours& colours) {
  const bool whole = kind == PointKind::final_float;
  painter.setPen(QPen(colours.blue, whole ? 1 : 2.6));
  painter.setBrush(whole ? colours.blue : colours.card);
  painter.drawEllipse(at, radius, radius);
  if (kind == PointKind::so_far) {
    painter.setBrush(colours.blue);
    painter.drawEllipse(at, 1, 1);
  }
}

void paint_points(QPainter& painter, const std::vector<ChartPoint>& points, const ChartScale& scale,
                  const widgets::Colours& colours) {
  for (const ChartPoint& each : points) {
    const QPointF at(scale.x(each.x), scale.y(each.mm));
    if (each.u_mm) {
      painter.setPen(QPen(colours.text, 1.4));
      const double top = scale.y(each.mm + *each.u_mm);
      const double bottom = scale.y(each.mm - *each.u_mm);
      painter.drawLine(QPointF(at.x(), top), QPointF(at.x(), bottom));
      painter.drawLine(QPointF(at.x() - 4, top), QPointF(at.x() + 4, top));
      painter.drawLine(QPointF(at.x() - 4, bottom), QPointF(at.x() + 4, bottom));
    }
    paint_mark_of(painter, at, kind_of(each), colours);
    if (each.mark != widgets::Mark::none && each.mark != widgets::Mark::within) {
      widgets::paint_mark(painter, QRectF(at.x() + radius + 4, at.y() - verdict_side / 2, verdict_side, verdict_side),
                          each.mark, colours);
    }
  }
}

/// Each place once, and none over its neighbour.
void paint_feet(QPainter& painter, const std::vector<ChartPoint>& points, const ChartScale& scale,
                const widgets::Colours& colours) {
  painter.setPen(colours.soft);
  double free_from = 0;
  for (const ChartPoint& each : points) {
    const double width = painter.fontMetrics().horizontalAdvance(each.x_text) + 8;
    const double right_end = scale.area.right() + right_room;
    const double left = std::clamp(scale.x(each.x) - width / 2, 0.0, std::max(right_end - width, 0.0));
    if (left >= free_from) {
      painter.drawText(QRectF(left, scale.area.bottom() + 8, width, 22), Qt::AlignCenter, each.x_text);
      free_from = left + width + 6;
    }
  }
}

}  // namespace

FloatChart::FloatChart(const QString& title, QWidget* parent) : QWidget(parent), title_(title) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setAccessibleName(title);
}

void FloatChart::set_points(std::vector<ChartPoint> points) {
  points_ = std::move(points);
  QStringList said;
  for (const ChartPoint& each : points_) {
    said << tr("job %1, %2: %3 %4, limits %5 to %6, %7")
                .arg(each.job, each.x_text, kind_word(kind_of(each)), widgets::length_shown(each.mm, 2),
                     widgets::length_shown(each.least_mm, 2), widgets::length_shown(each.most_mm, 2), each.verdict);
  }
  setAccessibleDescription(said.join(QStringLiteral("; ")));
  update();
}

std::vector<QPointF> FloatChart::places() const {
  const ChartScale scale = scale_of(points_, size());
  std::vector<QPointF> all;
  for (const ChartPoint& each : points_) {
    all.emplace_back(scale.x(each.x), scale.y(each.mm));
  }
  return all;
}

void FloatChart::paintEvent(QPaintEvent* /*event*/) {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(chart_font(font(), widgets::pixels::base, true));
  painter.setPen(colours.text);
  painter.drawText(QRectF(8, 2, width() - 16, 26), Qt::AlignLeft | Qt::AlignVCenter, title_);
  painter.setFont(chart_font(font(), 15, false));
  double left = 14;
  const bool goes_on = std::any_of(points_.begin(), points_.end(), [](const ChartPoint& each) { return each.so_far; });
  for (const PointKind kind : {PointKind::final_float, PointKind::as_found, PointKind::so_far}) {
    if (kind == PointKind::so_far && !goes_on) {
      continue;
    }
    paint_mark_of(painter, {left, 43}, kind, colours);
    painter.setPen(colours.soft);
    const QString word = kind_word(kind);
    painter.drawText(QPointF(left + 12, 48), word);
    left += 12 + painter.fontMetrics().horizontalAdvance(word) + 26;
  }
  const ChartScale scale = scale_of(points_, size());
  if (points_.empty()) {
    painter.setPen(colours.soft);
    painter.drawText(scale.area, Qt::AlignCenter | Qt::TextWordWrap, tr("No float was judged yet."));
    return;
  }
  paint_band(painter, points_, scale, colours);
  paint_joins(painter, points_, scale, colours);
  paint_points(painter, points_, scale, colours);
  paint_feet(painter, points_, scale, colours);
}

}  // namespace shimwright::past
