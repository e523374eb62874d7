#pragma once

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QRectF>
#include <QString>

/// What the painted widgets share.
namespace shimwright::widgets {

[[nodiscard]] inline QFont type_of(const QFont& base, int pixel_size, bool strong = false) {
  QFont type = base;
  type.setPixelSize(pixel_size);
  type.setWeight(strong ? QFont::DemiBold : QFont::Normal);
  return type;
}

/// `share` of `over`, the rest of `under`.
[[nodiscard]] inline QColor mixed(const QColor& over, const QColor& under, double share) {
  const auto part = [share](int above, int below) { return static_cast<int>(above * share + below * (1.0 - share)); };
  return {part(over.red(), under.red()), part(over.green(), under.green()), part(over.blue(), under.blue())};
}

/// Text with its middle at `middle`.
inline void text_at(QPainter& painter, const QPointF& middle, const QString& text) {
  painter.drawText(QRectF(middle.x() - 100, middle.y() - 20, 200, 40), Qt::AlignCenter, text);
}

}  // namespace shimwright::widgets
