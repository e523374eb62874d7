#include "shimwright/widgets/marks.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace shimwright::widgets {

namespace {

QPolygonF triangle(const QRectF& box, bool up) {
  const QRectF body = box.adjusted(0, box.height() * 0.07, 0, -box.height() * 0.07);
  if (up) {
    return QPolygonF({body.bottomLeft(), body.bottomRight(), QPointF(body.center().x(), body.top())});
  }
  return QPolygonF({body.topLeft(), body.topRight(), QPointF(body.center().x(), body.bottom())});
}

QPainterPath half_disc(const QRectF& box, double line) {
  const double bottom = box.top() + box.height() * 0.84;
  const QRectF whole(box.left() + line / 2, box.top() + box.height() * 0.14, box.width() - line, box.height() * 1.4);
  QPainterPath path(QPointF(whole.left(), bottom));
  path.arcTo(whole, 180, -180);
  path.lineTo(QPointF(whole.right(), bottom));
  path.closeSubpath();
  return path;
}

void paint_not_equal(QPainter& painter, const QRectF& box, const QColor& colour) {
  const double width = box.width();
  painter.setPen(QPen(colour, width * 0.15, Qt::SolidLine, Qt::FlatCap));
  for (const double at : {0.34, 0.66}) {
    const double y = box.top() + box.height() * at;
    painter.drawLine(QPointF(box.left() + width * 0.06, y), QPointF(box.right() - width * 0.06, y));
  }
  painter.setPen(QPen(colour, width * 0.13, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(QPointF(box.left() + width * 0.28, box.bottom()), QPointF(box.right() - width * 0.28, box.top()));
}

void paint_verdict(QPainter& painter, const QRectF& box, Mark mark, const Colours& colours) {
  painter.setPen(Qt::NoPen);
  if (mark == Mark::within) {
    painter.setBrush(colours.blue);
    painter.drawEllipse(box);
  } else if (mark == Mark::too_small || mark == Mark::too_large) {
    painter.setBrush(colours.brick);
    painter.drawPolygon(triangle(box, mark == Mark::too_large));
  } else if (mark == Mark::on_limit) {
    const double line = std::max(1.5, box.width() / 16);
    painter.setBrush(colours.amber);
    painter.setPen(QPen(colours.amber_edge, line));
    painter.drawPath(half_disc(box, line));
  } else {
    paint_not_equal(painter, box, colours.brick);
  }
}

/// A square of the job sheet: its edge first, then what lies in it.
void paint_square(QPainter& painter, const QRectF& box, Mark mark, const Colours& colours) {
  const double line = std::max(1.5, box.width() / 9);
  const QRectF square = box.adjusted(line / 2, line / 2, -line / 2, -line / 2);
  const double corner = box.width() * 0.14;
  QColor edge = mark == Mark::held ? colours.brick : mark == Mark::not_required ? colours.soft : colours.edge;
  if (mark == Mark::in_work || mark == Mark::done) {
    edge = colours.blue;
  } else if (mark == Mark::unproven) {
    edge = colours.text;
  }
  QPen pen(edge, line);
  if (mark == Mark::unproven) {
    pen.setDashPattern({2.0, 1.4});
    pen.setCapStyle(Qt::FlatCap);
  }
  painter.setPen(pen);
  painter.setBrush(mark == Mark::done ? edge : QColor(Qt::transparent));
  painter.drawRoundedRect(square, corner, corner);
  if (mark == Mark::in_work) {
    painter.fillRect(QRectF(square.left(), square.top(), square.width() / 2, square.height()), edge);
  } else if (mark == Mark::held) {
    painter.fillRect(QRectF(box.left() + 2.2 * line, box.center().y() - line, box.width() - 4.4 * line, 2 * line),
                     edge);
  } else if (mark == Mark::not_required) {
    painter.drawLine(square.bottomLeft(), square.topRight());
  }
}

void paint_deviation(QPainter& painter, const QRectF& box, const Colours& colours) {
  const double line = std::max(1.5, box.width() / 12);
  const QRectF square = box.adjusted(line / 2, line / 2, -line / 2, -line / 2);
  const double cut = box.width() * 0.42;
  painter.setPen(QPen(colours.amber_edge, line));
  painter.setBrush(colours.amber);
  painter.drawPolygon(
      QPolygonF({square.topLeft(), QPointF(square.right() - cut, square.top()),
                 QPointF(square.right(), square.top() + cut), square.bottomRight(), square.bottomLeft()}));
}

}  // namespace

void paint_mark(QPainter& painter, const QRectF& box, Mark mark, const Colours& colours) {
  if (mark == Mark::none) {
    return;
  }
  const double side = std::min(box.width(), box.height());
  const QRectF square(box.center().x() - side / 2, box.center().y() - side / 2, side, side);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  switch (mark) {
    case Mark::none:
      break;
    case Mark::within:
    case Mark::too_small:
    case Mark::too_large:
    case Mark::on_limit:
    case Mark::not_equal:
      paint_verdict(painter, square, mark, colours);
      break;
    case Mark::deviation:
      paint_deviation(painter, square, colours);
      break;
    case Mark::open:
    case Mark::in_work:
    case Mark::done:
    case Mark::held:
    case Mark::unproven:
    case Mark::not_required:
      paint_square(painter, square, mark, colours);
      break;
  }
  painter.restore();
}

QString word_of(Mark mark) {
  switch (mark) {
    case Mark::none:
      return {};
    case Mark::within:
      return QCoreApplication::translate("bench", "within");
    case Mark::too_small:
      return QCoreApplication::translate("bench", "too small");
    case Mark::too_large:
      return QCoreApplication::translate("bench", "too large");
    case Mark::on_limit:
      return QCoreApplication::translate("bench", "on limit");
    case Mark::not_equal:
      return QCoreApplication::translate("bench", "mixed");
    case Mark::open:
      return QCoreApplication::translate("bench", "to do");
    case Mark::in_work:
      return QCoreApplication::translate("bench", "in work");
    case Mark::done:
      return QCoreApplication::translate("bench", "done");
    case Mark::held:
      return QCoreApplication::translate("bench", "held");
    case Mark::deviation:
      return QCoreApplication::translate("bench", "deviation");
    case Mark::unproven:
      return QCoreApplication::translate("bench", "unproven");
    case Mark::not_required:
      return QCoreApplication::translate("bench", "not required");
  }
  return {};
}

MarkView::MarkView(Mark mark, int size, QWidget* parent) : QWidget(parent), mark_(mark) {
  setFixedSize(size, size);
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setAccessibleName(word_of(mark));
}

void MarkView::set_mark(Mark mark) {
  mark_ = mark;
  setAccessibleName(word_of(mark));
  update();
}

void MarkView::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  paint_mark(painter, QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), mark_, colours_of(*this));
}

}  // namespace shimwright::widgets
