#include "sheet_field.h"

#include <QLineEdit>
#include <utility>

#include "sheet_words.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::qt;
using widgets::Text;

namespace {

constexpr int line_height = 54;
constexpr int number_width = 150;
constexpr int short_width = 176;
constexpr int short_number_width = 120;

bool is_number(sheet::FieldKind kind) {
  using sheet::FieldKind;
  return kind == FieldKind::length || kind == FieldKind::decimal || kind == FieldKind::measure ||
         kind == FieldKind::count;
}

}  // namespace

SheetField::SheetField(sheet::DraftField field, QWidget* parent)
    : QWidget(parent), field_(std::move(field)), said_(field_.text) {
  QString title = widgets::say(field_.label);
  if (!field_.language.empty()) {
    title += QStringLiteral(" (%1)").arg(language_name(field_.language));
  }
  auto* column = widgets::lay<QVBoxLayout>(this, 3);
  column->addWidget(child_of<Text>(this, title, "small"));
  auto* row = widgets::lay_in<QHBoxLayout>(column, 12);
  const bool picks = field_.kind == sheet::FieldKind::word || field_.kind == sheet::FieldKind::yes_no;
  picks ? add_pick(row) : add_line(row);
  QWidget* const entry = picks ? static_cast<QWidget*>(pick_) : edit_;
  entry->setObjectName(QStringLiteral("field-") + qt(field_.place));
  entry->setAccessibleName(field_.unit.empty() ? title : QStringLiteral("%1, %2").arg(title, qt(field_.unit)));
  setFocusProxy(entry);
  fault_ = child_of<Text>(this, QString(), "error");
  fault_->setVisible(false);
  column->addWidget(fault_);
}

void SheetField::add_line(QBoxLayout* row) {
  edit_ = child_of<QLineEdit>(this);
  edit_->setFixedHeight(line_height);
  edit_->setText(qt(field_.text));
  const bool number = is_number(field_.kind);
  row->addWidget(edit_, number ? 0 : 1);
  if (number) {
    edit_->setAlignment(Qt::AlignRight);
    edit_->setFixedWidth(number_width);
    edit_->setInputMethodHints(Qt::ImhPreferNumbers);
    if (!field_.unit.empty()) {
      unit_ = child_of<Text>(this, qt(field_.unit), "soft");
      unit_->setWordWrap(false);
      row->addWidget(unit_);
    }
    echo_ = child_of<Text>(this, QString(), "small");
    echo_->setWordWrap(false);
    row->addWidget(echo_, 1);
    show_echo();
  }
  connect(edit_, &QLineEdit::textChanged, this, [this] {
    set_fault({});
    show_echo();
  });
  connect(edit_, &QLineEdit::editingFinished, this, &SheetField::commit);
  connect(edit_, &QLineEdit::returnPressed, this, &SheetField::entered);
}

void SheetField::add_pick(QBoxLayout* row) {
  std::vector<sheet::WordChoice> choices = field_.choices;
  if (field_.kind == sheet::FieldKind::yes_no) {
    choices = {{"yes", {SHIMWRIGHT_TEXT("sheet", "yes"), {}}}, {"no", {SHIMWRIGHT_TEXT("sheet", "no"), {}}}};
  }
  pick_ = child_of<WordPick>(this, widgets::say(field_.label));
  pick_->setMinimumWidth(number_width);
  pick_->set_choices(choices, field_.text);
  row->addWidget(pick_, 1);
  connect(pick_, &WordPick::picked, this, &SheetField::commit);
  connect(pick_, &WordPick::entered, this, &SheetField::entered);
}

void SheetField::make_short() {
  setFixedWidth(short_width);
  if (echo_ != nullptr) {
    edit_->setFixedWidth(short_number_width);
    echo_->hide();
    show_echo();
  }
}

std::string SheetField::text() const {
  return pick_ != nullptr ? pick_->word() : widgets::plain(edit_->text().trimmed());
}

void SheetField::commit() {
  if (text() != said_) {
    said_ = text();
    emit committed(field_.place, said_);
  }
}

void SheetField::set_fault(const QString& sentence) {
  fault_->setText(sentence);
  fault_->setVisible(!sentence.isEmpty());
}

void SheetField::take_focus() {
  focusProxy()->setFocus(Qt::OtherFocusReason);
  if (edit_ != nullptr) {
    edit_->selectAll();
  }
}

void SheetField::show_echo() {
  if (echo_ == nullptr) {
    return;
  }
  const auto unit = quantity::unit_with_symbol(field_.unit);
  const bool reads = field_.kind == sheet::FieldKind::length || field_.kind == sheet::FieldKind::measure;
  const auto number = quantity::read_number(text(), unit ? *unit : quantity::Unit::millimetre);
  echo_->setText(reads && unit && number ? qt(quantity::printed_text_of(*number)) : QString());
  // The number as it was understood names its unit itself.
  if (unit_ != nullptr) {
    unit_->setVisible(echo_->isHidden() || echo_->text().isEmpty());
  }
}

}  // namespace shimwright::workshop
