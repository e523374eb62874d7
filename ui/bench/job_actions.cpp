// The buttons below the job screen and what they ask.
#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <algorithm>

#include "ask_box.h"
#include "foot_bar.h"
#include "job_words.h"
#include "pack_panel.h"
#include "reading_words.h"
#include "shimwright/bench/job_page.h"
#include "shimwright/job/stage_hours.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/keypad.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

using widgets::qt;

namespace {

bool can_be_taken_back(const job::Entry& entry) {
  return job::step_of(entry.body) != nullptr && !std::holds_alternative<job::Advised>(entry.body);
}

QString with_odometer(const QString& vehicle, const job::Opened& opened) {
  return opened.odometer ? vehicle + QStringLiteral(" · ") + qt(quantity::printed_text_of(*opened.odometer)) : vehicle;
}

QString whole_vehicle_text(const job::Opened& opened) {
  const QString key = qt(opened.vehicle_key);
  return with_odometer(opened.chassis_reason ? QCoreApplication::translate("bench", "chassis %1").arg(key)
                                             : QCoreApplication::translate("bench", "VIN %1").arg(key),
                       opened);
}

QString short_vehicle_text(const job::Opened& opened) {
  return opened.chassis_reason
             ? whole_vehicle_text(opened)
             : with_odometer(QCoreApplication::translate("bench", "VIN ends %1").arg(qt(opened.vehicle_key).right(5)),
                             opened);
}

}  // namespace

JobHeading JobPage::heading() const {
  if (!bench_->has_job()) {
    return {};
  }
  const job::JobState& state = bench_->state();
  const auto& opened = state.opened;
  if (!opened) {
    return {};
  }
  QString name = tr("Job %1").arg(qt(opened->number));
  if (state.assembly > 1) {
    name += QStringLiteral(" · ") + tr("assembly %1").arg(state.assembly);
  }
  return {name, whole_vehicle_text(*opened), short_vehicle_text(*opened),
          tr("Spec sheet %1, issue %2").arg(qt(state.sheets.spec->gearbox)).arg(state.sheets.spec->issue),
          state.sheets.spec->demonstration || state.sheets.job->demonstration};
}

std::vector<FootAction> JobPage::actions() {
  std::vector<FootAction> all;
  add_left_actions(all);
  if (!bench_->state().closed && !bench_->state().parked) {
    add_step_actions(all);
  } else if (bench_->state().closed) {
    all.push_back({"record", tr("Show the record"), [this] { emit record_wanted(bench_->job_id()); }, true});
  }
  for (FootAction& action : all) {
    action.enabled = action.enabled && !(action.main && ask_->asking());
  }
  return all;
}

void JobPage::add_left_actions(std::vector<FootAction>& all) {
  all.push_back({"back", tr("Back"),
                 [this] {
                   if (may_leave()) {
                     emit left();
                   }
                 },
                 false, true, true});
  for (FootAction& action : page_->actions()) {
    if (action.on_left) {
      all.push_back(std::move(action));
    }
  }
  if (bench_->state().closed) {
    return;
  }
  all.push_back({"note", tr("Note"), [this] { ask_note(); }, false, true, true});
  if (!bench_->state().parked) {
    all.push_back({"photo", tr("Photo"), [this] { add_photo(); }, false, true, true});
    all.push_back({"more", tr("More..."), [this] { ask_more(); }, false, true, true});
  } else {
    all.push_back({"hand-over", tr("Hand the job over"), [this] { ask_handing_over(); }, false, true, true});
  }
}

void JobPage::add_step_actions(std::vector<FootAction>& all) {
  const job::StepState& at = bench_->state().step(step_id_);
  bool has_main = false;
  std::vector<FootAction> right;
  for (FootAction& action : page_->actions()) {
    if (!action.on_left) {
      has_main = has_main || action.main;
      right.push_back(std::move(action));
    }
  }
  all.push_back({"park", tr("Park job"), [this] { ask_parking(); }});
  if (std::holds_alternative<job::Held>(at)) {
    all.push_back({"reason", tr("Go on with reason..."), [this] { ask_reason(); }});
  }
  if (const sheet::Step* here = step(); here != nullptr && here->may_be_not_required && !job::passed(at)) {
    all.push_back({"not-required", tr("Not required..."), [this] { ask_not_required(); }});
  }
  for (FootAction& action : right) {
    all.push_back(std::move(action));
  }
  if (!has_main && job::passed(at)) {
    const sheet::Step* next = step_after(bench_->state(), step_id_);
    if (next != nullptr && next->id != step_id_) {
      all.push_back({"next", tr("Next"), [this] { go_on(); }, true});
    }
  }
}

/// What the step has to say, or that the whole job is sealed; nothing large: the step's title is said.
widgets::StripText JobPage::own_strip() const {
  const job::JobState& state = bench_->state();
  widgets::StripText text = page_->strip();
  if (text.large.isEmpty() && state.sealed) {
    if (const job::Entry* seal = entry_numbered(state, *state.sealed)) {
      text.mark = widgets::Mark::done;
      text.large = tr("Sealed, %1").arg(time_text(seal->moment));
      text.small = tr("by %1").arg(bench_->initials_of(seal->person));
    }
  }
  return text;
}

void JobPage::show_actions() {
  if (page_ == nullptr) {
    return;
  }
  foot_->set_actions(actions());
  widgets::StripText text = own_strip();
  const bool own = !text.large.isEmpty();
  if (!own) {
    const bool unproven = std::holds_alternative<job::Unproven>(bench_->state().step(step_id_));
    text.large = unproven ? tr("Look again: %1").arg(title_->text()) : title_->text();
    const sheet::Stage* stage = bench_->state().sheets.job->stage_of(step_id_);
    text.small = stage == nullptr ? QString() : qt(stage->title.in(window_language()));
  }
  if (!own) {
    title_->hide();
  }
  strip_->set_text(text);
  text.small += (text.small.isEmpty() ? QString() : QStringLiteral(" · ")) + tr("F2 goes back");
  filling_strip_->set_text(text);
  make_room();
  keep_field_in_sight();
}

/// A scanner types without looking, a person does not.
void JobPage::keep_field_in_sight() {
  QWidget* const field = focusWidget();
  const bool typed_into = qobject_cast<QLineEdit*>(field) != nullptr || qobject_cast<QPlainTextEdit*>(field) != nullptr;
  if (typed_into && middle_->content()->isAncestorOf(field)) {
    middle_->show_child(field);
  }
}

/// Where the page needs the height, what strip and sheet say already gives way, and beside a verdict what was to be
/// done. Later: what has just been shown has no height yet.
void JobPage::make_room() {
  const auto settle = [this] {
    if (page_ == nullptr) {
      return;
    }
    const widgets::StripText strip = own_strip();
    const bool own = !strip.large.isEmpty();
    title_->setVisible(own);
    text_->setVisible(!text_->text().isEmpty());
    title_->setVisible(own && !middle_->overflows());
    if (own && strip.mark != widgets::Mark::none && middle_->overflows()) {
      text_->hide();
    }
    if (page_->says_what_to_do()) {
      title_->hide();
      text_->hide();
    }
  };
  QMetaObject::invokeMethod(this, settle, Qt::QueuedConnection);
}

void JobPage::ask_note() {
  ask_->ask({tr("A note for this step"), tr("Keep the note"), true, [this](const std::string& text) {
               return send(job::Note{step_id_, text});
             }});
}

void JobPage::ask_reason() {
  ask_->ask({tr("Go on against the sheet: why? The reason stands on the record with your name."),
             tr("Go on with this reason"), true, [this](const std::string& text) {
               return send_and_go_on(job::Deviate{step_id_, text});
             }});
}

void JobPage::ask_not_required() {
  ask_->ask(
      {tr("Not required in this job: why?"), tr("Not required for this reason"), true, [this](const std::string& text) {
         return send_and_go_on(job::SayNotRequired{step_id_, text});
       }});
}

void JobPage::ask_parking() {
  if (!may_leave()) {
    return;
  }
  ask_->ask_parking(parts_to_order(bench_->state(), window_language()),
                    [this](const std::string& waits_for, const std::string& due) {
                      if (send(job::Park{waits_for, due})) {
                        ask_->put_away();
                        emit left();
                      }
                    });
}

void JobPage::ask_more() {
  std::vector<AskBox::Pick> picks;
  const bool may_leave_out = !job::passed(bench_->state().step(step_id_));
  for (const FootAction& action : foot_->left_out()) {
    const bool below = action.name == "park" || (may_leave_out && action.name == "reason");
    if (!below) {
      picks.push_back({action.name, action.text, action.act});
    }
  }
  const auto live = bench_->state().live(step_id_);
  if (std::any_of(live.begin(), live.end(), [](const job::Entry* each) { return can_be_taken_back(*each); })) {
    picks.push_back({"take-back", tr("Take an entry of this step back"), [this] { ask_taking_back(); }});
  }
  picks.push_back({"hand-over", tr("Hand the job over"), [this] { ask_handing_over(); }});
  picks.push_back({"parts", tr("Parts to order, to copy"), [this] { show_parts(); }});
  picks.push_back({"hours", tr("Hours per stage"), [this] { show_hours(); }});
  picks.push_back({"park", tr("Park job"), [this] { ask_parking(); }});
  picks.push_back({"keypad", tr("Keypad for gloves (F4)"), [this] { show_keypad(); }});
  picks.push_back({"strip", tr("Strip over the whole window (F2)"), [this] { fill_window_with_strip(); }});
  picks.push_back({"record", tr("The record so far"), [this] { emit record_wanted(bench_->job_id()); }});
  // Last: More opens with the focus on the first one.
  if (may_leave_out) {
    picks.push_back({"reason", tr("Leave this step out, with reason"), [this] { ask_reason(); }});
  }
  ask_->ask_pick(tr("More"), picks);
}

void JobPage::show_parts() {
  QString list;
  for (const QString& line : parts_to_order(bench_->state(), window_language())) {
    list += line + QLatin1Char('\n');
  }
  if (list.isEmpty()) {
    ask_->ask_pick(tr("Every part of this job is fitted."), {});
    return;
  }
  ask_->ask_pick(tr("Still to be fitted, for an order:") + QStringLiteral("\n\n") + list.trimmed(),
                 {{"copy-parts", tr("Copy the list"), [list] { QGuiApplication::clipboard()->setText(list); }}});
}

void JobPage::show_hours() {
  QString text;
  for (const job::StageTime& each : job::stage_hours(bench_->state())) {
    for (const sheet::Stage& stage : bench_->state().sheets.job->stages) {
      if (stage.id == each.stage) {
        text += tr("%1: %2 h %3 min")
                    .arg(qt(stage.title.in(window_language())))
                    .arg(each.minutes / 60)
                    .arg(each.minutes % 60) +
                QLatin1Char('\n');
      }
    }
  }
  ask_->ask_pick(tr("Hours per stage, by the times of the entries. Pauses of more than two hours do not count.") +
                     QStringLiteral("\n\n") + text.trimmed(),
                 {});
}

void JobPage::ask_taking_back() {
  std::vector<AskBox::Pick> picks;
  for (const job::Entry* entry : bench_->state().live(step_id_)) {
    if (!can_be_taken_back(*entry)) {
      continue;
    }
    const std::int64_t seq = entry->seq;
    const QString words =
        tr("Entry %1, %2, %3: %4")
            .arg(seq)
            .arg(bench_->initials_of(entry->person), time_text(entry->moment), answer_words(entry->body));
    picks.push_back({std::to_string(seq), words, [this, seq] {
                       ask_->ask({tr("Take entry %1 back: why? It stays on the record, struck through.").arg(seq),
                                  tr("Take it back"), true, [this, seq](const std::string& text) {
                                    return send(job::Withdraw{seq, text});
                                  }});
                     }});
  }
  ask_->ask_pick(picks.empty() ? tr("Nothing is kept for this step yet.") : tr("Which entry is taken back?"), picks);
}

void JobPage::ask_handing_over() {
  std::vector<AskBox::Pick> picks;
  for (const store::Person& each : bench_->persons()) {
    if (!each.active || each.id == bench_->person().id) {
      continue;
    }
    picks.push_back({each.initials, qt(each.initials + " – " + each.name), [this, each] {
                       ask_->ask({tr("What should %1 know?").arg(qt(each.name)), tr("Hand the job over"), true,
                                  [this, each](const std::string& text) {
                                    const bool kept = send(job::HandOver{each.id, text});
                                    if (kept) {
                                      bench_->set_person(each);
                                    }
                                    return kept;
                                  }});
                     }});
  }
  ask_->ask_pick(tr("Who goes on with this job?"), picks);
}

void JobPage::add_photo() {
  const QString file = surroundings_.pick_photo();
  if (file.isEmpty()) {
    return;
  }
  const auto kept = bench_->store().keep_photo(widgets::plain(file));
  if (!kept) {
    say_refusal(kept.error());
    return;
  }
  const bool sent = send(job::AddPhoto{step_id_, kept->sha256, kept->media_type, kept->bytes, {}});
  static_cast<void>(sent);
}

/// In the place of the drawing: it needs no room while hands are clean.
void JobPage::show_keypad() {
  const bool shown = !keypad_->isHidden();
  keypad_->setVisible(!shown);
  panel_->setVisible(shown && width() >= width_with_drawing);
}

void JobPage::fill_window_with_strip() {
  const bool shown = !filling_strip_->isHidden();
  filling_strip_->setVisible(!shown);
  filling_strip_->raise();
  if (!shown) {
    filling_strip_->setGeometry(rect());
    filling_strip_->setFocus(Qt::OtherFocusReason);
  } else if (page_ != nullptr) {
    put_focus();
  }
}

}  // namespace shimwright::bench
