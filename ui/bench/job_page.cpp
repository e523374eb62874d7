#include "shimwright/bench/job_page.h"

#include <QResizeEvent>
#include <QShortcut>
#include <algorithm>
#include <utility>

#include "ask_box.h"
#include "foot_bar.h"
#include "job_words.h"
#include "pack_panel.h"
#include "photo_page.h"
#include "question_box.h"
#include "sheet_list.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/keypad.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/sheet_text.h"
#include "shimwright/widgets/style.h"
#include "stand_box.h"
#include "wedge.h"

namespace shimwright::bench {

using widgets::child_of;
using widgets::qt;
using widgets::Text;

namespace {

/// Narrower than this the sheet gives way, after the drawing.
constexpr int width_with_sheet = 840;

}  // namespace

JobPage::JobPage(Workbench& bench, Surroundings surroundings, QWidget* parent)
    : QWidget(parent), bench_(&bench), surroundings_(std::move(surroundings)) {
  auto* column = widgets::lay<QVBoxLayout>(this);
  auto* row = widgets::lay_in<QHBoxLayout>(column);
  sheet_ = child_of<SheetList>(this);
  row->addWidget(sheet_);
  build_middle(row);
  panel_ = child_of<PackPanel>(this);
  row->addWidget(panel_);
  keypad_ = child_of<QFrame>(this);
  widgets::set_part(keypad_, "bar-right");
  keypad_->setMinimumWidth(panel_->minimumWidth());
  auto* keys = widgets::lay<QVBoxLayout>(keypad_);
  keys->addStretch(1);
  keys->addWidget(child_of<widgets::Keypad>(keypad_));
  row->addWidget(keypad_);
  keypad_->hide();
  foot_ = child_of<FootBar>(this);
  column->addWidget(foot_);
  filling_strip_ = child_of<widgets::Strip>(this);
  filling_strip_->set_filling(true);
  filling_strip_->setFocusPolicy(Qt::StrongFocus);
  filling_strip_->hide();
  // Until the width is known: shown at once they would pull a small window open.
  sheet_->hide();
  panel_->hide();
  connect_parts();
  add_keys();
}

JobPage::~JobPage() = default;

void JobPage::build_middle(QHBoxLayout* row) {
  auto* middle = widgets::lay_in<QVBoxLayout>(row);
  row->setStretch(row->count() - 1, 1);
  strip_ = child_of<widgets::Strip>(this);
  middle->addWidget(strip_);
  middle_ = child_of<widgets::Scroll>(this);
  middle->addWidget(middle_, 1);
  QWidget* content = middle_->content();
  QVBoxLayout* column = middle_->column();
  column->setContentsMargins(24, 12, 24, 12);
  banner_ = child_of<StandBox>(content);
  column->addWidget(banner_);
  ask_ = child_of<AskBox>(content);
  column->addWidget(ask_);
  refusal_ = child_of<Text>(content, QString(), "error");
  refusal_->setObjectName(QStringLiteral("refusal"));
  column->addWidget(refusal_);
  questions_ = child_of<QuestionBox>(content);
  column->addWidget(questions_);
  title_ = child_of<Text>(content, QString(), "heading");
  column->addWidget(title_);
  text_ = child_of<Text>(content, QString());
  column->addWidget(text_);
  caution_place_ = child_of<QWidget>(content);
  cautions_ = widgets::lay<QVBoxLayout>(caution_place_, 8);
  column->addWidget(caution_place_);
  page_place_ = widgets::lay_in<QVBoxLayout>(column);
  column->addStretch(1);
}

void JobPage::connect_parts() {
  connect(sheet_, &SheetList::step_wanted, this, &JobPage::show_step);
  connect(sheet_, &SheetList::stage_wanted, this, [this](const std::string& stage) {
    if (const sheet::Step* entrance = entrance_of(bench_->state(), stage)) {
      show_step(entrance->id);
    }
  });
  connect(bench_, &Workbench::changed, this, [this] {
    if (isVisible() && page_ != nullptr) {
      returning_ = false;
      emit accepted();
      refresh();
    }
  });
  connect(questions_, &QuestionBox::confirmed, this, [this](const std::string& question) {
    if (send(job::Confirm{step_id_, question, {}}) && job::passed(bench_->state().step(step_id_))) {
      go_on();
    }
  });
  connect(ask_, &AskBox::left, this, [this] {
    if (page_ != nullptr) {
      put_focus();
    }
  });
  connect(ask_, &AskBox::asking_changed, this, &JobPage::show_actions);
  connect(banner_, &StandBox::pressed, this, &JobPage::take_up_here);
  auto* wedge = child_of<Wedge>(static_cast<QWidget*>(this), surroundings_.after);
  connect(wedge, &Wedge::burst, this, [this](const std::string& text) {
    if (page_ != nullptr && !ask_->asking() && !page_->take_burst(text)) {
      say_refusal(
          {"not_wanted", "", {SHIMWRIGHT_TEXT("bench", "“{0}” came in, but this step asks for no value."), {text}}});
    }
  });
  connect(wedge, &Wedge::digit, this, [this](int digit) {
    if (page_ != nullptr && !ask_->asking()) {
      page_->take_digit(digit);
    }
  });
}

void JobPage::take_up_here() {
  if (bench_->has_job() && bench_->state().parked && !send(job::TakeUp{})) {
    return;
  }
  show_job();
  returning_ = false;
  show_banner();
  put_focus();
}

void JobPage::add_keys() {
  const auto on = [this](const QKeySequence& keys, auto act) {
    auto* shortcut = child_of<QShortcut>(this, keys);
    shortcut->setContext(Qt::WidgetWithChildrenShortcut);
    connect(shortcut, &QShortcut::activated, this, act);
  };
  on(QKeySequence(Qt::CTRL | Qt::Key_Return), [this] { press_main(); });
  on(QKeySequence(Qt::CTRL | Qt::Key_Enter), [this] { press_main(); });
  on(QKeySequence(Qt::Key_F2), [this] { fill_window_with_strip(); });
  on(QKeySequence(Qt::Key_F4), [this] { show_keypad(); });
  on(QKeySequence(Qt::ALT | Qt::Key_Left), [this] {
    if (const sheet::Step* before = step_before(bench_->state(), step_id_)) {
      show_step(before->id);
    }
  });
  on(QKeySequence(Qt::ALT | Qt::Key_Right), [this] { go_on(); });
}

/// The main key answers what is asked, before anything below.
void JobPage::press_main() {
  if (ask_->asking()) {
    ask_->press_yes();
  } else {
    foot_->press_main();
  }
}

void JobPage::show_job() {
  returning_ = true;
  const sheet::Step* next = bench_->state().next_step();
  const auto steps = asked_steps(bench_->state());
  open_page(next != nullptr ? next->id : steps.back()->id);
  emit heading_changed();
}

void JobPage::show_step(const std::string& step_id) {
  if (step_id == step_id_ || !may_leave()) {
    return;
  }
  returning_ = false;
  open_page(step_id);
}

bool JobPage::may_leave() {
  return page_ == nullptr || !page_->has_unsent() || page_->commit();
}

const sheet::Step* JobPage::step() const {
  return bench_->has_job() ? bench_->state().sheets.job->find(step_id_) : nullptr;
}

void JobPage::open_page(const std::string& step_id) {
  if (page_ != nullptr) {
    page_->hide();
    page_->deleteLater();
    page_ = nullptr;
  }
  ask_->put_away();
  step_id_ = step_id;
  const sheet::Step* here = step();
  if (here == nullptr) {
    return;
  }
  page_ = make_step_page(*bench_, *here, middle_->content());
  if (auto* photos = qobject_cast<PhotoPage*>(page_)) {
    photos->set_file_picker(surroundings_.pick_photo);
    photos->set_camera_folder(surroundings_.camera_folder ? surroundings_.camera_folder() : QString());
  }
  page_place_->addWidget(page_);
  // A page that can use more height gets it; the others keep to the top.
  QVBoxLayout* column = middle_->column();
  const bool grows = page_->sizePolicy().verticalPolicy() == QSizePolicy::Expanding;
  column->setStretchFactor(page_place_, grows ? 1 : 0);
  column->setStretch(column->count() - 1, grows ? 0 : 1);
  connect_page();
  show_head(here);
  refusal_->hide();
  refresh();
  page_->show();
  make_room();
  middle_->show_top();
  put_focus();
  if (cautions_->count() == 0) {  // a caution is seen before the first key; with that the field comes in sight
    keep_field_in_sight();
  }
}

/// Where a person goes on, and never on what a stray Enter would keep.
void JobPage::put_focus() {
  if (bench_->state().parked) {
    banner_->setFocus(Qt::OtherFocusReason);
  } else if (bench_->state().closed) {
    foot_->focus_main();
  } else {
    page_->take_focus();
  }
}

void JobPage::connect_page() {
  connect(page_, &StepPage::look_changed, this, &JobPage::show_actions);
  connect(page_, &StepPage::refused, this, &JobPage::say_refusal);
  connect(page_, &StepPage::asks, this, [this](const Ask& ask) { ask_->ask(ask); });
  connect(page_, &StepPage::leaves, this, &JobPage::go_on);
}

void JobPage::show_head(const sheet::Step* here) {
  const std::string language = window_language();
  title_->setText(qt(here->title.in(language)));
  text_->setText(qt(here->text.in(language)));
  text_->setVisible(!text_->text().isEmpty());
  while (cautions_->count() > 0) {
    const std::unique_ptr<QLayoutItem> item(cautions_->takeAt(0));
    item->widget()->hide();
    item->widget()->deleteLater();
  }
  for (const sheet::Caution& caution : here->cautions) {
    const QString words = qt(caution.hazard.in(language)) + QStringLiteral(" ") + qt(caution.precaution.in(language));
    cautions_->addWidget(child_of<widgets::CautionBox>(caution_place_, tr("Caution"), words));
  }
  caution_place_->setVisible(!here->cautions.empty());
}

void JobPage::refresh() {
  const job::JobState& state = bench_->state();
  refusal_->hide();
  sheet_->show_state(state, step_id_, window_language());
  panel_->show_state(state, bench_->context(), step());
  questions_->show_state(state.step(step_id_));
  page_->refresh();
  show_banner();
  show_actions();
}

void JobPage::show_banner() {
  const job::JobState& state = bench_->state();
  const bool parked = state.parked.has_value();
  const bool just_sealed = !state.entries.empty() && std::holds_alternative<job::Sealed>(state.entries.back().body);
  banner_->setVisible((returning_ && state.entries.size() > 1 && !just_sealed) || parked);  // the strip says sealed
  if (banner_->isHidden()) {
    return;
  }
  const std::string language = window_language();
  const job::Entry& last = state.entries.back();
  const bool told_above = std::holds_alternative<job::Parked>(last.body);
  QString text = tr("Last: %1 · %2 · %3")
                     .arg(told_above ? tr("parked") : entry_words(state, last, language),
                          bench_->initials_of(last.person), time_text(last.moment));
  if (const sheet::Step* next = state.next_step()) {
    text += QStringLiteral("\n") + tr("Next: %1").arg(qt(next->title.in(language)));
  }
  // Which ones they are the sheet beside it shows.
  const auto steps = asked_steps(state);
  const auto unproven = std::count_if(steps.begin(), steps.end(), [&](const sheet::Step* each) {
    return std::holds_alternative<job::Unproven>(state.step(each->id));
  });
  if (unproven == 1) {
    text += QStringLiteral("\n") + tr("One step may have moved while the job lay and is asked again.");
  } else if (unproven > 1) {
    text += QStringLiteral("\n") + tr("%1 steps may have moved while the job lay and are asked again.").arg(unproven);
  }
  banner_->show_words(parked ? tr("Parked, waiting for %1").arg(qt(state.parked->waits_for)) : QString(), text);
  if (state.closed) {
    banner_->hide_button();
    return;
  }
  banner_->show_button(parked ? QStringLiteral("button-take-up") : QStringLiteral("button-banner"),
                       parked ? tr("Take up") : tr("Go on"), parked);
}

void JobPage::go_on() {
  if (!may_leave()) {
    return;
  }
  const sheet::Step* next = step_after(bench_->state(), step_id_);
  returning_ = false;
  if (next != nullptr && next->id != step_id_) {
    open_page(next->id);
  } else {
    refresh();
    foot_->focus_main();
  }
}

void JobPage::say_refusal(const Error& error) {
  refusal_->setText(widgets::say(error, bench_->state().sheets));
  refusal_->show();
  middle_->show_child(refusal_);
}

bool JobPage::send(const job::Command& command) {
  const auto entries = bench_->send(command);
  if (!entries) {
    say_refusal(entries.error());
  }
  return entries.has_value();
}

bool JobPage::send_and_go_on(const job::Command& command) {
  const bool kept = send(command);
  if (kept) {
    go_on();
  }
  return kept;
}

void JobPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  panel_->setVisible(width() >= width_with_drawing && keypad_->isHidden());
  sheet_->setVisible(width() >= width_with_sheet);
  filling_strip_->setGeometry(rect());
  make_room();
}

}  // namespace shimwright::bench
