#include "pin_card.h"

#include <QLineEdit>

#include "shimwright/widgets/child.h"

namespace shimwright::workshop {

using widgets::child_of;

namespace {

constexpr int pin_width = 320;

QString pin_heading(PinAct act, const QString& person) {
  switch (act) {
    case PinAct::first:
      return PinCard::tr("First PIN of %1").arg(person);
    case PinAct::change:
      return PinCard::tr("Another PIN for %1").arg(person);
    case PinAct::forgotten:
      return PinCard::tr("%1 has forgotten the PIN").arg(person);
    case PinAct::end:
      break;
  }
  return PinCard::tr("End the key of %1").arg(person);
}

QString pin_consequence(PinAct act) {
  switch (act) {
    case PinAct::first:
      return PinCard::tr("It is asked for nothing but signing. Who knows it signs in this name.");
    case PinAct::change:
      return PinCard::tr("The key stays the same, and so does everything it signed.");
    case PinAct::forgotten:
      return PinCard::tr(
          "A new key is made. What the old one signed stays valid; it signs nothing any more, and no PIN opens it "
          "again.");
    case PinAct::end:
      break;
  }
  return PinCard::tr(
      "For a key that others may know. What it signed before that day stays valid, what it signs from then on does "
      "not. "
      "This cannot be taken back; to sign again, make a new key afterwards.");
}

}  // namespace

PinCard::PinCard(PinAct act, const QString& person, const QString& today, QWidget* parent)
    : FormCard(pin_heading(act, person), act == PinAct::end ? tr("End the key") : tr("Keep"), parent), act_(act) {
  body()->addWidget(child_of<widgets::Text>(this, pin_consequence(act), "soft"));
  if (act == PinAct::change) {
    old_ = add_pin(tr("The PIN of now"), QStringLiteral("old-pin"));
  }
  if (act == PinAct::end) {
    day_ = add_word(tr("No longer valid from (year-month-day)"), QStringLiteral("from"));
    day_->set_text(today.toStdString());
  } else {
    new_ = add_pin(tr("New PIN, 4 to 12 digits"), QStringLiteral("new-pin"));
    again_ = add_pin(tr("The same once more"), QStringLiteral("new-pin-again"));
  }
  finish();
}

widgets::WordField* PinCard::add_pin(const QString& title, const QString& name) {
  widgets::WordField* field = add_word(title, name);
  field->edit()->setEchoMode(QLineEdit::Password);
  field->edit()->setInputMethodHints(Qt::ImhDigitsOnly | Qt::ImhSensitiveData | Qt::ImhNoPredictiveText);
  field->setMaximumWidth(pin_width);
  return field;
}

bool PinCard::new_pin_agrees() {
  if (new_->text() == again_->text()) {
    return true;
  }
  new_->edit()->clear();
  again_->edit()->clear();
  tell(tr("The two new PINs differ: type both again."), new_);
  return false;
}

record::Pin PinCard::take(widgets::WordField& field) {
  std::string typed = field.text();
  field.edit()->clear();
  return record::Pin::taken_from(typed);
}

record::Pin PinCard::take_old() {
  return take(*old_);
}

record::Pin PinCard::take_new() {
  again_->edit()->clear();
  return take(*new_);
}

std::string PinCard::day() const {
  return day_->text();
}

}  // namespace shimwright::workshop
