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
constexpr int above_text = 6;

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

int FigureRow::title_width() const {
  return QFontMetrics(figure_font(font(), false)).horizontalAdvance(text());
}

int FigureRow::number_width() const {
  return QFontMetrics(figure_font(font(), true)).horizontalAdvance(number_);
}

void FigureRow::set_title_room(int width) {
  title_room_ = width;
  update();
}

QRect FigureRow::title_place(int width) const {
  const int room = std::max(1, width - 2 * side_margin - number_width() - beside_number);
  return {side_margin, above_text, std::min(room, title_width() + 1), 10000};
}

int FigureRow::height_at(int width) const {
  const QFontMetrics metrics(figure_font(font(), false));
  const int high = metrics.boundingRect(title_place(width), Qt::TextWordWrap, text()).height();
  return std::max(widgets::pixels::target, high + 2 * above_text);
}

QSize FigureRow::sizeHint() const {
  return {
      title_width() + number_width() + 2 * side_margin + beside_number + (share_ < 0 ? 0 : least_bar + beside_number),
      widgets::pixels::target};
}

QSize FigureRow::minimumSizeHint() const {
  const QFontMetrics metrics(figure_font(font(), false));
  int widest = 0;
  for (const QString& word : text().split(QLatin1Char(' '))) {
    widest = std::max(widest, metrics.horizontalAdvance(word));
  }
  return {widest + number_width() + 2 * side_margin + beside_number, widgets::pixels::target};
}

/// As high as its title at this width: the number never stands in it.
void FigureRow::resizeEvent(QResizeEvent* event) {
  QAbstractButton::resizeEvent(event);
  setFixedHeight(height_at(width()));
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
  painter.setPen(colours.text);
  painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter, number_);
  painter.setFont(figure_font(font(), false));
  QRect place = title_place(width());
  place.setTop(0);
  place.setHeight(height());
  painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, text());
  if (share_ <= 0) {
    return;
  }
  const int from = std::max(std::max(title_width(), title_room_) + beside_number, inside.width() / 3);
  const int room = inside.width() - from - number_width() - beside_number;
  if (room > 0) {
    painter.fillRect(QRectF(inside.left() + from, height() / 2.0 - 7, std::max(room * share_, 1.0), 14), colours.blue);
  }
}

}  // namespace shimwright::workshop
