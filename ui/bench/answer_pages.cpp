#include "answer_pages.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <algorithm>

#include "job_words.h"
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

/// More answers than this are lower, so that they stay on one screen.
constexpr std::size_t most_tall_answers = 4;
constexpr int low_answer = 64;

bool is_answer(const job::EntryBody& body) {
  return std::holds_alternative<job::Done>(body) || std::holds_alternative<job::Checked>(body) ||
         std::holds_alternative<job::Chosen>(body) || std::holds_alternative<job::Signed>(body) ||
         std::holds_alternative<job::Deviated>(body) || std::holds_alternative<job::NotRequired>(body);
}

Button* answer_button(const QString& text, const QString& name, QWidget* parent) {
  auto* button = child_of<Button>(parent, text, Button::Kind::answer);
  button->setObjectName(QStringLiteral("button-") + name);
  button->setCheckable(true);
  return button;
}

}  // namespace

AnswerPage::AnswerPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : StepPage(bench, step, parent),
      column_(widgets::lay<QVBoxLayout>(this, 14)),
      kept_(child_of<KeptLine>(this)),
      keys_(child_of<KeyLine>(this)) {
  kept_->setObjectName(QStringLiteral("kept"));
  column_->addWidget(kept_);
  column_->addWidget(keys_, 0, Qt::AlignLeft);
  setFocusProxy(keys_);
}

const job::Entry* AnswerPage::answer() const {
  const job::Entry* last = nullptr;
  for (const job::Entry* entry : job::present_entries(state(), step())) {
    last = is_answer(entry->body) ? entry : last;
  }
  return last;
}

/// What was answered before the job lay still is asked again: no button is pressed for it.
bool AnswerPage::answer_stands() const {
  return !std::holds_alternative<job::Unproven>(step_state());
}

QString AnswerPage::words_of(const job::EntryBody& body) const {
  QString words = answer_words(body);
  const auto* checked = std::get_if<job::Checked>(&body);
  if (checked != nullptr && checked->in_order && !checked->finding.empty()) {
    words = QCoreApplication::translate("bench", "%1: %2").arg(words, qt(checked->finding));
  }
  return words;
}

void AnswerPage::refresh() {
  const job::Entry* given = answer();
  QString words;
  if (given != nullptr) {
    words = tr("kept: %1, %2").arg(words_of(given->body), by_whom(bench(), *given));
    if (std::holds_alternative<job::Unproven>(step_state())) {
      words += tr(". It may have moved since: look again and answer again.");
    }
  }
  kept_->show_words(mark_of(step_state()), words, std::holds_alternative<job::Held>(step_state()));
  keys_->setText(key_words());
  keys_->setVisible(!state().closed && !state().parked);
}

DoPage::DoPage(Workbench& bench, const sheet::Step& step, QWidget* parent) : AnswerPage(bench, step, parent) {
  refresh();
}

std::vector<FootAction> DoPage::actions() {
  if (job::passed(step_state())) {
    return {};
  }
  return {{"take", tr("Done"), [this] { send(job::DoStep{step().id}); }, true}};
}

QString DoPage::key_words() const {
  return job::passed(step_state()) ? tr("Done. Ctrl Enter goes on.") : tr("When it is done: Ctrl Enter.");
}

CheckPage::CheckPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : AnswerPage(bench, step, parent),
      words_(child_of<widgets::WordField>(this, tr("What you saw: needed where it is not in order"))),
      missing_(child_of<widgets::Text>(this, QString(), "error")),
      in_order_(answer_button(tr("In order"), QStringLiteral("in-order"), this)),
      not_in_order_(answer_button(tr("Not in order"), QStringLiteral("not-in-order"), this)),
      unsent_(child_of<UnsentBox>(this, tr("Say whether it is in order; the words are kept with the answer."))) {
  in_order_->set_keys(tr("key 1"));
  not_in_order_->set_keys(tr("key 2"));
  // Above the answers: what one of them needs is written before it is pressed.
  column()->addWidget(words_);
  words_->edit()->setObjectName(QStringLiteral("field-finding"));
  column()->addWidget(missing_);
  auto* row = widgets::lay_in<QHBoxLayout>(column(), 16);
  row->addWidget(in_order_, 1);
  row->addWidget(not_in_order_, 1);
  column()->addWidget(unsent_);
  missing_->hide();
  connect(in_order_, &Button::clicked, this, [this] { press(true); });
  connect(not_in_order_, &Button::clicked, this, [this] { press(false); });
  connect(words_, &widgets::WordField::edited, this, [this] {
    missing_->hide();
    emit look_changed();
  });
  connect(words_, &widgets::WordField::entered, this, [this] {
    if (waits_for_words_) {
      press(false);
    }
  });
  connect(unsent_, &UnsentBox::cleared, this, [this] {
    words_->set_text({});
    emit look_changed();
  });
  refresh();
}

QString CheckPage::key_words() const {
  return tr("Answer with key 1 or key 2.");
}

void CheckPage::refresh() {
  AnswerPage::refresh();
  const job::Entry* given = answer();
  const auto* checked = given == nullptr ? nullptr : std::get_if<job::Checked>(&given->body);
  const bool stands = checked != nullptr && answer_stands();
  in_order_->setChecked(stands && checked->in_order && !waits_for_words_);
  not_in_order_->setChecked(waits_for_words_ || (stands && !checked->in_order));
}

bool CheckPage::take_digit(int digit) {
  if (digit != 1 && digit != 2) {
    return false;
  }
  press(digit == 1);
  return true;
}

void CheckPage::press(bool is_in_order) {
  if (!is_in_order && words_->text().empty()) {
    waits_for_words_ = true;
    say_missing_words();
    refresh();
    return;
  }
  waits_for_words_ = false;
  const bool said_so = say_answer(is_in_order, true);
  static_cast<void>(said_so);
  refresh();
}

void CheckPage::say_missing_words() {
  missing_->setText(tr("Say in a few words what is not in order, then press Enter."));
  missing_->show();
  words_->edit()->setFocus(Qt::OtherFocusReason);
}

bool CheckPage::say_answer(bool is_in_order, bool go_on) {
  const std::string typed = words_->text();
  if (!send(job::CheckStep{step().id, is_in_order, typed}, false)) {
    return false;
  }
  words_->set_text({});
  unsent_->hide();
  missing_->hide();
  waits_for_words_ = false;
  refresh();
  emit look_changed();
  if (go_on && job::passed(step_state())) {
    emit leaves();
  }
  return true;
}

bool CheckPage::commit() {
  if (!has_unsent()) {
    return true;
  }
  if (waits_for_words_) {
    return say_answer(false, false);
  }
  unsent_->show();
  return false;
}

ChoosePage::ChoosePage(Workbench& bench, const sheet::Step& step, QWidget* parent) : AnswerPage(bench, step, parent) {
  const auto& choices = std::get<sheet::ChooseStep>(step.body).choices;
  auto* place = widgets::lay_in<QVBoxLayout>(column(), 10);
  for (const sheet::Choice& choice : choices) {
    auto* button = answer_button(said(choice.title), qt(choice.id), this);
    // A long answer must not widen the page; it is cut instead, and said whole to those who hear it.
    button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    if (choices.size() > most_tall_answers) {
      button->setFixedHeight(low_answer);
    }
    if (buttons_.size() < 9) {
      button->set_keys(tr("key %1").arg(buttons_.size() + 1));
    }
    connect(button, &Button::clicked, this, [this, id = choice.id] { choose(id); });
    place->addWidget(button);
    buttons_.push_back(button);
  }
  refresh();
}

QString ChoosePage::key_words() const {
  return tr("Answer with a key from 1 to %1.").arg(std::min<std::size_t>(buttons_.size(), 9));
}

void ChoosePage::refresh() {
  AnswerPage::refresh();
  const job::Entry* given = answer();
  const auto* chosen = given == nullptr ? nullptr : std::get_if<job::Chosen>(&given->body);
  const auto& choices = std::get<sheet::ChooseStep>(step().body).choices;
  for (std::size_t at = 0; at < buttons_.size(); ++at) {
    buttons_[at]->setChecked(chosen != nullptr && answer_stands() && chosen->choice == choices[at].id);
  }
}

QString ChoosePage::words_of(const job::EntryBody& body) const {
  const auto* chosen = std::get_if<job::Chosen>(&body);
  if (chosen != nullptr) {
    for (const sheet::Choice& choice : std::get<sheet::ChooseStep>(step().body).choices) {
      if (choice.id == chosen->choice) {
        return said(choice.title);
      }
    }
  }
  return AnswerPage::words_of(body);
}

bool ChoosePage::take_digit(int digit) {
  const auto& choices = std::get<sheet::ChooseStep>(step().body).choices;
  if (digit < 1 || digit > static_cast<int>(choices.size())) {
    return false;
  }
  choose(choices[static_cast<std::size_t>(digit - 1)].id);
  return true;
}

void ChoosePage::choose(const std::string& id) {
  send(job::ChooseAnswer{step().id, id});
  refresh();  // a press that was refused leaves no button pressed
}

SignPage::SignPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : AnswerPage(bench, step, parent),
      who_(child_of<widgets::Text>(this, QString(), "large")),
      says_(child_of<widgets::Text>(
          this,
          tr("Signing says that the job is as its entries have it. The seal over the whole record comes later: it "
             "is made with a PIN when the record is sealed."))) {
  who_->setObjectName(QStringLiteral("who-signs"));
  says_->setObjectName(QStringLiteral("signing-says"));
  column()->addWidget(who_);
  column()->addWidget(says_);
  connect(&bench, &Workbench::person_changed, this, [this] {
    refresh();
    emit look_changed();
  });
  refresh();
}

bool SignPage::by_checker() const {
  return std::get<sheet::SignStep>(step().body).signer == sheet::Signer::checker;
}

void SignPage::refresh() {
  AnswerPage::refresh();
  const store::Person& person = bench().person();
  const QString name = qt(person.name + " (" + person.initials + ")");
  who_->setText(by_checker() ? tr("%1 signs as checker").arg(name) : tr("%1 signs as technician").arg(name));
  who_->setVisible(!job::passed(step_state()));
  says_->setVisible(!state().sealed);
}

QString SignPage::key_words() const {
  return job::passed(step_state()) ? tr("Signed. Ctrl Enter goes on.") : tr("To sign: Ctrl Enter.");
}

std::vector<FootAction> SignPage::actions() {
  if (job::passed(step_state())) {
    return {};
  }
  return {{"take", by_checker() ? tr("Sign as checker") : tr("Sign as technician"),
           [this] { send(job::Sign{step().id}); }, true}};
}

StepPage* make_do_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<DoPage>(parent, bench, step);
}

StepPage* make_check_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<CheckPage>(parent, bench, step);
}

StepPage* make_choose_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<ChoosePage>(parent, bench, step);
}

StepPage* make_sign_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<SignPage>(parent, bench, step);
}

}  // namespace shimwright::bench
