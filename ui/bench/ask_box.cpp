#include "ask_box.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <algorithm>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::bench {

using widgets::Button;
using widgets::child_of;
using widgets::Text;
using widgets::WordField;

AskBox::AskBox(QWidget* parent) : QFrame(parent), outer_(widgets::lay<QVBoxLayout>(this)) {
  widgets::set_part(this, "question");
  outer_->setContentsMargins(18, 14, 18, 14);
  hide();
}

QVBoxLayout* AskBox::begin(const QString& question) {
  if (content_ != nullptr) {
    content_->hide();
    content_->deleteLater();
  }
  yes_ = nullptr;
  content_ = child_of<QWidget>(this);
  content_->hide();  // until it is complete: what is added to a shown widget is shown, and takes the focus, only later
  outer_->addWidget(content_);
  auto* column = widgets::lay<QVBoxLayout>(content_, 10);
  auto* text = child_of<Text>(content_, question, "strong");
  column->addWidget(text);
  show();
  emit asking_changed();
  return column;
}

void AskBox::add_buttons(QVBoxLayout* column, const QString& yes, const std::function<void()>& act) {
  auto* row = widgets::lay_in<QHBoxLayout>(column, 12);
  auto* no = child_of<Button>(content_, tr("Cancel"));
  no->setObjectName(QStringLiteral("button-ask-no"));
  connect(no, &Button::clicked, this, &AskBox::leave);
  row->addWidget(no);
  row->addStretch(1);
  auto* button = child_of<Button>(content_, yes, Button::Kind::main);
  button->setObjectName(QStringLiteral("button-ask-yes"));
  button->set_keys(tr("Ctrl Enter"));
  yes_ = button;
  connect(button, &Button::clicked, this, act);
  row->addWidget(button);
}

void AskBox::ask(const Ask& ask) {
  auto* column = begin(ask.question);
  WordField* field = nullptr;
  if (ask.needs_text) {
    field = child_of<WordField>(content_, tr("In your words"));
    field->edit()->setObjectName(QStringLiteral("field-ask"));
    column->addWidget(field);
  }
  const auto act = [this, field, answer = ask.answer] {
    const std::string text = field == nullptr ? std::string() : field->text();
    if (field != nullptr && text.empty()) {
      field->edit()->setFocus();
      return;
    }
    if (answer(text)) {
      leave();
    }
  };
  add_buttons(column, ask.button, act);
  auto* yes = content_->findChild<Button*>(QStringLiteral("button-ask-yes"));
  if (field != nullptr) {
    // Enter leads to the button; it presses none.
    connect(field, &WordField::entered, yes, [yes] { yes->setFocus(Qt::OtherFocusReason); });
    content_->show();
    field->edit()->setFocus(Qt::OtherFocusReason);
  } else {
    content_->show();
    yes->setFocus(Qt::OtherFocusReason);
  }
}

void AskBox::ask_parking(const std::vector<QString>& to_order,
                         const std::function<void(std::string waits_for, std::string due)>& answer) {
  auto* column = begin(tr("Park job"));
  auto* waits = child_of<WordField>(content_, tr("What does it wait for?"));
  waits->edit()->setObjectName(QStringLiteral("field-waits-for"));
  auto* fields = widgets::lay_in<QHBoxLayout>(column, 12);
  fields->addWidget(waits, 3);
  auto* due = child_of<WordField>(content_, tr("Until when (may stay blank)"));
  due->edit()->setObjectName(QStringLiteral("field-due"));
  due->edit()->setPlaceholderText(tr("year-month-day"));
  fields->addWidget(due, 2);
  if (!to_order.empty()) {
    QString list = tr("Still to be fitted, for an order:");
    QString plain_list;
    for (const QString& line : to_order) {
      list += QStringLiteral("\n") + line;
      plain_list += line + QStringLiteral("\n");
    }
    column->addWidget(child_of<Text>(content_, list, "small"));
    auto* copy = child_of<Button>(content_, tr("Copy the list"));
    copy->setObjectName(QStringLiteral("button-copy-parts"));
    connect(copy, &Button::clicked, this, [plain_list] { QGuiApplication::clipboard()->setText(plain_list); });
    column->addWidget(copy, 0, Qt::AlignLeft);
  }
  const auto act = [waits, due, answer] {
    if (waits->text().empty()) {
      waits->edit()->setFocus();
      return;
    }
    answer(waits->text(), due->text());
  };
  add_buttons(column, tr("Park job"), act);
  auto* yes = content_->findChild<Button*>(QStringLiteral("button-ask-yes"));
  connect(waits, &WordField::entered, due, [due] { due->edit()->setFocus(Qt::OtherFocusReason); });
  connect(due, &WordField::entered, yes, [yes] { yes->setFocus(Qt::OtherFocusReason); });
  content_->show();
  waits->edit()->setFocus(Qt::OtherFocusReason);
}

void AskBox::ask_pick(const QString& question, const std::vector<Pick>& picks) {
  auto* column = begin(question);
  const std::size_t columns = picks.size() > 5 ? 2 : 1;
  widgets::TurningRow* row = nullptr;
  Button* first = nullptr;
  int widest = 0;
  for (const Pick& pick : picks) {
    widest = std::max(widest, Button(pick.text).sizeHint().width());
  }
  for (std::size_t at = 0; at < picks.size(); ++at) {
    const Pick& pick = picks[at];
    auto* button = child_of<Button>(content_, pick.text);
    button->setObjectName(widgets::qt("button-pick-" + pick.name));
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setMinimumWidth(widest);  // all alike, and a row that turns does so with the others
    connect(button, &Button::clicked, this, [this, act = pick.act] {
      leave();
      act();
    });
    row = at % columns == 0 ? widgets::lay_in<widgets::TurningRow>(column, 10) : row;
    row->addWidget(button, 1);
    first = first == nullptr ? button : first;
  }
  auto* no = child_of<Button>(content_, picks.empty() ? tr("Close") : tr("Cancel"));
  no->setObjectName(QStringLiteral("button-ask-no"));
  connect(no, &Button::clicked, this, &AskBox::leave);
  column->addWidget(no, 0, Qt::AlignLeft);
  content_->show();
  (first == nullptr ? no : first)->setFocus(Qt::OtherFocusReason);
}

void AskBox::leave() {
  if (isHidden()) {
    return;
  }
  put_away();
  emit left();
}

void AskBox::put_away() {
  if (isHidden()) {
    return;
  }
  hide();
  emit asking_changed();
}

void AskBox::press_yes() {
  if (asking() && yes_ != nullptr) {
    yes_->click();
  }
}

void AskBox::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    leave();
    return;
  }
  QFrame::keyPressEvent(event);
}

}  // namespace shimwright::bench
