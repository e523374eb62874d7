#include "new_job_fields.h"

#include <QKeyEvent>
#include <QListView>
#include <algorithm>

#include "shimwright/bench/step_page.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/keys.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

namespace {

constexpr int choice_height = 54;

}  // namespace

FreeText::FreeText(QWidget* parent) : QPlainTextEdit(parent) {
  setTabChangesFocus(true);
}

std::string FreeText::text() const {
  return widgets::plain(toPlainText().trimmed());
}

void FreeText::keyPressEvent(QKeyEvent* event) {
  if (widgets::is_plain_enter(*event)) {
    emit entered();
    return;
  }
  QPlainTextEdit::keyPressEvent(event);
}

GearboxChoice::GearboxChoice(QWidget* parent) : PickBox(QString(), parent) {
  // A view of our own: the toolkit's takes no height from the style sheet.
  setView(widgets::child_of<QListView>(this));
  setMinimumHeight(choice_height);
  setPlaceholderText(tr("Choose the gearbox type"));
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
}

void GearboxChoice::set_issues(const std::vector<store::SheetIssue>& issues) {
  issues_.clear();
  clear();
  for (const store::SheetIssue& each : issues) {
    const auto spec = sheet::read_spec_sheet(each.json);
    add_issue(each, spec ? widgets::qt(spec->title.in(window_language())) : QString(), spec && spec->demonstration);
  }
  choose_none();
}

void GearboxChoice::set_job_sheets(const std::vector<store::SheetIssue>& issues) {
  issues_.clear();
  clear();
  int latest = -1;
  for (const store::SheetIssue& each : issues) {
    const auto at = static_cast<std::size_t>(std::max(latest, 0));
    latest = latest < 0 || each.added_at_ms > issues[at].added_at_ms ? count() : latest;
    const auto sheet = sheet::read_job_sheet(each.json);
    add_issue(each, sheet ? widgets::qt(sheet->title.in(window_language())) : QString(), sheet && sheet->demonstration);
  }
  setCurrentIndex(latest);
}

void GearboxChoice::add_issue(const store::SheetIssue& issue, const QString& title, bool demonstration) {
  issues_.push_back({issue.hash, issue.name, demonstration});
  const QString named = tr("%1, issue %2").arg(widgets::qt(issue.name)).arg(issue.issue);
  addItem(title.isEmpty() ? named : QStringLiteral("%1 · %2").arg(named, title));
}

const GearboxChoice::Issue* GearboxChoice::chosen_issue() const {
  const int at = currentIndex();
  return at < 0 || at >= static_cast<int>(issues_.size()) ? nullptr : &issues_[static_cast<std::size_t>(at)];
}

std::optional<std::string> GearboxChoice::chosen() const {
  const Issue* issue = chosen_issue();
  return issue == nullptr ? std::nullopt : std::optional(issue->hash);
}

bool GearboxChoice::chosen_is_demonstration() const {
  const Issue* issue = chosen_issue();
  return issue != nullptr && issue->demonstration;
}

bool GearboxChoice::choose_gearbox(const std::string& gearbox) {
  for (std::size_t at = 0; at < issues_.size(); ++at) {
    if (issues_[at].gearbox == gearbox) {
      setCurrentIndex(static_cast<int>(at));
      return true;
    }
  }
  return false;
}

void GearboxChoice::choose_none() {
  setCurrentIndex(issues_.size() == 1 ? 0 : -1);
}

void GearboxChoice::keyPressEvent(QKeyEvent* event) {
  if (widgets::is_plain_enter(*event)) {
    emit entered();
    return;
  }
  PickBox::keyPressEvent(event);
}

}  // namespace shimwright::bench
