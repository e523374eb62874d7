#include "reading_list.h"

#include <QLineEdit>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::workshop {

using widgets::child_of;

ReadingList::ReadingList(const QString& title, quantity::Unit unit, QWidget* parent)
    : QWidget(parent),
      title_(title),
      field_(child_of<widgets::NumberField>(this, title, unit)),
      list_(child_of<widgets::Text>(this, QString())),
      take_back_(child_of<widgets::Button>(this, tr("Take the last one away"))) {
  auto* column = widgets::lay<QVBoxLayout>(this, 8);
  column->addWidget(field_);
  column->addWidget(list_);
  column->addWidget(take_back_, 0, Qt::AlignLeft);
  setFocusProxy(field_);
  field_->edit()->setObjectName(QStringLiteral("field-reading"));
  field_->set_hint(tr("Enter adds it."));
  list_->setObjectName(QStringLiteral("readings"));
  take_back_->setObjectName(QStringLiteral("button-take-back"));
  connect(field_, &widgets::NumberField::entered, this, [this] {
    if (take_typed()) {
      field_->take_focus();
    }
  });
  connect(field_, &widgets::NumberField::edited, this, &ReadingList::changed);
  connect(take_back_, &QPushButton::clicked, this, [this] {
    readings_.pop_back();
    show_readings();
    field_->take_focus();
    emit changed();
  });
  show_readings();
}

void ReadingList::set_readings(const std::vector<quantity::TypedNumber>& readings) {
  readings_ = readings;
  show_readings();
}

bool ReadingList::take_typed() {
  if (field_->blank()) {
    return true;
  }
  const auto number = field_->number();
  if (!number) {
    field_->set_fault(widgets::say(number.error()));
    field_->take_focus();
    return false;
  }
  readings_.push_back(*number);
  field_->set_text({});
  show_readings();
  emit changed();
  return true;
}

void ReadingList::show_readings() {
  QStringList words;
  for (const quantity::TypedNumber& each : readings_) {
    words << widgets::number_shown(each);
  }
  field_->set_title(tr("%1 %2").arg(title_).arg(readings_.size() + 1));
  list_->setText(words.isEmpty() ? tr("No reading yet.") : words.join(QStringLiteral(" · ")));
  take_back_->setEnabled(!readings_.empty());
}

}  // namespace shimwright::workshop
