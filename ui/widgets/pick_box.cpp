#include "shimwright/widgets/pick_box.h"

#include <QPainter>
#include <QWheelEvent>

#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::widgets {

PickBox::PickBox(const QString& title, QWidget* parent) : QComboBox(parent) {
  setAccessibleName(title);
  setMinimumHeight(pixels::target);
  setSizeAdjustPolicy(QComboBox::AdjustToContents);
  setFocusPolicy(Qt::StrongFocus);
}

std::string PickBox::id() const {
  return plain(currentData().toString());
}

void PickBox::choose(const std::string& id) {
  if (const int at = id.empty() ? -1 : findData(qt(id)); at >= 0) {
    setCurrentIndex(at);
  }
}

/// The style sheet leaves the arrow out; there is none where there is nothing to choose.
void PickBox::paintEvent(QPaintEvent* event) {
  QComboBox::paintEvent(event);
  if (count() < 2) {
    return;
  }
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(colours_of(*this).text);
  const QPointF middle(width() - 22.0, height() / 2.0);
  painter.drawPolygon(QPolygonF({middle + QPointF(-7, -4), middle + QPointF(7, -4), middle + QPointF(0, 5)}));
}

void PickBox::wheelEvent(QWheelEvent* event) {
  event->ignore();
}

}  // namespace shimwright::widgets
