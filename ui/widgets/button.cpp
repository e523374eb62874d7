#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "shimwright/widgets/keys.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/style.h"

namespace shimwright::widgets {

namespace {

struct Paint {
  QColor fill;
  QColor edge;
  QColor text;
  QColor second;
};

Paint paint_of(const Button& button, Button::Kind kind, const Colours& colours) {
  if (!button.isEnabled()) {
    return {colours.bar, colours.edge, colours.soft, colours.soft};
  }
  if (kind == Button::Kind::main || button.isChecked()) {
    const QColor fill = button.isDown() ? colours.blue.darker(120) : colours.blue;
    return {fill, fill, colours.on_blue, colours.on_blue};
  }
  const QColor fill = button.isDown() ? colours.wash : colours.card;
  return {kind == Button::Kind::quiet && !button.isDown() ? QColor(Qt::transparent) : fill,
          kind == Button::Kind::quiet ? QColor(Qt::transparent) : colours.edge, colours.text, colours.soft};
}

constexpr int button_margin = 18;
constexpr int button_gap = 9;

}  // namespace

Button::Button(const QString& text, Kind kind, QWidget* parent) : QPushButton(parent), kind_(kind) {
  setAutoDefault(false);
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(kind == Kind::answer ? QSizePolicy::Expanding : QSizePolicy::Minimum, QSizePolicy::Fixed);
  set_action_text(text);
}

void Button::set_action_text(const QString& text) {
  action_ = text;
  // Qt takes a single & for a mnemonic; it is none here.
  setText(QString(text).replace(QLatin1Char('&'), QStringLiteral("&&")));
  setAccessibleName(text);
  updateGeometry();
  update();
}

void Button::set_keys(const QString& keys) {
  keys_ = keys;
  setAccessibleDescription(keys);
  updateGeometry();
  update();
}

void Button::set_second_line(const QString& text) {
  second_ = text;
  setAccessibleDescription(text);
  updateGeometry();
  update();
}

QFont Button::first_font() const {
  QFont first = font();
  first.setPixelSize(kind_ == Kind::answer ? 25 : pixels::base);
  if (kind_ == Kind::main || kind_ == Kind::answer || isChecked()) {
    first.setWeight(QFont::DemiBold);
  }
  return first;
}

QFont Button::second_font() const {
  QFont second = font();
  second.setPixelSize(15);
  return second;
}

QSize Button::sizeHint() const {
  QFont first = first_font();
  first.setWeight(QFont::DemiBold);  // the same room whether chosen or not
  const QFontMetrics large(first);
  const QFontMetrics small(second_font());
  int width = large.horizontalAdvance(action_);
  if (!keys_.isEmpty()) {
    width += button_gap + small.horizontalAdvance(keys_);
  }
  width = std::max(width, small.horizontalAdvance(second_)) + 2 * button_margin;
  const int least = kind_ == Kind::answer ? pixels::answer : pixels::target;
  return {std::max(width, pixels::target), std::max(least, large.height() + 16)};
}

void Button::keyPressEvent(QKeyEvent* event) {
  if (is_plain_enter(*event)) {
    click();
    return;
  }
  QPushButton::keyPressEvent(event);
}

void Button::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = colours_of(*this);
  const Paint paint = paint_of(*this, kind_, colours);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF box = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
  painter.setBrush(paint.fill);
  QPen edge(paint.edge, kind_ == Kind::answer ? 2.0 : 1.0);
  edge.setStyle(isEnabled() ? Qt::SolidLine : Qt::DashLine);
  painter.setPen(edge);
  painter.drawRoundedRect(box, 7, 7);
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    const bool filled = kind_ == Kind::main || isChecked();
    painter.setPen(QPen(filled ? colours.on_blue : colours.blue, filled ? 2.0 : 3.0));
    painter.drawRoundedRect(filled ? box.adjusted(3, 3, -3, -3) : box, filled ? 4 : 7, filled ? 4 : 7);
  }
  const QFont first = first_font();
  const QFont small = second_font();
  const int action_width = QFontMetrics(first).horizontalAdvance(action_);
  const int keys_width = keys_.isEmpty() ? 0 : button_gap + QFontMetrics(small).horizontalAdvance(keys_);
  const int left = std::max(8, (width() - action_width - keys_width) / 2);
  const QRect line = second_.isEmpty() ? rect() : QRect(0, height() / 2 - 34, width(), 36);
  painter.setFont(first);
  painter.setPen(paint.text);
  const QString shown = QFontMetrics(first).elidedText(action_, Qt::ElideRight, width() - 16);
  painter.drawText(line.adjusted(left, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, shown);
  painter.setFont(small);
  painter.setPen(paint.second);
  if (keys_width > 0) {
    painter.drawText(line.adjusted(left + action_width + button_gap, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, keys_);
  }
  if (!second_.isEmpty()) {
    painter.drawText(QRect(0, height() / 2 + 2, width(), 26), Qt::AlignCenter, second_);
  }
}

}  // namespace shimwright::widgets
