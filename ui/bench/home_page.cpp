#include "shimwright/bench/home_page.h"

#include <QLineEdit>
#include <QShortcut>
#include <QTimer>
#include <algorithm>
#include <utility>

#include "before_start.h"
#include "days.h"
#include "glance.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/stage_bar.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::bench {

namespace {

constexpr std::int64_t most_cards = 50;
constexpr int before_more_ms = 20;  // the first ones are painted by then
/// What the smallest screen shows; a person waits for no more. The others come while nothing else is to be done.
constexpr std::size_t cards_at_once = 4;
constexpr std::size_t cards_in_a_turn = 2;
constexpr int right_column_width = 350;
constexpr int card_head_width = 150;
/// Narrower than that, what to see to stands below the jobs.
constexpr int least_width_side_by_side = 900;
constexpr int least_cards_height = 200;
constexpr int least_heeds_height = 130;

void empty(QVBoxLayout& column) {
  while (auto* const item = column.takeAt(0)) {
    const std::unique_ptr<QLayoutItem> owned(item);
    if (QWidget* const widget = owned->widget()) {
      widget->hide();
      widget->deleteLater();
    }
  }
}

void add_head(QBoxLayout* row, QWidget* card, const Glance& glance) {
  auto* head = widgets::lay_in<QVBoxLayout>(row, 2);
  auto* number = widgets::child_of<widgets::Text>(card, glance.number, "title");
  number->setFixedWidth(card_head_width);
  head->addWidget(number);
  head->addWidget(widgets::child_of<widgets::Text>(card, glance.vehicle, "soft"));
  head->addWidget(widgets::child_of<widgets::Text>(card, glance.unit, "soft"));
  head->addStretch();
}

void add_middle(QBoxLayout* row, QWidget* card, const Glance& glance) {
  auto* middle = widgets::lay_in<QVBoxLayout>(row, 6);
  row->setStretchFactor(middle, 1);
  middle->addStretch();
  middle->addWidget(widgets::child_of<widgets::Text>(card, glance.stage, "large"));
  middle->addWidget(widgets::child_of<widgets::Text>(card, glance.next, glance.bad ? "bad" : nullptr));
  auto* bar = widgets::child_of<widgets::StageBar>(card);
  bar->setFixedHeight(bar->sizeHint().height());
  bar->set_stages(glance.stages);
  bar->setVisible(!glance.stages.empty());
  middle->addWidget(bar);
  middle->addStretch();
}

QWidget* heed_box(QWidget* parent, const Heed& heed) {
  auto* box = widgets::child_of<QFrame>(parent);
  widgets::set_part(box, heed.pressing ? "notice" : "card");
  auto* column = widgets::lay<QVBoxLayout>(box, 2);
  column->setContentsMargins(18, 10, 18, 10);
  column->addWidget(widgets::child_of<widgets::Text>(box, heed.what, "strong"));
  column->addWidget(widgets::child_of<widgets::Text>(box, heed.text));
  return box;
}

}  // namespace

HomePage::HomePage(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(&bench), more_(widgets::child_of<QTimer>(this)) {
  auto* outer = widgets::lay<QVBoxLayout>(this);
  page_ = widgets::child_of<widgets::Scroll>(this);
  outer->addWidget(page_);
  page_->column()->setContentsMargins(28, 20, 28, 16);
  auto* row = widgets::lay_in<widgets::TurningRow>(page_->column(), 28);
  row->set_least_width(least_width_side_by_side);
  build_left(row);
  build_right(row);
  more_->setSingleShot(true);
  more_->setInterval(before_more_ms);
  connect(more_, &QTimer::timeout, this, [this] {
    show_more(cards_in_a_turn);
    if (!more_->isActive()) {
      show_heeds();  // what open jobs may want of the trays is known only now
    }
  });
  // In the shell's stack only the page that is seen answers to its keys.
  auto* keys = widgets::child_of<QShortcut>(this, QKeySequence(QStringLiteral("Ctrl+N")));
  connect(keys, &QShortcut::activated, new_job_, &QPushButton::click);
  show_backup();
}

void HomePage::build_left(QBoxLayout* row) {
  auto* left = widgets::lay_in<QVBoxLayout>(row, 12);
  row->setStretchFactor(left, 1);
  auto* top = widgets::lay_in<QHBoxLayout>(left, 12);
  top->addWidget(widgets::child_of<widgets::Text>(page_->content(), tr("On the bench"), "title"), 1);
  new_job_ = widgets::child_of<widgets::Button>(page_->content(), tr("New job"), widgets::Button::Kind::main);
  new_job_->setObjectName(QStringLiteral("button-new-job"));
  new_job_->set_keys(tr("Ctrl N"));
  connect(new_job_, &QPushButton::clicked, this, &HomePage::new_job);
  top->addWidget(new_job_);
  cards_ = widgets::child_of<widgets::Scroll>(page_->content());
  cards_->setMinimumHeight(least_cards_height);
  left->addWidget(cards_, 1);
  backup_ = widgets::child_of<widgets::Text>(page_->content(), QString(), "soft");
  left->addWidget(backup_);
}

void HomePage::build_right(QBoxLayout* row) {
  auto* right = widgets::child_of<QWidget>(page_->content());
  right->setFixedWidth(right_column_width);
  row->addWidget(right);
  auto* column = widgets::lay<QVBoxLayout>(right, 10);
  find_ = widgets::child_of<widgets::WordField>(right, tr("Find a vehicle"));
  find_->edit()->setObjectName(QStringLiteral("field-find-vehicle"));
  find_->edit()->setPlaceholderText(tr("VIN, plate, job, or scan"));
  connect(find_, &widgets::WordField::entered, this, [this] {
    if (!find_->text().empty()) {
      emit search(find_->text());
    }
  });
  column->addWidget(find_);
  column->addSpacing(14);
  column->addWidget(widgets::child_of<widgets::Text>(right, tr("Before you start"), "strong"));
  heeds_ = widgets::child_of<widgets::Scroll>(right);
  heeds_->setMinimumHeight(least_heeds_height);
  column->addWidget(heeds_, 1);
}

void HomePage::refresh() {
  const std::string focused = job_in_focus();
  new_job_->setEnabled(!bench_->looks_only());
  auto jobs = bench_->store().open_jobs(most_cards);
  empty(*cards_->column());
  take_up_buttons_.clear();
  first_job_.clear();
  cards_->column()->addStretch();
  jobs_.clear();
  urgencies_.clear();
  shown_ = 0;
  wanted_focus_ = focused;
  if (jobs) {
    jobs_ = *std::move(jobs);
    std::stable_partition(jobs_.begin(), jobs_.end(),
                          [](const auto& each) { return each.standing != store::JobStanding::parked; });
    forget_others();
    show_more(cards_at_once);
  } else {
    more_->stop();
    add_to_cards(widgets::child_of<widgets::Text>(cards_->content(), widgets::say(jobs.error()), "error"));
  }
  show_heeds();
  show_backup();
}

void HomePage::forget_others() {
  std::map<std::string, Known> kept;
  for (const store::JobSummary& each : jobs_) {
    const auto known = known_.find(each.id);
    if (known != known_.end()) {
      kept.insert(known_.extract(known));
    }
  }
  known_ = std::move(kept);
}

const Result<job::JobState>& HomePage::state_of(const store::JobSummary& summary) {
  const auto known = known_.find(summary.id);
  if (known != known_.end() && known->second.seq == summary.last_seq && known->second.state) {
    return known->second.state;
  }
  auto loaded = store::JobInHand::load(bench_->store(), summary.id);
  auto state =
      loaded ? Result<job::JobState>(loaded->state()) : Result<job::JobState>(tl::make_unexpected(loaded.error()));
  return known_.insert_or_assign(summary.id, Known{summary.last_seq, std::move(state)}).first->second.state;
}

void HomePage::add_to_cards(QWidget* widget) {
  cards_->column()->insertWidget(cards_->column()->count() - 1, widget);
}

void HomePage::place_card(const Glance& glance) {
  const std::size_t place = place_among(urgencies_, glance.urgency);
  urgencies_.insert(urgencies_.begin() + static_cast<std::ptrdiff_t>(place), glance.urgency);
  cards_->column()->insertWidget(static_cast<int>(place), card_of(glance));
  first_job_ = place == 0 ? glance.job : first_job_;
}

void HomePage::show_more(std::size_t count) {
  const job::Moment now = bench_->now();
  std::vector<Glance> glances;
  for (const std::size_t end = std::min(jobs_.size(), shown_ + count); shown_ < end; ++shown_) {
    const store::JobSummary& summary = jobs_[shown_];
    const Result<job::JobState>& state = state_of(summary);
    glances.push_back(state ? glance_at(summary, *state, now) : glance_without_state(summary, state.error()));
  }
  // In the order they are to stand in, which is that of Tab too.
  std::stable_sort(glances.begin(), glances.end(),
                   [](const Glance& one, const Glance& other) { return one.urgency < other.urgency; });
  for (const Glance& each : glances) {
    place_card(each);
    if (each.job == wanted_focus_) {
      put_focus(std::exchange(wanted_focus_, {}));
    }
  }
  if (shown_ < jobs_.size()) {
    more_->start();
    return;
  }
  more_->stop();
  show_line_below();
}

void HomePage::show_line_below() {
  QString line;
  if (jobs_.empty()) {
    line = tr("No job is open. Begin one with New job, or find a vehicle that was here before.");
  } else if (const auto count = bench_->store().open_job_count(); count && *count > most_cards) {
    line = tr("%1 more jobs are open: find them under Past jobs.").arg(*count - most_cards);
  }
  if (!line.isEmpty()) {
    add_to_cards(widgets::child_of<widgets::Text>(cards_->content(), line, "soft"));
  }
}

QWidget* HomePage::card_of(const Glance& glance) {
  auto* card = widgets::child_of<QFrame>(cards_->content());
  widgets::set_part(card, "card");
  auto* row = widgets::lay<QHBoxLayout>(card, 20);
  row->setContentsMargins(20, 12, 20, 12);
  add_head(row, card, glance);
  add_middle(row, card, glance);
  auto* button = widgets::child_of<widgets::Button>(card, bench_->looks_only() ? tr("Look at it") : tr("Take up"));
  button->setObjectName(QStringLiteral("button-take-up-%1").arg(glance.number));
  button->setAccessibleDescription(tr("job %1").arg(glance.number));
  button->setMinimumHeight(56);
  connect(button, &QPushButton::clicked, this, [this, job = glance.job] { emit take_up(job); });
  row->addWidget(button);
  take_up_buttons_[glance.job] = button;
  return card;
}

std::vector<Heed> HomePage::heeds() const {
  std::vector<Heed> all;
  if (const auto instruments = bench_->store().registers().instruments()) {
    all = calibrations(*instruments, day_of(bench_->now()));
  }
  std::map<std::string, int> wishes;
  for (const auto& each : known_) {
    const auto& state = each.second.state;
    if (state) {
      add_wishes(wishes, *state);
    }
  }
  if (const auto trays = bench_->store().registers().trays()) {
    const std::vector<Heed> low = low_trays(*trays, wishes);
    all.insert(all.end(), low.begin(), low.end());
  }
  if (const auto backup = backup_heed(last_backup_, bench_->now())) {
    all.push_back(*backup);
  }
  return all;
}

void HomePage::show_heeds() {
  empty(*heeds_->column());
  const std::vector<Heed> all = heeds();
  for (const Heed& each : all) {
    heeds_->column()->addWidget(heed_box(heeds_->content(), each));
  }
  if (all.empty()) {
    heeds_->column()->addWidget(widgets::child_of<widgets::Text>(
        heeds_->content(), tr("Nothing: instruments, trays and backup are as they should be."), "soft"));
  }
  heeds_->column()->addStretch();
}

void HomePage::set_last_backup(const std::optional<job::Moment>& moment) {
  last_backup_ = moment;
  show_heeds();
  show_backup();
}

void HomePage::show_backup() {
  // That none is known is said on the right.
  QString text = tr("Every entry is on disk before it shows as saved.");
  if (last_backup_) {
    text += QLatin1Char(' ') + tr("Last verified backup: %1.").arg(moment_text(*last_backup_, bench_->now()));
  }
  backup_->setText(text);
}

void HomePage::take_focus() {
  put_focus(first_job_);
  if (first_job_.empty()) {
    new_job_->setFocus(Qt::OtherFocusReason);
  }
}

std::string HomePage::job_in_focus() const {
  const auto found = std::find_if(take_up_buttons_.begin(), take_up_buttons_.end(),
                                  [](const auto& each) { return each.second->hasFocus(); });
  return found == take_up_buttons_.end() ? std::string() : found->first;
}

void HomePage::put_focus(const std::string& job_id) {
  const auto found = take_up_buttons_.find(job_id);
  if (found != take_up_buttons_.end()) {
    found->second->setFocus(Qt::OtherFocusReason);
  }
}

}  // namespace shimwright::bench
