#include "sheet_form.h"

#include <algorithm>
#include <utility>

#include "draft_places.h"
#include "flow_row.h"
#include "named_button.h"
#include "natural_text.h"
#include "sheet_words.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

using widgets::Button;
using widgets::child_of;
using widgets::Text;

SheetForm::SheetForm(store::Store& store, WorkshopWays ways, store::KeptDraft draft, QWidget* parent)
    : QWidget(parent), store_(&store), ways_(std::move(ways)), kept_(std::move(draft)) {
  build();
  look_for_faults();
  rebuild("");
}

void SheetForm::build() {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  const bool demonstration = sheet::head_of(kept_.draft).demonstration;
  heading_ = add_heading_line(this, column, QString(), demonstration);
  if (!demonstration) {
    mark_ = widgets::demonstration_mark(this);
    mark_->setVisible(false);
    column->addWidget(mark_, 0, Qt::AlignLeft);
  }
  state_ = child_of<Text>(this, QString(), "soft");
  column->addWidget(state_);
  auto* row = widgets::lay_in<QHBoxLayout>(column, 12);
  parts_ = child_of<WordPick>(this, tr("Section of the sheet"));
  parts_->setObjectName(QStringLiteral("pick-part"));
  row->addWidget(parts_, 1);
  auto* next = named_button(this, tr("Next section"), QStringLiteral("button-next-part"));
  row->addWidget(next);
  connect(parts_, &WordPick::picked, this, [this] { show_part(static_cast<std::size_t>(parts_->currentIndex())); });
  connect(parts_, &WordPick::entered, this, [this] { take_focus(); });
  connect(next, &QAbstractButton::clicked, this, [this] {
    show_part((part_ + 1) % static_cast<std::size_t>(parts_->count()));
    take_focus();
  });
  body_column_ = widgets::lay_in<QVBoxLayout>(column, 12);
  build_foot(column);
}

void SheetForm::build_foot(QBoxLayout* column) {
  outcome_ = child_of<Text>(this, QString());
  outcome_->setObjectName(QStringLiteral("sheet-outcome"));
  outcome_->setVisible(false);
  column->addWidget(outcome_);
  auto* foot = child_of<FlowRow>(this);
  issue_ = named_button(foot, QString(), QStringLiteral("button-make-issue"), Button::Kind::main);
  foot->add(issue_);
  auto* leave = named_button(foot, tr("Go on later"), QStringLiteral("button-leave-draft"));
  foot->add(leave);
  auto* away = named_button(foot, tr("Throw the draft away"), QStringLiteral("button-throw-draft-away"));
  foot->add(away);
  auto* sure = named_button(foot, tr("Yes, throw it away"), QStringLiteral("button-throw-draft-away-now"));
  sure->setVisible(false);
  foot->add(sure);
  column->addWidget(foot);
  connect(issue_, &QAbstractButton::clicked, this, &SheetForm::make_issue);
  connect(leave, &QAbstractButton::clicked, this, &SheetForm::leave);
  connect(away, &QAbstractButton::clicked, this, [this, sure] {
    say_outcome(tr("All that was filled in is lost then. Press again to be sure."), false);
    sure->setVisible(true);
    sure->setFocus();
  });
  connect(sure, &QAbstractButton::clicked, this, [this] {
    const auto thrown = store::throw_draft_away(*store_, kept_.id);
    thrown ? emit thrown_away() : say_outcome(widgets::say(thrown.error()), false);
  });
}

std::vector<sheet::DraftSection> SheetForm::sections() const {
  auto all = sheet::sections_of(kept_.draft);
  if (!kept_.reasons.empty()) {
    all.push_back(section_of_reasons(kept_.reasons));
  }
  return all;
}

void SheetForm::show_part(std::size_t part, const std::string& focus) {
  part_ = part;
  rebuild(focus);
}

void SheetForm::add_row(const std::string& place) {
  kept_.draft = sheet::with_row(kept_.draft, place);
  look_for_faults();
  static_cast<void>(keep());
  const auto all = sections();
  // A step or stage has a part of its own; every other row stands in this one.
  part_ = last_part_below(all, place).value_or(std::min(part_, all.size() - 1));
  rebuild(last_row_of(all[part_], place));
}

void SheetForm::move_row(const std::string& place, int by) {
  const bool is_part = sections()[part_].id == place;
  auto turned = sheet::moved(kept_.draft, place, by);
  if (!turned) {
    say_moved(place, widgets::say(turned.error()), false);
    return;
  }
  if (turned->place == place) {
    say_moved(place, tr("It stands at the end already."), false);
    return;
  }
  change(std::move(turned->draft));
  follow(turned->place, by < 0 ? QStringLiteral("button-up-") : QStringLiteral("button-down-"), is_part);
  const auto stage = stage_of_step(sections(), turned->place);
  if (stage && stage_place(turned->place) != stage_place(place) && !unkept_) {
    say_moved(turned->place, tr("It stands in “%1” now.").arg(widgets::say(*stage)), true);
  }
}

void SheetForm::say_moved(const std::string& place, const QString& text, bool good) {
  if (auto* told = body_->findChild<Text*>(QStringLiteral("moved-") + widgets::qt(place))) {
    widgets::set_part(told, good ? "strong" : "error");
    told->setText(text);
    told->setVisible(true);
    emit wants_sight(told);
  }
}

void SheetForm::follow(const std::string& place, const QString& button, bool to_its_part) {
  if (const auto part = part_named(sections(), place); part && to_its_part) {
    show_part(*part);
  }
  if (auto* again = body_->findChild<QWidget*>(button + widgets::qt(place))) {
    again->setFocus();
    emit wants_sight(again);
  }
}

void SheetForm::take_over(sheet::MovedRow stage) {
  change(std::move(stage.draft));
  if (const auto part = part_named(sections(), stage.place)) {
    show_part(*part);
    take_focus();
  }
  if (!unkept_) {
    say_outcome(tr("Taken over. What is to be put right is named at each section."), true);
  }
}

void SheetForm::put(const std::string& place, const std::string& text) {
  if (place.compare(0, reason_place.size(), reason_place) == 0) {
    put_reason(place, text);
    return;
  }
  auto changed = sheet::with_text(kept_.draft, place, text);
  if (!changed) {
    changed.error().place = place;
    refused_[place] = {text, std::move(changed.error())};
    look_for_faults();
    show_faults();
    return;
  }
  refused_.erase(place);
  kept_.draft = std::move(*changed);
  look_for_faults();
  static_cast<void>(keep());
  if (!changes_the_form(place)) {
    fill_parts(sections());
    show_faults();
    return;
  }
  // Not under the hands of the field that says it.
  QMetaObject::invokeMethod(
      this, [this, place] { rebuild(place); }, Qt::QueuedConnection);
}

void SheetForm::put_reason(const std::string& place, const std::string& text) {
  const auto at = static_cast<std::size_t>(std::stoul(place.substr(reason_place.size())));
  if (at < kept_.reasons.size()) {
    kept_.reasons[at].reason = text;
    static_cast<void>(keep());
  }
}

void SheetForm::change(sheet::SheetDraft draft) {
  kept_.draft = std::move(draft);
  // Its row may have another place now, and its field shows what is kept.
  refused_.clear();
  look_for_faults();
  static_cast<void>(keep());
  rebuild("");
  take_focus();
}

Result<void> SheetForm::keep() {
  take_up_losses();
  auto kept = store::keep_draft(*store_, kept_, by_now(ways_));
  unkept_ = !kept;
  if (!kept) {
    say_outcome(widgets::say(kept.error()), false);
  } else {
    outcome_->setVisible(false);
  }
  return kept;
}

bool SheetForm::has_unsent() {
  commit_typed();
  return !refused_.empty() || (unkept_ && !keep());
}

void SheetForm::leave() {
  if (!has_unsent()) {
    emit left();
  } else if (!refused_.empty()) {
    go_to_first({refused_.begin()->second.why});
  }
}

void SheetForm::take_up_losses() {
  auto lost = store::lost_by_draft(*store_, kept_);
  // While the draft cannot be read, nobody can say what it lost: the reasons stay.
  if (!lost || !faults_.empty()) {
    return;
  }
  for (sheet::TakenAway& each : *lost) {
    for (const sheet::TakenAway& given : kept_.reasons) {
      const bool same = given.step == each.step && given.guard == each.guard && given.text == each.text;
      each.reason = same ? given.reason : each.reason;
    }
  }
  kept_.reasons = std::move(*lost);
}

void SheetForm::look_for_faults() {
  faults_ = sheet::faults_of(kept_.draft);
  for (const auto& [place, refused] : refused_) {
    faults_.insert(faults_.begin(), refused.why);
  }
  const sheet::DraftHead head = sheet::head_of(kept_.draft);
  heading_->setText(issue_title(head.name, head.issue));
  if (mark_ != nullptr) {
    mark_->setVisible(head.demonstration);
  }
  const auto persons = store_->registers().persons();
  state_->setText(draft_in_words(kept_, faults_.size(), persons ? *persons : std::vector<store::Person>()));
  issue_->set_action_text(tr("Keep as issue %1").arg(head.issue));
}

std::optional<Error> SheetForm::fault_at(const std::string& place) const {
  const auto found =
      std::find_if(faults_.begin(), faults_.end(), [&place](const Error& each) { return stands_at(each, place); });
  return found == faults_.end() ? std::nullopt : std::optional(*found);
}

void SheetForm::show_faults() {
  for (SheetField* const each : fields_) {
    const auto fault = fault_at(each->place());
    const bool shown = fault && (asked_ || !sheet::is_still_blank(*fault));
    each->set_fault(shown ? widgets::say(*fault) : QString());
  }
}

void SheetForm::commit_typed() {
  for (SheetField* const each : fields_) {
    each->commit();
  }
}

void SheetForm::take_focus() {
  fields_.empty() ? parts_->setFocus() : fields_.front()->take_focus();
}

void SheetForm::go_on_from(const SheetField* field) {
  const auto at = std::find(fields_.begin(), fields_.end(), field);
  if (at == fields_.end()) {
    return;
  }
  // Never a button: the next burst of a gauge or scanner would press it.
  SheetField* const next = at + 1 == fields_.end() ? *at : *(at + 1);
  next->take_focus();
  emit wants_sight(next);
}

bool SheetForm::go_to_first(const std::vector<Error>& faults) {
  const auto all = sections();
  for (std::size_t part = 0; part < all.size(); ++part) {
    for (const Error& fault : faults) {
      if (lies_in(fault, all[part])) {
        show_part(part, fault.place);
        return true;
      }
    }
  }
  show_faults();
  return false;
}

void SheetForm::make_issue() {
  commit_typed();
  asked_ = true;
  if (!faults_.empty()) {
    const QString why = go_to_first(faults_) ? tr("the first of them is in sight.") : widgets::say(faults_.front());
    say_outcome(tr("Not kept yet, %1 to be filled in or put right: %2").arg(faults_.size()).arg(why), false);
    keep_sought_in_sight();
    return;
  }
  // The issue is made of what lies in the store, and is for ever.
  if (!keep()) {
    return;
  }
  const auto hash = store::make_issue(*store_, kept_.id, by_now(ways_));
  if (hash) {
    emit issued(*hash);
    return;
  }
  if (hash.error().code == "no_reason") {
    show_part(sections().size() - 1, reason_place);
  }
  say_outcome(widgets::say(hash.error()), false);
  if (hash.error().code == "no_reason") {
    keep_sought_in_sight();
  }
}

/// What is told about it stands below and came later; the field has its own sentence.
void SheetForm::keep_sought_in_sight() {
  if (sought_ != nullptr) {
    emit wants_sight(sought_);
  }
}

void SheetForm::say_outcome(const QString& text, bool good) {
  widgets::set_part(outcome_, good ? "strong" : "error");
  outcome_->setText(text);
  outcome_->setVisible(true);
  emit wants_sight(outcome_);
}

}  // namespace shimwright::workshop
