#include "register_row.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

namespace {

constexpr int side_room = 16;
constexpr int mark_room = 30;
constexpr int edge_room = 10;
constexpr int chevron_room = 22;
constexpr double chevron = 6;  // half its height

}  // namespace

RegisterRow::RegisterRow(const QString& name, const QString& kept, QWidget* parent)
    : QAbstractButton(parent), kept_(kept) {
  // Qt takes a single & for a mnemonic; it is none here.
  setText(QString(name).replace(QLatin1Char('&'), QStringLiteral("&&")));
  setAccessibleName(kept.isEmpty() ? name : name + QStringLiteral(", ") + kept);
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setFixedHeight(height_at(400));
}

void RegisterRow::set_mark(widgets::Mark mark) {
  mark_ = mark;
  has_marks_ = true;
  setFixedHeight(height_at(std::max(width(), 1)));
  update();
}

QFont RegisterRow::name_font() const {
  QFont bold = font();
  bold.setPixelSize(19);
  bold.setWeight(QFont::DemiBold);
  return bold;
}

int RegisterRow::text_width(int width) const {
  return std::max(60, width - 2 * side_room - (has_marks_ ? mark_room : 0) - chevron_room);
}

QSize RegisterRow::sizeHint() const {
  return {400, height_at(400)};
}

int RegisterRow::height_at(int width) const {
  const QRect room(0, 0, text_width(width), 10000);
  const int name = QFontMetrics(name_font()).boundingRect(room, Qt::TextWordWrap, text()).height();
  const int kept = kept_.isEmpty() ? 0 : fontMetrics().boundingRect(room, Qt::TextWordWrap, kept_).height() + 2;
  return std::max(widgets::pixels::target, name + kept + 2 * edge_room);
}

/// As high as its text at this width: never squeezed to where a glove misses it.
void RegisterRow::resizeEvent(QResizeEvent* event) {
  QAbstractButton::resizeEvent(event);
  setFixedHeight(height_at(width()));
}

void RegisterRow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
  } else {
    QAbstractButton::keyPressEvent(event);
  }
}

void RegisterRow::paintEvent(QPaintEvent* /*event*/) {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF box = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
  painter.setBrush(isDown() ? colours.wash : colours.card);
  painter.setPen(hasFocus() ? QPen(colours.blue, 3) : QPen(colours.line, 1));
  painter.drawRoundedRect(box, 7, 7);
  const QRect room(side_room + (has_marks_ ? mark_room : 0), edge_room, text_width(width()), height() - 2 * edge_room);
  painter.setPen(colours.text);
  painter.setFont(name_font());
  QString name = text();
  name.replace(QStringLiteral("&&"), QStringLiteral("&"));
  QRect taken;
  painter.drawText(room, Qt::TextWordWrap | Qt::AlignTop, name, &taken);
  if (!kept_.isEmpty()) {
    painter.setFont(font());
    painter.setPen(colours.soft);
    painter.drawText(room.adjusted(0, taken.height() + 2, 0, 0), Qt::TextWordWrap | Qt::AlignTop, kept_);
  }
  if (isEnabled()) {
    const QPointF tip(width() - side_room, height() / 2.0);
    painter.setPen(QPen(colours.soft, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(QPolygonF{tip + QPointF(-chevron, -chevron), tip, tip + QPointF(-chevron, chevron)});
  }
  if (mark_ != widgets::Mark::none) {
    widgets::paint_mark(painter, QRectF(side_room - 2, (height() - 20) / 2.0, 20, 20), mark_, colours);
  }
}

}  // namespace shimwright::workshop
