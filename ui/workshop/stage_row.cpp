#include "stage_row.h"

#include <algorithm>
#include <utility>

#include "named_button.h"
#include "sheet_words.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/sheet_text.h"
#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::plain;

namespace {

sheet::WordChoice choice_of_sheet(const store::SheetIssue& issue) {
  const auto sheet = sheet::read_job_sheet(issue.json);
  const std::string title = sheet ? plain(widgets::say(sheet->title)) : issue.name;
  return {issue.hash, {"{0}", {plain(issue_title(title, issue.issue))}}};
}

}  // namespace

StageRow::StageRow(std::vector<store::SheetIssue> sheets, const std::vector<sheet::WordChoice>& stages, QWidget* parent)
    : QWidget(parent), sheets_(std::move(sheets)) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(child_of<widgets::Text>(this, tr("Or take a stage over from another sheet:"), "strong"));
  auto* card = child_of<QFrame>(this);
  widgets::set_part(card, "card");
  column->addWidget(card);
  auto* rows = widgets::lay<QVBoxLayout>(card, 10);
  rows->setContentsMargins(16, 10, 16, 12);
  sheet_ = add_pick(rows, tr("Sheet it is taken from"), "pick-other-sheet");
  stage_ = add_pick(rows, tr("Stage"), "pick-other-stage");
  before_ = add_pick(rows, tr("Stands before"), "pick-stage-place");
  std::vector<sheet::WordChoice> choices;
  for (const store::SheetIssue& each : sheets_) {
    choices.push_back(choice_of_sheet(each));
  }
  sheet_->set_choices(choices, choices.size() == 1 ? choices.front().word : std::string());
  before_->set_choices(stages, stages.empty() ? std::string() : stages.back().word);
  fill_stages();
  rows->addWidget(child_of<widgets::Text>(card,
                                          tr("It comes with its cautions and hold points, in the languages of this "
                                             "sheet. From a demonstration sheet it makes "
                                             "this sheet one too."),
                                          "small"));
  fault_ = child_of<widgets::Text>(card, QString(), "error");
  fault_->setVisible(false);
  rows->addWidget(fault_);
  auto* take = named_button(card, tr("Take the stage over"), QStringLiteral("button-take-stage-over"));
  rows->addWidget(take, 0, Qt::AlignLeft);
  connect(sheet_, &WordPick::picked, this, &StageRow::fill_stages);
  connect(sheet_, &WordPick::entered, this, [this] { stage_->setFocus(); });
  connect(stage_, &WordPick::entered, this, [this] { before_->setFocus(); });
  connect(take, &QAbstractButton::clicked, this, &StageRow::take);
}

WordPick* StageRow::add_pick(QBoxLayout* rows, const QString& title, const char* name) {
  auto* column = widgets::lay_in<QVBoxLayout>(rows, 3);
  column->addWidget(child_of<widgets::Text>(this, title, "small"));
  auto* pick = child_of<WordPick>(this, title);
  pick->setObjectName(QLatin1String(name));
  column->addWidget(pick);
  connect(pick, &WordPick::picked, this, [this] { set_fault({}); });
  return pick;
}

void StageRow::fill_stages() {
  std::vector<sheet::WordChoice> stages;
  for (const store::SheetIssue& each : sheets_) {
    const auto sheet = sheet::read_job_sheet(each.json);
    for (const sheet::Stage& stage :
         sheet&& each.hash == sheet_->word() ? sheet->stages : std::vector<sheet::Stage>()) {
      stages.push_back({stage.id, {"{0}", {plain(widgets::say(stage.title))}}});
    }
  }
  stage_->set_choices(stages, "");
}

void StageRow::take() {
  const auto from = std::find_if(sheets_.begin(), sheets_.end(),
                                 [this](const store::SheetIssue& each) { return each.hash == sheet_->word(); });
  if (from == sheets_.end() || stage_->word().empty()) {
    set_fault(tr("Choose a sheet and one of its stages first."));
    (from == sheets_.end() ? sheet_ : stage_)->setFocus();
    return;
  }
  if (before_->word().empty()) {
    set_fault(tr("Add a stage to this sheet first: the one taken over stands before it."));
    return;
  }
  emit taken(from->json, stage_->word(), before_->word());
}

void StageRow::set_fault(const QString& sentence) {
  fault_->setText(sentence);
  fault_->setVisible(!sentence.isEmpty());
}

}  // namespace shimwright::workshop
