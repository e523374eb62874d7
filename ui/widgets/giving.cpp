#include "shimwright/widgets/giving.h"

#include <QResizeEvent>
#include <algorithm>

namespace shimwright::widgets {

PageStack::PageStack(QWidget* parent) : QStackedWidget(parent) {
  connect(this, &QStackedWidget::currentChanged, this, &QWidget::updateGeometry);
}

QSize PageStack::minimumSizeHint() const {
  return currentWidget() == nullptr ? QSize() : currentWidget()->minimumSizeHint();
}

GivingScroll::GivingScroll(QWidget* parent) : Scroll(parent) {
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
  content()->installEventFilter(this);
}

QSize GivingScroll::sizeHint() const {
  const QSize wanted = column()->totalSizeHint();
  return {wanted.width(), column()->hasHeightForWidth() ? column()->totalHeightForWidth(width()) : wanted.height()};
}

QSize GivingScroll::minimumSizeHint() const {
  const QSize least = Scroll::minimumSizeHint();
  return {least.width(), std::min(least.height(), sizeHint().height())};
}

bool GivingScroll::eventFilter(QObject* watched, QEvent* event) {
  // A scroll area keeps to itself that its content wants another height.
  if (event->type() == QEvent::LayoutRequest) {
    updateGeometry();
  }
  return Scroll::eventFilter(watched, event);
}

void GivingScroll::resizeEvent(QResizeEvent* event) {
  Scroll::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) {
    updateGeometry();  // words wrap elsewhere now
  }
}

}  // namespace shimwright::widgets
