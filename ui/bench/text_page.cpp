#include "text_page.h"

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QShortcut>

#include "job_words.h"
#include "last_job.h"
#include "reading_words.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "step_pages.h"

namespace shimwright::bench {

using widgets::Button;
using widgets::child_of;
using widgets::qt;

namespace {

constexpr int words_height = 148;

bool asks_for_serial(const sheet::Step& step) {
  return step.role == sheet::Role::old_pack_serial || step.role == sheet::Role::new_pack_serial;
}

}  // namespace

TextPage::TextPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : StepPage(bench, step, parent), kept_(child_of<KeptLine>(this)), left_out_(child_of<KeptLine>(this)) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(left_out_);
  column->addWidget(kept_);
  kept_->setObjectName(QStringLiteral("kept"));
  if (asks_for_serial(step)) {
    auto* field = child_of<widgets::WordField>(this, tr("Serial, as it stands on the part"));
    line_ = field->edit();
    line_->setMaximumWidth(420);
    column->addWidget(field);
    connect(line_, &QLineEdit::returnPressed, this, &TextPage::take);
    connect(line_, &QLineEdit::textChanged, this, &StepPage::look_changed);
  } else {
    column->addWidget(child_of<widgets::Text>(this, tr("In your words"), "small"));
    lines_ = child_of<QPlainTextEdit>(this);
    lines_->setTabChangesFocus(true);
    lines_->setFixedHeight(words_height);
    lines_->setAccessibleName(tr("In your words"));
    column->addWidget(lines_);
    connect(lines_, &QPlainTextEdit::textChanged, this, &StepPage::look_changed);
  }
  auto* same = child_of<QShortcut>(this, QKeySequence(Qt::Key_F6));
  same->setContext(Qt::WidgetWithChildrenShortcut);
  connect(same, &QShortcut::activated, this, &TextPage::take_over);
  QWidget* field = line_ == nullptr ? static_cast<QWidget*>(lines_) : line_;
  field->setObjectName(QStringLiteral("field-text"));
  again_ = child_of<Button>(this, tr("Write the kept words again"));
  again_->setObjectName(QStringLiteral("button-write-again"));
  column->addWidget(again_, 0, Qt::AlignLeft);
  connect(again_, &Button::clicked, this, [this] {
    if (const job::Entry* entry = kept()) {
      set_typed(qt(std::get<job::Written>(entry->body).text));
    }
    take_focus();
  });
  connect(this, &StepPage::look_changed, this, [this] { again_->setVisible(kept() != nullptr && typed().empty()); });
  refresh();
}

std::string TextPage::typed() const {
  return widgets::plain((line_ != nullptr ? line_->text() : lines_->toPlainText()).trimmed());
}

void TextPage::set_typed(const QString& text) {
  if (line_ != nullptr) {
    line_->setText(text);
  } else {
    lines_->setPlainText(text);
  }
}

const job::Entry* TextPage::kept() const {
  const job::Entry* last = nullptr;
  for (const job::Entry* entry : job::present_entries(state(), step())) {
    last = std::holds_alternative<job::Written>(entry->body) ? entry : last;
  }
  return last;
}

void TextPage::refresh() {
  left_out_->show_words(widgets::Mark::deviation, left_out_words(bench(), step_state()));
  const job::Entry* entry = kept();
  QString words;
  if (entry != nullptr) {
    words = tr("kept: %1, %2").arg(qt(std::get<job::Written>(entry->body).text), by_whom(bench(), *entry));
  }
  kept_->show_words(mark_of(step_state()), words);
  again_->setVisible(entry != nullptr && typed().empty());
}

void TextPage::take_focus() {
  QWidget* field = line_ == nullptr ? static_cast<QWidget*>(lines_) : line_;
  field->setFocus(Qt::OtherFocusReason);
}

std::vector<FootAction> TextPage::actions() {
  if (job::passed(step_state()) && typed().empty()) {
    return {};
  }
  std::vector<FootAction> all;
  if (lines_ != nullptr && typed().empty()) {
    all.push_back({"same-as-last", tr("Same as last job (F6)"), [this] { take_over(); }, false, true, true});
  }
  all.push_back({"take", line_ != nullptr ? tr("Keep the serial") : tr("Keep the words"), [this] { take(); }, true});
  return all;
}

/// Words only, and to be kept by a key of their own: a serial or a reading never repeats.
void TextPage::take_over() {
  if (lines_ == nullptr || !typed().empty()) {
    return;
  }
  const auto words = written_in_last_job(bench(), step().id);
  if (!words) {
    emit refused(words.error());
  } else if (const std::optional<std::string>& text = *words; text) {
    set_typed(qt(*text));
  } else {
    emit refused({"no_last_job",
                  "",
                  {SHIMWRIGHT_TEXT("bench", "No earlier job on this gearbox type has words here: write them."), {}}});
  }
  take_focus();
}

bool TextPage::take_burst(const std::string& text) {
  if (!typed().empty()) {
    return false;
  }
  set_typed(qt(text));
  if (line_ != nullptr) {
    take();
  } else {
    take_focus();
  }
  return true;
}

void TextPage::take() {
  if (!keep()) {
    return;
  }
  if (job::passed(step_state())) {
    emit leaves();
  } else {
    take_focus();
  }
}

bool TextPage::keep() {
  if (!send(job::WriteText{step().id, typed()}, false)) {
    return false;
  }
  set_typed({});
  refresh();
  emit look_changed();
  return true;
}

StepPage* make_text_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<TextPage>(parent, bench, step);
}

}  // namespace shimwright::bench
