#include "signed_field.h"

#include <QVBoxLayout>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

using widgets::Button;
using widgets::child_of;

namespace {

constexpr auto typed_minus_signs = "-\u2212\u2013";

/// What is typed, without a sign before it.
QString digits_in(const QString& typed) {
  QString digits = typed.trimmed();
  while (!digits.isEmpty() &&
         (QString::fromUtf8(typed_minus_signs).contains(digits.front()) || digits.front() == QLatin1Char('+'))) {
    digits.remove(0, 1);
  }
  return digits.trimmed();
}

}  // namespace

SignedField::SignedField(const QString& title, QWidget* parent) : QWidget(parent) {
  auto* column = widgets::lay<QVBoxLayout>(this, 4);
  column->addWidget(child_of<widgets::Text>(this, title, "small"));
  auto* row = widgets::lay_in<QHBoxLayout>(column, 8);
  minus_ = child_of<Button>(this, tr("minus"));
  plus_ = child_of<Button>(this, tr("plus"));
  for (Button* each : {minus_, plus_}) {
    each->setCheckable(true);
    each->setMinimumHeight(56);
    row->addWidget(each, 0, Qt::AlignTop);
  }
  number_ = child_of<widgets::NumberField>(this, title, quantity::Unit::millimetre);
  const auto labels = number_->findChildren<QLabel*>();
  labels[0]->hide();  // the title stands above the buttons
  labels[1]->hide();  // and the sign is echoed by them
  number_->edit()->setFixedWidth(130);
  row->addWidget(number_, 1);
  connect(minus_, &Button::clicked, this, [this] { press(Sign::minus); });
  connect(plus_, &Button::clicked, this, [this] { press(Sign::plus); });
  connect(number_, &widgets::NumberField::edited, this, &SignedField::take_typed_sign);
  connect(number_, &widgets::NumberField::entered, this, &SignedField::check);
}

void SignedField::name(const QString& name) {
  number_->edit()->setObjectName(QStringLiteral("field-") + name);
  minus_->setObjectName(QStringLiteral("button-%1-minus").arg(name));
  plus_->setObjectName(QStringLiteral("button-%1-plus").arg(name));
}

bool SignedField::sign_missing() const {
  const auto number =
      quantity::read_number(widgets::plain(digits_in(number_->edit()->text())), quantity::Unit::millimetre);
  return sign_ == Sign::none && number && number->base != 0;
}

std::string SignedField::text() const {
  if (blank() || sign_missing()) {
    return {};
  }
  const std::string digits = number_->with_unit(widgets::plain(digits_in(number_->edit()->text())));
  switch (sign_) {
    case Sign::minus:
      return "-" + digits;
    case Sign::plus:
      return "+" + digits;
    case Sign::none:
      break;
  }
  return digits;
}

void SignedField::set_number(const quantity::TypedNumber& number) {
  number_->set_number(number);
  const std::string digits = widgets::plain(digits_in(number_->edit()->text()));
  set_text(number.base > 0 ? "+" + digits : number.base < 0 ? "-" + digits : digits);
}

void SignedField::set_text(const std::string& text) {
  const QString typed = widgets::qt(text).trimmed();
  number_->set_text(widgets::plain(digits_in(typed)));
  choose(typed.startsWith(QLatin1Char('-'))   ? Sign::minus
         : typed.startsWith(QLatin1Char('+')) ? Sign::plus
                                              : Sign::none);
}

/// A sign that is typed is seen in the field: a button must not say the other one beside it.
void SignedField::press(Sign sign) {
  const bool typed = digits_in(number_->edit()->text()) != number_->edit()->text().trimmed();
  if (typed) {
    take_typed_sign();
  } else {
    choose(sign);
  }
}

void SignedField::choose(Sign sign) {
  sign_ = sign;
  minus_->setChecked(sign == Sign::minus);
  plus_->setChecked(sign == Sign::plus);
  number_->set_fault({});
  emit edited();
}

void SignedField::take_typed_sign() {
  const QString typed = number_->edit()->text().trimmed();
  if (typed.startsWith(QLatin1Char('+'))) {
    choose(Sign::plus);
  } else if (!typed.isEmpty() && QString::fromUtf8(typed_minus_signs).contains(typed.front())) {
    choose(Sign::minus);
  } else {
    emit edited();
  }
}

void SignedField::check() {
  if (sign_missing()) {
    number_->set_fault(tr("Minus or plus? Read it on the pack."));
    return;
  }
  emit entered();
}

}  // namespace shimwright::bench
