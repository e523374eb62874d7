#include "shim_row_button.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStringList>
#include <algorithm>

#include "paint.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::widgets {

namespace {

constexpr int tray_pixels = 16;
constexpr int label_end = 100;
constexpr int word_gap = 13;
constexpr int row_margin = 8;
constexpr int tray_gap = 20;
constexpr int conflict_side = 18;

}  // namespace

ShimRowButton::ShimRowButton(QWidget* parent) : QAbstractButton(parent) {
  setFocusPolicy(Qt::NoFocus);
}

void ShimRowButton::set_row(const ShimRow& row, const QString& advised_word) {
  row_ = row;
  advised_word_ = advised_word;
  setObjectName(QStringLiteral("shim-") + qt(row.shim));
  QStringList said{qt(row.shim)};
  for (const auto& [holds, words] :
       {std::pair{row.struck, tr("ruled out")}, std::pair{true, row.words}, std::pair{row.advised, advised_word},
        std::pair{row.conflicting, tr("contradicted")}, std::pair{row.picked, tr("picked")},
        std::pair{true, row.tray}}) {
    if (holds && !words.isEmpty()) {
      said << words;
    }
  }
  setText(qt(row.shim));
  setAccessibleName(said.join(QStringLiteral(", ")));
  update();
}

void ShimRowButton::set_bar_scale(double pixels) {
  bar_scale_ = pixels;
  update();
}

double ShimRowButton::bar_width() const {
  return row_.share ? std::max(4.0, *row_.share * bar_scale_) : 0.0;
}

void ShimRowButton::keyPressEvent(QKeyEvent* event) {
  // The rows' parent knows what lies above and below.
  event->ignore();
}

void ShimRowButton::paint_frame(QPainter& painter) const {
  const Colours& colours = colours_of(*this);
  if (row_.advised || (isDown() && focusPolicy() != Qt::NoFocus)) {
    painter.fillRect(rect(), colours.wash);
  }
  if (row_.advised) {
    painter.fillRect(QRect(0, 0, 5, height()), colours.blue);
  }
  painter.fillRect(QRect(0, height() - 1, width(), 1), colours.line);
  const QRectF inside = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -2.5);
  painter.setBrush(Qt::NoBrush);
  if (row_.conflicting || row_.picked) {
    painter.setPen(QPen(row_.conflicting ? colours.brick : colours.text, 2.5));
    painter.drawRoundedRect(inside, 5, 5);
  }
  if (hasFocus()) {
    painter.setPen(QPen(colours.blue, 3));
    painter.drawRoundedRect(row_.conflicting || row_.picked ? inside.adjusted(4, 4, -4, -4) : inside, 5, 5);
  }
}

void ShimRowButton::paint_bar(QPainter& painter) const {
  if (!row_.share) {
    return;
  }
  const Colours& colours = colours_of(*this);
  const double high = std::min(26, height() - 16);
  const QRectF bar(bar_start, (height() - high) / 2, bar_width(), high);
  painter.setPen(QPen(row_.advised ? colours.blue : colours.edge, 1));
  painter.setBrush(row_.advised ? colours.blue : row_.struck ? mixed(colours.line, colours.card, 0.6) : colours.metal);
  painter.drawRect(bar);
}

QString ShimRowButton::tray_shown(int room) const {
  const QFontMetrics metrics(type_of(font(), tray_pixels));
  const QString whole = metrics.elidedText(row_.tray, Qt::ElideRight, room);
  const bool says_it_all = whole == row_.tray || row_.tray_in_short.isEmpty();
  return says_it_all ? whole : metrics.elidedText(row_.tray_in_short, Qt::ElideRight, room);
}

void ShimRowButton::paint_words(QPainter& painter) const {
  const Colours& colours = colours_of(*this);
  QFont label = type_of(font(), row_.struck ? 22 : 28, !row_.struck);
  label.setStrikeOut(row_.struck);
  painter.setFont(label);
  painter.setPen(row_.struck ? colours.soft : colours.text);
  painter.drawText(QRect(0, 0, label_end, height()), Qt::AlignRight | Qt::AlignVCenter, qt(row_.shim));
  int left = bar_start + static_cast<int>(bar_scale_) + word_gap;
  if (row_.conflicting) {
    paint_mark(painter, QRectF(left, (height() - conflict_side) / 2.0, conflict_side, conflict_side), Mark::not_equal,
               colours);
    left += conflict_side + row_margin;
  }
  const int end = width() - row_margin;
  const QFont plain_type = type_of(font(), 17);
  const QFont strong_type = type_of(font(), 17, true);
  const int advised = row_.advised ? word_gap + QFontMetrics(strong_type).horizontalAdvance(advised_word_) : 0;
  const QString words =
      QFontMetrics(plain_type).elidedText(row_.words, Qt::ElideRight, std::max(0, end - left - advised));
  // What is in the tray gives way to what the trials say.
  const int tray_from = left + QFontMetrics(plain_type).horizontalAdvance(words) + advised + tray_gap;
  painter.setFont(type_of(font(), tray_pixels));
  painter.setPen(colours.soft);
  painter.drawText(QRect(tray_from, 0, std::max(0, end - 2 - tray_from), height()), Qt::AlignRight | Qt::AlignVCenter,
                   tray_shown(std::max(0, end - 2 - tray_from)));
  painter.setFont(plain_type);
  painter.setPen(row_.struck ? colours.soft : colours.text);
  painter.drawText(QRect(left, 0, end - left, height()), Qt::AlignLeft | Qt::AlignVCenter, words);
  if (row_.advised) {
    left += words.isEmpty() ? 0 : QFontMetrics(plain_type).horizontalAdvance(words) + word_gap;
    painter.setFont(strong_type);
    painter.setPen(colours.blue);
    painter.drawText(QRect(left, 0, width() - left, height()), Qt::AlignLeft | Qt::AlignVCenter, advised_word_);
  }
}

void ShimRowButton::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paint_frame(painter);
  paint_bar(painter);
  paint_words(painter);
}

}  // namespace shimwright::widgets
