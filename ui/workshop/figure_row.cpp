#include "figure_row.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

namespace {

constexpr int side_margin = 12;
constexpr int beside_number = 14;
constexpr int least_bar = 60;

QFont figure_font(const QFont& base, bool strong) {
  QFont font = base;
  font.setPixelSize(widgets::pixels::base);
  font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
  return font;
}

}  // namespace

FigureRow::FigureRow(const QString& title, const QString& number, double share, QWidget* parent)
    : QAbstractButton(parent), number_(number), share_(share) {
  setText(title);
  setAccessibleName(title + QStringLiteral(": ") + number);
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize FigureRow::sizeHint() const {
  const int title = QFontMetrics(figure_font(font(), false)).horizontalAdvance(text());
  const int number = QFontMetrics(figure_font(font(), true)).horizontalAdvance(number_);
  return {title + number + 2 * side_margin + beside_number + (share_ < 0 ? 0 : least_bar + beside_number),
          widgets::pixels::target};
}

void FigureRow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void FigureRow::paintEvent(QPaintEvent* /*event*/) {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(isDown() || hasFocus() ? colours.wash : colours.card);
  painter.setPen(QPen(hasFocus() ? colours.blue : colours.line, hasFocus() ? 3 : 1));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 7, 7);
  const QRect inside = rect().adjusted(side_margin, 0, -side_margin, 0);
  painter.setFont(figure_font(font(), true));
  const int number_width = painter.fontMetrics().horizontalAdvance(number_);
  painter.setPen(colours.text);
  painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter, number_);
  painter.setFont(figure_font(font(), false));
  const int title_width = painter.fontMetrics().horizontalAdvance(text());
  painter.drawText(inside, Qt::AlignLeft | Qt::AlignVCenter, text());
  if (share_ < 0) {
    return;
  }
  // All bars of one list begin at one place as long as their titles are short.
  const int from = std::max(title_width + beside_number, inside.width() / 3);
  const int room = inside.width() - from - number_width - beside_number;
  if (room > 0) {
    painter.fillRect(QRectF(inside.left() + from, height() / 2.0 - 7, std::max(room * share_, 1.0), 14), colours.blue);
  }
}

}  // namespace shimwright::workshop
