#include "picture_button.h"

#include <QImageReader>
#include <QKeyEvent>
#include <QPainter>

#include "shimwright/widgets/keys.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

namespace {

constexpr int name_height = 26;
constexpr int picture_margin = 6;
constexpr QSize picture_room(132, 99);

}  // namespace

PictureButton::PictureButton(const QPixmap& picture, const QString& name, QWidget* parent)
    : QAbstractButton(parent), picture_(picture) {
  setText(name);
  setAccessibleName(name);
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize PictureButton::sizeHint() const {
  return picture_room + QSize(2 * picture_margin, 2 * picture_margin + name_height);
}

void PictureButton::keyPressEvent(QKeyEvent* event) {
  if (widgets::is_plain_enter(*event) && !event->isAutoRepeat()) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void PictureButton::paintEvent(QPaintEvent* /*event*/) {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(hasFocus() ? QPen(colours.blue, 3.0) : QPen(colours.edge, 1.0));
  painter.setBrush(isDown() ? colours.wash : colours.card);
  painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 7, 7);
  const QRect room(picture_margin, picture_margin, width() - 2 * picture_margin, picture_room.height());
  const QSize size = picture_.deviceIndependentSize().toSize();
  painter.drawPixmap(room.center() - QPoint(size.width() / 2, size.height() / 2), picture_);
  QFont small = font();
  small.setPixelSize(15);
  painter.setFont(small);
  painter.setPen(colours.text);
  const QRect below(picture_margin, height() - name_height - 2, width() - 2 * picture_margin, name_height);
  painter.drawText(below, Qt::AlignCenter, QFontMetrics(small).elidedText(text(), Qt::ElideMiddle, below.width()));
}

QPixmap small_picture(const QString& file, const QSize& most) {
  QImageReader reader(file);
  reader.setAutoTransform(true);
  const QSize full = reader.size();
  if (!full.isValid()) {
    return {};
  }
  // Twice as large as the most, so that one lying on its side is still sharp once it is turned.
  const QSize wanted = full.scaled(most * 2, Qt::KeepAspectRatio);
  if (wanted.width() < full.width()) {
    reader.setScaledSize(wanted);
  }
  const QImage picture = reader.read();
  if (picture.isNull()) {
    return {};
  }
  return QPixmap::fromImage(picture.scaled(most, Qt::KeepAspectRatio, Qt::SmoothTransformation));
}

}  // namespace shimwright::bench
