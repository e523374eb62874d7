#include "shimwright/shell/icon.h"

#include <QPainter>
#include <QPixmap>

#include "shimwright/widgets/style.h"

namespace shimwright::shell {

namespace {

constexpr int icon_size = 128;
constexpr double line_width = 3;

}  // namespace

QIcon program_icon() {
  const widgets::Colours& colours = widgets::colours_of(widgets::Scheme::light);
  QPixmap picture(icon_size, icon_size);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  const auto box = [&painter](const QRectF& rect, const QColor& fill, const QColor& edge) {
    painter.setPen(QPen(edge, line_width));
    painter.setBrush(fill);
    painter.drawRect(rect);
  };
  painter.setPen(QPen(colours.edge, line_width));
  painter.setBrush(colours.ground);
  painter.drawRoundedRect(QRectF(4, 4, 120, 120), 22, 22);
  painter.setPen(QPen(colours.soft, line_width, Qt::DashDotLine));
  painter.drawLine(QPointF(28, 20), QPointF(28, 108));
  box({34, 20, 12, 88}, colours.metal, colours.text);
  box({46, 46, 14, 24}, colours.metal, colours.text);
  box({60, 50, 48, 16}, colours.blue, colours.text);
  box({46, 82, 42, 14}, colours.amber, colours.amber_edge);
  return QIcon(picture);
}

}  // namespace shimwright::shell
