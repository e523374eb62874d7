#include "form_card.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <utility>

#include "flow_row.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::workshop {

using widgets::child_of;

FormCard::FormCard(const QString& heading, QString keep, QWidget* parent)
    : QFrame(parent), keep_words_(std::move(keep)) {
  widgets::set_part(this, "card");
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->setContentsMargins(18, 14, 18, 14);
  column->addWidget(child_of<widgets::Text>(this, heading, "large"));
  body_ = widgets::lay_in<QVBoxLayout>(column, 12);
}

void FormCard::finish() {
  auto* column = qobject_cast<QVBoxLayout*>(layout());
  told_ = child_of<widgets::Text>(this, QString(), "error");
  told_->setObjectName(QStringLiteral("form-told"));
  told_->hide();
  column->addWidget(told_);
  auto* row = child_of<FlowRow>(this);
  keep_ = child_of<widgets::Button>(row, keep_words_, widgets::Button::Kind::main);
  keep_->setObjectName(QStringLiteral("button-keep"));
  keep_->set_keys(tr("Ctrl Enter"));
  row->add(keep_);
  auto* leave = child_of<widgets::Button>(row, tr("Cancel"));
  leave->setObjectName(QStringLiteral("button-leave"));
  row->add(leave);
  column->addWidget(row);
  connect(keep_, &QPushButton::clicked, this, &FormCard::keep_wanted);
  connect(leave, &QPushButton::clicked, this, &FormCard::leave_wanted);
}

widgets::WordField* FormCard::add_word(const QString& title, const QString& name, QBoxLayout* into) {
  auto* field = child_of<widgets::WordField>(this, title);
  field->edit()->setObjectName(QStringLiteral("field-") + name);
  (into == nullptr ? body_ : into)->addWidget(field);
  connect(field, &widgets::WordField::entered, this, [this, field] {
    const bool last = places_.back().field == field;
    if (last) {
      keep_->setFocus(Qt::TabFocusReason);
    } else {
      focusNextChild();
    }
  });
  connect(field, &widgets::WordField::edited, this, &FormCard::clear_told);
  add_place(field, name);
  return field;
}

QBoxLayout* FormCard::add_pair() {
  constexpr int least_width = 460;
  auto* pair = widgets::lay_in<widgets::TurningRow>(body_, 16);
  pair->set_least_width(least_width);
  return pair;
}

void FormCard::add_place(QWidget* field, const QString& name) {
  places_.push_back({name, field});
}

void FormCard::tell(const Error& error) {
  const QString place = widgets::qt(error.place);
  QWidget* found = nullptr;
  for (const Place& each : places_) {
    found = place.endsWith(QLatin1Char('/') + each.name) ? each.field : found;
  }
  tell(widgets::say(error), found);
}

void FormCard::tell(const QString& sentence, QWidget* field) {
  if (told_ == nullptr) {
    return;  // still being put together
  }
  told_->setText(sentence);
  told_->setVisible(!sentence.isEmpty());
  if (field != nullptr) {
    field->setFocus(Qt::OtherFocusReason);
  }
}

void FormCard::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && event->modifiers().testFlag(Qt::ControlModifier)) {
    emit keep_wanted();
  } else if (event->key() == Qt::Key_Escape) {
    emit leave_wanted();
  } else {
    QFrame::keyPressEvent(event);
  }
}

}  // namespace shimwright::workshop
