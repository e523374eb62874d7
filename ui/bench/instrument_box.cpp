#include "instrument_box.h"

#include <QWheelEvent>

#include "shimwright/widgets/say.h"

namespace shimwright::bench {

InstrumentBox::InstrumentBox(const QString& title, sheet::InstrumentKind kind, QWidget* parent)
    : QComboBox(parent), kind_(kind) {
  setAccessibleName(title);
  setMinimumHeight(48);
  setFocusPolicy(Qt::StrongFocus);
}

void InstrumentBox::set_instruments(const std::vector<job::Instrument>& instruments) {
  const std::string before = id();
  const QSignalBlocker quiet(this);
  clear();
  for (const job::Instrument& each : instruments) {
    if (each.kind == kind_) {
      addItem(widgets::qt(each.name), widgets::qt(each.id));
    }
  }
  if (count() == 0) {
    addItem(tr("no instrument"), QString());
  }
  choose(before);
}

std::string InstrumentBox::id() const {
  return widgets::plain(currentData().toString());
}

void InstrumentBox::choose(const std::string& id) {
  const int at = findData(widgets::qt(id));
  setCurrentIndex(at < 0 ? 0 : at);
}

void InstrumentBox::wheelEvent(QWheelEvent* event) {
  event->ignore();
}

}  // namespace shimwright::bench
