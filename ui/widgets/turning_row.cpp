#include "shimwright/widgets/turning_row.h"

#include <algorithm>

namespace shimwright::widgets {

int TurningRow::width_side_by_side() const {
  int width = spacing() * std::max(0, count() - 1);
  for (int at = 0; at < count(); ++at) {
    width += itemAt(at)->minimumSize().width();
  }
  return std::max(width, least_width_);
}

void TurningRow::setGeometry(const QRect& rect) {
  const QMargins margins = contentsMargins();
  const int inside = rect.width() - margins.left() - margins.right();
  const Direction wanted = inside < width_side_by_side() ? TopToBottom : LeftToRight;
  if (wanted != direction()) {
    setDirection(wanted);
  }
  QBoxLayout::setGeometry(rect);
}

QSize TurningRow::minimumSize() const {
  const QMargins margins = contentsMargins();
  int widest = 0;
  for (int at = 0; at < count(); ++at) {
    widest = std::max(widest, itemAt(at)->minimumSize().width());
  }
  return {widest + margins.left() + margins.right(), QBoxLayout::minimumSize().height()};
}

}  // namespace shimwright::widgets
