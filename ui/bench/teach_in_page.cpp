#include "teach_in_page.h"

#include <QLineEdit>
#include <algorithm>

#include "reading_words.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "step_pages.h"

namespace shimwright::bench {

using widgets::Button;
using widgets::child_of;
using widgets::NumberField;
using widgets::qt;
using widgets::WordField;

namespace {

const std::vector<sheet::Channel>& taught_channels(const sheet::Step& step) {
  return std::get<sheet::TeachInStep>(step.body).channels;
}

bool ends_with(const std::string& text, const std::string& ending) {
  return text.size() >= ending.size() && text.compare(text.size() - ending.size(), ending.size(), ending) == 0;
}

}  // namespace

TeachInPage::TeachInPage(Workbench& bench, const sheet::Step& step, QWidget* parent) : StepPage(bench, step, parent) {
  auto* column = widgets::lay<QVBoxLayout>(this, 14);
  left_out_ = child_of<KeptLine>(this);
  column->addWidget(left_out_);
  add_values(column);
  add_answers(column);
  unsent_ = child_of<UnsentBox>(this, tr("Say how the teach-in went; the values are kept with the answer."));
  column->addWidget(unsent_);
  attempts_ = child_of<widgets::Box>(this, tr("Attempts"), QString(), "card");
  column->addWidget(attempts_);
  connect(unsent_, &UnsentBox::cleared, this, &TeachInPage::clear);
  chain_fields();
  refresh();
}

void TeachInPage::add_values(QVBoxLayout* column) {
  for (const sheet::Channel& channel : taught_channels(step())) {
    auto* line = widgets::lay_in<QHBoxLayout>(column, 24);
    Row row;
    row.channel = &channel;
    const QString title = said(channel.title);
    row.before = child_of<NumberField>(this, tr("%1 before").arg(title), channel.unit);
    row.before->edit()->setObjectName(qt("field-" + channel.id + "-before"));
    row.before->set_may_be_blank(true);
    row.after = child_of<NumberField>(this, tr("%1 after").arg(title), channel.unit);
    row.after->edit()->setObjectName(qt("field-" + channel.id + "-after"));
    row.after->set_may_be_blank(true);
    if (const sheet::Limit* limit = limit_of(spec(), channel)) {
      row.after->set_hint(limit_words(*limit));
    }
    line->addWidget(row.before, 1, Qt::AlignTop);
    line->addWidget(row.after, 1, Qt::AlignTop);
    rows_.push_back(row);
  }
}

void TeachInPage::add_answers(QVBoxLayout* column) {
  // Above the answers: what `Aborted` needs is written before it is pressed.
  auto* words = widgets::lay_in<QHBoxLayout>(column, 16);
  code_ = child_of<WordField>(this, tr("If aborted: code shown"));
  code_->edit()->setObjectName(QStringLiteral("field-code"));
  reason_ = child_of<WordField>(this, tr("If aborted: why it broke off"));
  reason_->edit()->setObjectName(QStringLiteral("field-reason"));
  words->addWidget(code_, 1);
  words->addWidget(reason_, 2);
  missing_ = child_of<widgets::Text>(this, QString(), "error");
  missing_->hide();
  column->addWidget(missing_);
  keys_ = child_of<KeyLine>(this);
  keys_->setText(tr("Completed: key 1. Aborted: key 2."));
  column->addWidget(keys_, 0, Qt::AlignLeft);
  setFocusProxy(keys_);
  auto* row = widgets::lay_in<QHBoxLayout>(column, 16);
  completed_ = child_of<Button>(this, tr("Completed"), Button::Kind::answer);
  completed_->setObjectName(QStringLiteral("button-completed"));
  completed_->set_keys(tr("key 1"));
  aborted_ = child_of<Button>(this, tr("Aborted"), Button::Kind::answer);
  aborted_->setObjectName(QStringLiteral("button-aborted"));
  aborted_->set_keys(tr("key 2"));
  row->addWidget(completed_, 1);
  row->addWidget(aborted_, 1);
  connect(completed_, &Button::clicked, this, [this] { answer(true); });
  connect(aborted_, &Button::clicked, this, [this] { answer(false); });
}

std::vector<NumberField*> TeachInPage::fields() const {
  std::vector<NumberField*> all;
  for (const Row& row : rows_) {
    all.push_back(row.before);
    all.push_back(row.after);
  }
  return all;
}

void TeachInPage::chain_fields() {
  const auto changed = [this] {
    missing_->hide();
    emit look_changed();
  };
  // How it went is not told by a number: after the last one the keys 1 and 2 answer.
  widgets::chain_fields(fields(), [this] { setFocus(Qt::OtherFocusReason); });
  for (NumberField* each : fields()) {
    connect(each, &NumberField::edited, this, changed);
  }
  connect(code_, &WordField::edited, this, changed);
  connect(reason_, &WordField::edited, this, changed);
  connect(code_, &WordField::entered, this, [this] { reason_->edit()->setFocus(Qt::OtherFocusReason); });
  connect(reason_, &WordField::entered, this, [this] { setFocus(Qt::OtherFocusReason); });
}

void TeachInPage::take_focus() {
  for (NumberField* each : fields()) {
    if (each->blank()) {
      each->take_focus();
      return;
    }
  }
  setFocus(Qt::OtherFocusReason);
}

bool TeachInPage::has_unsent() const {
  const auto all = fields();
  return !code_->text().empty() || !reason_->text().empty() ||
         std::any_of(all.begin(), all.end(), [](const NumberField* each) { return !each->blank(); });
}

/// Whether it was completed is for a person to say, not for leaving the page.
bool TeachInPage::commit() {
  unsent_->setVisible(has_unsent());
  return !has_unsent();
}

bool TeachInPage::take_burst(const std::string& text) {
  for (NumberField* each : fields()) {
    if (each->blank()) {
      each->set_text(text);
      if (const auto number = each->number(); !number) {
        each->set_fault(widgets::say(number.error()));
        each->take_focus();
      } else {
        emit each->entered();
      }
      return true;
    }
  }
  return false;
}

bool TeachInPage::take_digit(int digit) {
  if (digit != 1 && digit != 2) {
    return false;
  }
  answer(digit == 1);
  return true;
}

bool TeachInPage::readable() {
  for (NumberField* each : fields()) {
    if (const auto number = each->number(); !each->blank() && !number) {
      each->set_fault(widgets::say(number.error()));
      each->take_focus();
      return false;
    }
  }
  return true;
}

void TeachInPage::answer(bool completed) {
  if (!readable()) {
    return;
  }
  job::TryTeachIn command{step().id, completed, {}, code_->text(), reason_->text()};
  for (const Row& row : rows_) {
    if (!row.before->blank() || !row.after->blank()) {
      command.values.push_back({row.channel->id, row.before->text(), row.after->text()});
    }
  }
  const auto entries = bench().send(command);
  if (!entries) {
    say_refusal(entries.error());
    return;
  }
  clear();
  refresh();
  emit look_changed();
  if (job::passed(step_state())) {
    emit leaves();
  } else {
    take_focus();
  }
}

void TeachInPage::say_refusal(const Error& error) {
  for (const Row& row : rows_) {
    for (NumberField* field : {row.before, row.after}) {
      if (ends_with(error.place, "/" + row.channel->id + (field == row.before ? "/before" : "/after"))) {
        field->set_fault(widgets::say(error));
        field->take_focus();
        return;
      }
    }
  }
  if (error.code == "reason_missing") {
    missing_->setText(widgets::say(error));
    missing_->show();
    reason_->edit()->setFocus(Qt::OtherFocusReason);
    return;
  }
  emit refused(error);
}

void TeachInPage::clear() {
  unsent_->hide();
  missing_->hide();
  for (NumberField* each : fields()) {
    each->set_text({});
  }
  code_->set_text({});
  reason_->set_text({});
}

void TeachInPage::refresh() {
  keys_->setVisible(!state().closed && !state().parked);
  left_out_->show_words(widgets::Mark::deviation, left_out_words(bench(), step_state()));
  show_attempts();
}

QString TeachInPage::words_of(const job::TeachInTried& tried) const {
  QString words = tried.completed ? tr("completed") : tr("aborted");
  if (!tried.code.empty()) {
    words += tr(", code %1").arg(qt(tried.code));
  }
  if (!tried.reason.empty()) {
    words += QStringLiteral(", ") + qt(tried.reason);
  }
  for (const job::AttemptValue& value : tried.values) {
    const auto& channels = taught_channels(step());
    const auto channel = std::find_if(channels.begin(), channels.end(),
                                      [&](const sheet::Channel& each) { return each.id == value.channel; });
    words += QStringLiteral("; ") + (channel == channels.end() ? qt(value.channel) : said(channel->title));
    if (value.before) {
      words += tr(" before %1").arg(number_words(*value.before));
    }
    if (value.after) {
      words += tr(" after %1").arg(reading_words(*value.after));
    }
  }
  return words;
}

void TeachInPage::show_attempts() {
  for (KeptLine* line : lines_) {
    line->hide();
  }
  std::size_t count = 0;
  for (const job::Entry* entry : state().live(step().id)) {
    const auto* tried = std::get_if<job::TeachInTried>(&entry->body);
    if (tried == nullptr) {
      continue;
    }
    if (count == lines_.size()) {
      lines_.push_back(child_of<KeptLine>(attempts_));
      attempts_->body()->addWidget(lines_.back());
    }
    const bool off = std::any_of(tried->values.begin(), tried->values.end(), [](const job::AttemptValue& value) {
      return value.after && is_off(value.after->verdict);
    });
    const widgets::Mark mark = !tried->completed ? widgets::Mark::held
                               : off             ? widgets::Mark::not_equal
                                                 : widgets::Mark::within;
    lines_[count]->show_words(mark,
                              tr("%1: %2, %3").arg(tried->attempt).arg(words_of(*tried), by_whom(bench(), *entry)),
                              off || !tried->completed);
    ++count;
  }
  attempts_->setVisible(count > 0);
}

const job::Reading* TeachInPage::read_after() const {
  const job::Reading* shown = nullptr;
  for (const job::Entry* entry : job::present_entries(state(), step())) {
    const auto* tried = std::get_if<job::TeachInTried>(&entry->body);
    if (tried == nullptr) {
      continue;
    }
    shown = nullptr;
    for (const job::AttemptValue& value : tried->values) {
      if (value.after && (shown == nullptr || !is_off(shown->verdict))) {
        shown = &*value.after;
      }
    }
  }
  return shown;
}

widgets::StripText TeachInPage::strip() const {
  const job::Reading* reading = read_after();
  return reading == nullptr ? widgets::StripText{} : strip_of(*reading);
}

StepPage* make_teach_in_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<TeachInPage>(parent, bench, step);
}

}  // namespace shimwright::bench
