#include "shimwright/widgets/number_field.h"

#include <QEvent>
#include <QKeyEvent>
#include <utility>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/units.h"

namespace shimwright::widgets {

namespace {

QString title_with_unit(const QString& title, quantity::Unit unit) {
  const QString symbol = symbol_shown(unit);
  return symbol.isEmpty() ? title : QStringLiteral("%1, %2").arg(title, symbol);
}

}  // namespace

NumberField::NumberField(const QString& title, quantity::Unit unit, QWidget* parent)
    : QWidget(parent),
      asked_(unit),
      unit_(unit_shown(unit)),
      title_(child_of<Text>(this, title_with_unit(title, unit_), "small")),
      edit_(child_of<QLineEdit>(this)),
      echo_(child_of<Text>(this, QString(), "echo")),
      below_(child_of<Text>(this, QString(), "small")) {
  auto* column = lay<QVBoxLayout>(this, 4);
  column->addWidget(title_);
  auto* row = lay_in<QHBoxLayout>(column, 14);
  set_part(edit_, "number");
  edit_->setAlignment(Qt::AlignRight);
  edit_->setFixedHeight(56);
  edit_->setFixedWidth(172);
  edit_->setAccessibleName(title);
  edit_->setInputMethodHints(Qt::ImhPreferNumbers);
  row->addWidget(edit_);
  echo_->setWordWrap(false);
  row->addWidget(echo_, 1);
  column->addWidget(below_);
  below_->setVisible(false);
  setFocusProxy(edit_);
  edit_->installEventFilter(this);
  connect(edit_, &QLineEdit::textChanged, this, [this] {
    set_fault({});
    show_echo();
    emit edited();
  });
  connect(edit_, &QLineEdit::returnPressed, this, &NumberField::read_it);
}

std::string NumberField::text() const {
  return with_unit(plain(edit_->text().trimmed()));
}

std::string NumberField::with_unit(const std::string& typed) const {
  if (unit_ == asked_ || typed.empty()) {
    return typed;
  }
  // Also where the number is refused here: bare it might be taken in the unit asked for.
  std::string named = typed + " " + std::string(quantity::symbol_of(unit_));
  const auto read = quantity::read_number(named, unit_);
  const bool has_another = !read && read.error().code == "unknown_unit";
  return has_another ? typed : named;
}

bool NumberField::blank() const {
  return edit_->text().trimmed().isEmpty();
}

void NumberField::set_text(const std::string& text) {
  edit_->setText(qt(text));
}

void NumberField::set_number(const quantity::TypedNumber& number) {
  const quantity::TypedNumber shown = number.unit == asked_ ? quantity::number_in(number, unit_) : number;
  set_text(shown.unit == unit_ ? quantity::digits_of(shown) : quantity::text_of(shown));
}

Result<quantity::TypedNumber> NumberField::number() const {
  return quantity::read_number(plain(edit_->text().trimmed()), unit_);
}

void NumberField::set_title(const QString& title) {
  title_->setText(title_with_unit(title, unit_));
  edit_->setAccessibleName(title);
}

void NumberField::set_hint(const QString& hint) {
  hint_text_ = hint;
  set_fault(fault_);
}

void NumberField::set_fault(const QString& sentence) {
  fault_ = sentence;
  below_->setText(fault_.isEmpty() ? hint_text_ : fault_);
  below_->setVisible(!below_->text().isEmpty());
  set_part(below_, fault_.isEmpty() ? "small" : "error");
}

void NumberField::take_focus() {
  edit_->setFocus(Qt::OtherFocusReason);
  edit_->selectAll();
}

void NumberField::set_narrow() {
  auto* const column = qobject_cast<QBoxLayout*>(layout());
  column->setSpacing(2);
  column->insertWidget(2, echo_);
  set_part(echo_, "small");
  echo_->setMinimumHeight(QFontMetrics(echo_->font()).height());
  edit_->setMinimumWidth(0);
  edit_->setMaximumWidth(QWIDGETSIZE_MAX);
}

bool NumberField::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn) {
    newly_there_ = true;
  } else if (event->type() == QEvent::KeyPress) {
    newly_there_ = false;
  } else if (event->type() == QEvent::MouseButtonRelease && std::exchange(newly_there_, false)) {
    // A glove does not place a cursor: the first click into the field means the whole number, as Tab does.
    edit_->selectAll();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

void NumberField::show_echo() {
  const auto read = number();
  echo_->setText(read ? number_with_unit(*read) : QString());
}

bool NumberField::readable() {
  const auto read = number();
  if (!read) {
    set_fault(say(read.error()));
    edit_->selectAll();
  }
  return read.has_value();
}

void NumberField::read_it() {
  if ((blank() && may_be_blank_) || readable()) {
    emit entered();
  }
}

void chain_fields(const std::vector<NumberField*>& fields, const std::function<void()>& after_last) {
  for (std::size_t at = 0; at < fields.size(); ++at) {
    if (at + 1 < fields.size()) {
      NumberField* const next = fields[at + 1];
      QObject::connect(fields[at], &NumberField::entered, next, [next] { next->take_focus(); });
    } else {
      QObject::connect(fields[at], &NumberField::entered, fields[at], after_last);
    }
  }
}

}  // namespace shimwright::widgets
