#include "section_button.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

namespace {

constexpr int usual_width = 214;
constexpr int text_from = 16;
constexpr int text_margin = 10;

}  // namespace

SectionButton::SectionButton(const QString& title, QWidget* parent) : QAbstractButton(parent) {
  setText(title);
  setAccessibleName(title);
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
}

QSize SectionButton::sizeHint() const {
  QFont chosen = font();
  chosen.setPixelSize(widgets::pixels::base);
  chosen.setWeight(QFont::DemiBold);
  const int width = QFontMetrics(chosen).horizontalAdvance(text()) + text_from + text_margin;
  return {std::max(width, usual_width), widgets::pixels::target};
}

void SectionButton::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      click();
      break;
    case Qt::Key_Up:
      emit wants_neighbour(-1);
      break;
    case Qt::Key_Down:
      emit wants_neighbour(1);
      break;
    default:
      QAbstractButton::keyPressEvent(event);
  }
}

void SectionButton::paintEvent(QPaintEvent* /*event*/) {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QPainter painter(this);
  if (isChecked() || isDown()) {
    painter.fillRect(rect(), colours.wash);
    painter.fillRect(QRect(0, 0, 5, height()), colours.blue);
  }
  QFont title = font();
  title.setPixelSize(widgets::pixels::base);
  title.setWeight(isChecked() ? QFont::DemiBold : QFont::Normal);
  painter.setFont(title);
  painter.setPen(colours.text);
  painter.drawText(rect().adjusted(text_from, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, text());
  if (hasFocus()) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.blue, 3));
    painter.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -2), 5, 5);
  }
}

}  // namespace shimwright::workshop
