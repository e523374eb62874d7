#include "shimwright/widgets/disc_view.h"

#include <QPainter>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "paint.h"
#include "shimwright/widgets/style.h"

namespace shimwright::widgets {

namespace {

QPointF on_circle(const QPointF& middle, double radius, double angle_deg) {
  const double angle = angle_deg * std::acos(-1.0) / 180.0;
  return {middle.x() + radius * std::sin(angle), middle.y() - radius * std::cos(angle)};
}

/// A needle through the hub, its head where the disc stands highest.
void paint_needle(QPainter& painter, const QPointF& middle, double length, double angle_deg, const Colours& colours) {
  painter.save();
  painter.translate(middle);
  painter.rotate(angle_deg);
  painter.setPen(QPen(colours.text, 2.5, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(QPointF(0, length), QPointF(0, -length * 0.4));
  painter.setPen(Qt::NoPen);
  painter.setBrush(colours.text);
  const double half = length * 0.42;
  painter.drawPolygon(QPolygonF({QPointF(-half, -length * 0.25), QPointF(half, -length * 0.25), QPointF(0, -length)}));
  painter.restore();
}

void paint_spot(QPainter& painter, const QPointF& at, double radius, const DiscSpot& spot, const Colours& colours) {
  painter.setBrush(spot.next ? colours.wash : colours.card);
  painter.setPen(QPen(spot.next ? colours.blue : colours.text, spot.next ? 4.5 : 2.0));
  painter.drawEllipse(at, radius, radius);
  painter.setPen(colours.text);
  text_at(painter, at, QString::number(spot.number));
}

}  // namespace

DiscView::DiscView(QWidget* parent) : QWidget(parent) {
  setMinimumSize(140, 140);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  set_spots({}, std::nullopt);
}

void DiscView::set_spots(const std::vector<DiscSpot>& spots, std::optional<double> high_at_deg) {
  spots_ = spots;
  high_at_deg_ = high_at_deg;
  QStringList said;
  for (const DiscSpot& spot : spots) {
    if (spot.next) {
      said << tr("spot %1: to be measured now").arg(spot.number);
    } else if (spot.mark != Mark::none) {
      said << tr("spot %1: %2").arg(spot.number).arg(word_of(spot.mark));
    }
  }
  if (high_at_deg) {
    said << tr("stands highest at %1 degrees from the top, clockwise").arg(std::lround(*high_at_deg));
  }
  setAccessibleName(tr("Disc from above"));
  setAccessibleDescription(said.join(QStringLiteral("; ")));
  update();
}

void DiscView::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const double half = std::min(width(), height()) / 2.0;
  const QPointF middle = QRectF(rect()).center();
  const double spot = std::clamp(half * 0.19, 14.0, 26.0);
  const double ring = half - spot - 3;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(colours.lining, half * 0.15));
  painter.drawEllipse(middle, ring, ring);
  const double hub = ring * 0.36;
  painter.setPen(QPen(colours.edge, 2.5));
  painter.drawEllipse(middle, hub, hub);
  if (high_at_deg_) {
    paint_needle(painter, middle, hub - 4, *high_at_deg_, colours);
  }
  painter.setFont(type_of(font(), static_cast<int>(spot), true));
  const double small = spot * 1.05;
  for (const DiscSpot& each : spots_) {
    const QPointF inside = on_circle(middle, (hub + ring - spot) / 2 + 1, each.angle_deg);
    paint_mark(painter, QRectF(inside.x() - small / 2, inside.y() - small / 2, small, small), each.mark, colours);
    paint_spot(painter, on_circle(middle, ring, each.angle_deg), spot, each, colours);
  }
}

}  // namespace shimwright::widgets
