#include "instrument_box.h"

#include <QPainter>
#include <QWheelEvent>
#include <utility>

#include "days.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

InstrumentBox::InstrumentBox(const QString& title, sheet::InstrumentKind kind, QWidget* parent)
    : QComboBox(parent), kind_(kind) {
  setAccessibleName(title);
  setMinimumHeight(48);
  setSizeAdjustPolicy(QComboBox::AdjustToContents);
  setFocusPolicy(Qt::StrongFocus);
}

void InstrumentBox::offer(const std::vector<job::Instrument>& instruments, const job::Moment& now) {
  const std::string before = id();
  const QSignalBlocker quiet(this);
  clear();
  int first_good = -1;
  for (const job::Instrument& each : instruments) {
    if (each.kind != kind_) {
      continue;
    }
    const bool is_overdue = job::calibration_overdue(each, now);
    QString words = widgets::qt(each.name);
    if (each.calibrated_to) {
      words += QStringLiteral(", ") +
               (is_overdue ? tr("overdue since %1") : tr("good to %1")).arg(day_text(*each.calibrated_to));
    }
    first_good = first_good < 0 && !is_overdue ? count() : first_good;
    addItem(words, widgets::qt(each.id));
  }
  if (count() == 0) {
    addItem(tr("no instrument"), QString());
  }
  setCurrentIndex(first_good < 0 ? 0 : first_good);
  choose(before);
}

std::string InstrumentBox::id() const {
  return widgets::plain(currentData().toString());
}

void InstrumentBox::choose(const std::string& id) {
  if (const int at = id.empty() ? -1 : findData(widgets::qt(id)); at >= 0) {
    setCurrentIndex(at);
  }
}

/// The style sheet leaves the arrow out; there is none where there is nothing to choose.
void InstrumentBox::paintEvent(QPaintEvent* event) {
  QComboBox::paintEvent(event);
  if (count() < 2) {
    return;
  }
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(widgets::colours_of(*this).text);
  const QPointF middle(width() - 22.0, height() / 2.0);
  painter.drawPolygon(QPolygonF({middle + QPointF(-7, -4), middle + QPointF(7, -4), middle + QPointF(0, 5)}));
}

void InstrumentBox::wheelEvent(QWheelEvent* event) {
  event->ignore();
}

}  // namespace shimwright::bench
