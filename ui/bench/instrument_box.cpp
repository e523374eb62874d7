#include "instrument_box.h"

#include "days.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

InstrumentBox::InstrumentBox(const QString& title, sheet::InstrumentKind kind, QWidget* parent)
    : PickBox(title, parent), kind_(kind) {}

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
               (is_overdue ? tr("overdue since %1") : tr("calibrated to %1")).arg(day_text(*each.calibrated_to));
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

}  // namespace shimwright::bench
