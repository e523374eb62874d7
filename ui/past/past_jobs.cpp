#include "shimwright/past/past_jobs.h"

#include <QFileDialog>
#include <QKeyEvent>
#include <QLineEdit>
#include <algorithm>
#include <array>

#include "code_card.h"
#include "job_row.h"
#include "shimwright/store/vehicle_history.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/keys.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::past {

namespace {

constexpr std::int64_t most_latest = 20;
constexpr std::int64_t most_found = 50;
constexpr std::int64_t first_found = 12;
constexpr std::int64_t more_found = 200;
constexpr qsizetype shortest_sought = 2;
constexpr int room_for_whole_number = 700;

}  // namespace

ChooseSignedFile usual_signed_file() {
  return [] {
    return QFileDialog::getOpenFileName(nullptr, PastJobs::tr("Choose a signed record"), QString(),
                                        PastJobs::tr("Signed records (*.signed.json)"));
  };
}

PastJobs::PastJobs(store::Store& store, ChooseSignedFile choose, QWidget* parent)
    : QWidget(parent),
      store_(&store),
      choose_(std::move(choose)),
      field_(widgets::child_of<QLineEdit>(this)),
      above_rows_(widgets::child_of<widgets::Text>(this, QString(), "strong")),
      scroll_(widgets::child_of<widgets::Scroll>(this)),
      card_(widgets::child_of<CodeCard>(scroll_->content())),
      more_(widgets::child_of<widgets::Button>(scroll_->content(), tr("Show more"))) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->setContentsMargins(28, 16, 28, 12);
  auto* top = widgets::lay_in<QHBoxLayout>(column, 16);
  field_->setObjectName(QStringLiteral("field-search"));
  field_->setAccessibleName(tr("Search past jobs"));
  field_->setMinimumHeight(58);
  field_->setMaximumWidth(620);
  top->addWidget(field_, 3);
  auto* check = widgets::child_of<widgets::Button>(this, tr("Check a signed file"));
  check->setObjectName(QStringLiteral("button-check-file"));
  top->addWidget(check);
  top->addStretch(1);
  connect(check, &QAbstractButton::clicked, this, &PastJobs::check_file);
  column->addWidget(widgets::child_of<widgets::Text>(
      this,
      tr("End or any part of a VIN, plate, job number, customer reference or serial; or scan the code of a record."),
      "soft"));
  above_rows_->setObjectName(QStringLiteral("above-results"));
  column->addWidget(above_rows_);
  column->addWidget(scroll_, 1);
  scroll_->column()->setSpacing(8);
  scroll_->column()->setContentsMargins(0, 0, 8, 8);
  scroll_->column()->addWidget(card_);
  more_->setObjectName(QStringLiteral("button-more"));
  more_->hide();
  connect(more_, &QAbstractButton::clicked, this, &PastJobs::show_more);
  scroll_->column()->addWidget(more_, 0, Qt::AlignLeft);
  scroll_->column()->addStretch(1);
  setFocusProxy(field_);
  field_->installEventFilter(this);
  connect(field_, &QLineEdit::textChanged, this, &PastJobs::refresh);
  refresh();
}

void PastJobs::search(const QString& text) {
  field_->setText(text);
  refresh();
  field_->setFocus();
}

void PastJobs::show_jobs(const QString& heading, std::vector<std::string> jobs) {
  field_->clear();
  asked_heading_ = heading;
  asked_ = std::move(jobs);
  refresh();
  field_->setFocus();
}

void PastJobs::show_asked(const std::vector<std::string>& asked) {
  std::vector<std::string> first = asked;
  first.resize(std::min(first.size(), static_cast<std::size_t>(most_found)));
  auto jobs = store::jobs_named(*store_, first);
  if (!jobs) {
    above_rows_->setText(widgets::say(jobs.error()));
    return;
  }
  const auto count = static_cast<qsizetype>(asked.size());
  above_rows_->setText(count > most_found
                           ? tr("%1: the first %2 of %3 jobs").arg(asked_heading_).arg(most_found).arg(count)
                           : tr("%1: %2").arg(asked_heading_).arg(count));
  for (const store::JobSummary& each : *jobs) {
    add_row(each, std::nullopt);
  }
  align_buttons();
}

void PastJobs::refresh() {
  clear_rows();
  card_->hide();
  more_->hide();
  const QString text = field_->text().trimmed();
  if (!text.isEmpty()) {
    asked_.reset();
  }
  if (const auto& asked = asked_; asked) {
    show_asked(*asked);
  } else if (store::looks_like_code(widgets::plain(text))) {
    show_code(field_->text());
  } else if (text.size() < shortest_sought) {
    show_latest();
  } else {
    show_found(text);
  }
  scroll_->show_top();
}

void PastJobs::clear_rows() {
  const bool had_focus = std::any_of(rows_.begin(), rows_.end(), [](const Row& each) {
    return each.row->hasFocus() || each.beside->hasFocus() || each.vehicle->hasFocus();
  });
  for (const Row& each : rows_) {
    QWidget* const line = each.row->parentWidget();
    line->hide();
    line->deleteLater();
  }
  rows_.clear();
  if (had_focus) {
    field_->setFocus();
  }
}

void PastJobs::show_latest() {
  auto jobs = store_->jobs(most_latest);
  if (!jobs) {
    above_rows_->setText(widgets::say(jobs.error()));
    return;
  }
  above_rows_->setText(jobs->empty() ? tr("There is no job in this workshop yet.") : tr("The latest jobs"));
  for (const store::JobSummary& each : *jobs) {
    add_row(each, std::nullopt);
  }
  align_buttons();
}

void PastJobs::show_found(const QString& text) {
  const bool is_same = text == sought_;
  sought_ = text;
  most_ = is_same ? most_ : first_found;
  auto found = store_->search(widgets::plain(text), most_);
  if (!found) {
    above_rows_->setText(widgets::say(found.error()));
    return;
  }
  const auto count = static_cast<std::int64_t>(found->size());
  if (count == 0) {
    above_rows_->setText(tr("No job has this. Try fewer characters, or the end of the VIN."));
  } else if (found->more) {
    above_rows_->setText(tr("The first %1 jobs that have it; type more to narrow them down").arg(count));
  } else {
    const bool any_exact =
        std::any_of(found->jobs.begin(), found->jobs.end(), [](const store::Found& each) { return each.exact; });
    above_rows_->setText(!any_exact   ? tr("No job has exactly this. Jobs that come close: %1").arg(count)
                         : count == 1 ? tr("1 job has it")
                                      : tr("%1 jobs have it").arg(count));
  }
  for (const store::Found& each : found->jobs) {
    add_row(each.job, Finding{each.place, widgets::qt(each.term), each.exact, text, each.taken_back});
  }
  align_buttons();
  more_->setVisible(found->more && most_ < more_found);
}

/// The row that was next below has the focus then.
void PastJobs::show_more() {
  const std::size_t before = rows_.size();
  most_ = more_found;
  refresh();
  if (before < rows_.size()) {
    focus_on(rows_[before].row);
  }
}

void PastJobs::show_code(const QString& text) {
  show_checked(store::read_scanned_code(*store_, widgets::plain(text)));
}

void PastJobs::check_file() {
  const QString path = choose_();
  if (path.isEmpty()) {
    return;
  }
  field_->clear();
  clear_rows();
  show_checked(store::check_signed_file(*store_, widgets::plain(path)));
  scroll_->show_top();
}

void PastJobs::show_checked(const Result<store::ScannedCode>& checked) {
  if (!checked) {
    above_rows_->setText(tr("This does not hold:"));
    card_->show_fault(checked.error());
    return;
  }
  above_rows_->setText(tr("What was signed"));
  card_->show_code(*checked);
  if (const std::optional<std::string>& job = checked->job; job) {
    const auto numbered = store_->jobs_numbered(checked->values.number);
    for (const store::JobSummary& each : numbered ? *numbered : std::vector<store::JobSummary>()) {
      if (each.id == *job) {
        add_row(each, std::nullopt);
      }
    }
    align_buttons();
  }
}

void PastJobs::add_row(const store::JobSummary& job, const std::optional<Finding>& finding) {
  auto* line = widgets::child_of<QWidget>(scroll_->content());
  auto* layout = widgets::lay<widgets::TurningRow>(line, 8);
  layout->set_least_width(room_for_whole_number);
  auto* row = widgets::child_of<JobRow>(line, job, finding);
  layout->addWidget(row, 1);
  const std::string& id = job.id;
  const QString number = widgets::qt(job.number);
  connect(row, &QAbstractButton::clicked, this, [this, id] { emit open_record(id); });
  const bool closed = job.standing == store::JobStanding::closed;
  auto* beside = widgets::child_of<widgets::Button>(line, closed ? tr("New job for it") : tr("Take up"));
  beside->setObjectName(
      (closed ? QStringLiteral("button-new-job-%1") : QStringLiteral("button-take-up-%1")).arg(number));
  beside->setAccessibleDescription(tr("Job %1").arg(number));
  if (closed) {
    connect(beside, &QAbstractButton::clicked, this, [this, key = job.vehicle_key] { emit new_job_for(key); });
  } else {
    connect(beside, &QAbstractButton::clicked, this, [this, id] { emit take_up(id); });
  }
  auto* vehicle = widgets::child_of<widgets::Button>(line, tr("Vehicle"));
  vehicle->setObjectName(QStringLiteral("button-vehicle-%1").arg(number));
  vehicle->setAccessibleDescription(widgets::qt(job.vehicle_key));
  connect(vehicle, &QAbstractButton::clicked, this, [this, key = job.vehicle_key] { emit open_vehicle(key); });
  auto* buttons = widgets::lay_in<QHBoxLayout>(layout, 8);
  buttons->addStretch(1);
  buttons->addWidget(beside);
  buttons->addWidget(vehicle);
  for (QWidget* each : {static_cast<QWidget*>(row), static_cast<QWidget*>(vehicle), static_cast<QWidget*>(beside)}) {
    each->installEventFilter(this);
  }
  scroll_->column()->insertWidget(scroll_->column()->count() - 2, line);
  line->show();
  rows_.push_back({row, vehicle, beside});
}

/// All as wide as the widest, so that the columns of the rows stand below each other.
void PastJobs::align_buttons() {
  int width = 0;
  for (const auto& each : rows_) {
    width = std::max(width, each.beside->sizeHint().width());
  }
  for (const auto& each : rows_) {
    each.beside->setFixedWidth(width);
  }
}

bool PastJobs::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (widgets::is_plain(*key) &&
        (watched == field_ ? move_from_field(key->key()) : move_from_row(watched, key->key()))) {
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

bool PastJobs::move_from_field(int key) {
  if (key == Qt::Key_Down && !rows_.empty()) {
    focus_on(rows_.front().row);
    return true;
  }
  if (key == Qt::Key_Escape && asked_) {
    asked_.reset();
    refresh();
    return true;
  }
  // A scanner ends in Enter: what it scanned stays to be compared, and its job is one more Enter away.
  if ((key == Qt::Key_Return || key == Qt::Key_Enter) && card_->isVisible()) {
    if (!rows_.empty()) {
      focus_on(rows_.front().row);
    }
    return true;
  }
  // Enter with one job found opens it; with more, a person chooses.
  if ((key == Qt::Key_Return || key == Qt::Key_Enter) && rows_.size() == 1 && !field_->text().trimmed().isEmpty()) {
    rows_.front().row->click();
    return true;
  }
  return false;
}

bool PastJobs::move_from_row(QObject* from, int key) {
  const auto at = std::find_if(rows_.begin(), rows_.end(), [from](const Row& each) {
    return each.row == from || each.vehicle == from || each.beside == from;
  });
  if (at == rows_.end()) {
    return false;
  }
  const auto parts_of = [](const Row& row) { return std::array<QWidget*, 3>{row.row, row.beside, row.vehicle}; };
  const auto parts = parts_of(*at);
  const auto place = static_cast<std::size_t>(std::find(parts.begin(), parts.end(), from) - parts.begin());
  switch (key) {
    case Qt::Key_Up:
      focus_on(at == rows_.begin() ? field_ : parts_of(*std::prev(at)).at(place));
      return true;
    case Qt::Key_Down:
      focus_on(std::next(at) == rows_.end() ? parts.at(place) : parts_of(*std::next(at)).at(place));
      return true;
    case Qt::Key_Right:
      focus_on(parts.at(std::min(place + 1, parts.size() - 1)));
      return true;
    case Qt::Key_Left:
      focus_on(parts.at(place == 0 ? 0 : place - 1));
      return true;
    case Qt::Key_Escape:
      focus_on(field_);
      return true;
    default:
      return false;
  }
}

void PastJobs::focus_on(QWidget* widget) {
  widget->setFocus(Qt::TabFocusReason);
  if (widget != field_) {
    scroll_->show_child(widget->parentWidget());
  }
}

}  // namespace shimwright::past
