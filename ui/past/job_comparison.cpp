#include "job_comparison.h"

#include <QGridLayout>
#include <QLabel>
#include <algorithm>
#include <utility>

#include "job_row.h"
#include "life_row.h"
#include "shimwright/record/comparison.h"
#include "shimwright/store/job_record.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/sheet_text.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::past {

using widgets::child_of;

namespace {

QString job_words(const store::JobSummary& job) {
  return JobComparison::tr("Job %1, %2").arg(widgets::qt(job.number), day_of(job.opened_at_ms));
}

QString value_words(const std::optional<record::ComparedValue>& value) {
  if (!value) {
    return JobComparison::tr("not there");
  }
  const QString verdict = verdict_words(value->verdict);
  const QString text = widgets::say(value->text);
  return verdict.isEmpty() ? text : text + QStringLiteral(", ") + verdict;
}

void add_line(QWidget* table, QGridLayout* grid, const record::ComparedRow& row, const job::Sheets& sheets) {
  const int line = grid->rowCount();
  const char* part = row.differs ? "strong" : nullptr;
  if (row.differs) {
    auto* mark = child_of<widgets::MarkView>(table, widgets::Mark::not_equal, 18);
    mark->setAccessibleName(JobComparison::tr("differs"));
    grid->addWidget(mark, line, 0, Qt::AlignTop);
  }
  grid->addWidget(child_of<widgets::Text>(table, widgets::say(row.name, sheets), "soft"), line, 1);
  grid->addWidget(child_of<widgets::Text>(table, value_words(row.first), part), line, 2);
  grid->addWidget(child_of<widgets::Text>(table, value_words(row.second), part), line, 3);
}

}  // namespace

JobComparison::JobComparison(store::Store& store, QWidget* parent) : QWidget(parent), store_(&store) {
  auto* column = widgets::lay<QVBoxLayout>(this, 8);
  auto* heads = widgets::lay_in<widgets::TurningRow>(column, 16);
  add_side(first_, QStringLiteral("first"), heads);
  add_side(second_, QStringLiteral("second"), heads);
  only_ = child_of<widgets::Button>(this, tr("Only what differs"));
  only_->setObjectName(QStringLiteral("button-only-different"));
  column->addWidget(only_, 0, Qt::AlignLeft);
  connect(only_, &QAbstractButton::clicked, this, [this] {
    only_different_ = !only_different_;
    only_->set_action_text(only_different_ ? tr("All readings") : tr("Only what differs"));
    show_rows();
  });
  told_ = child_of<widgets::Text>(this, QString(), "strong");
  told_->setObjectName(QStringLiteral("comparison-result"));
  column->addWidget(told_);
  table_ = child_of<QWidget>(this);
  column->addWidget(table_);
}

void JobComparison::add_side(Side& side, const QString& name, QBoxLayout* row) {
  auto* box = child_of<QWidget>(this);
  auto* column = widgets::lay<QVBoxLayout>(box, 4);
  auto* head = child_of<widgets::Text>(box, QString(), "strong");
  head->setObjectName(QStringLiteral("compared-%1").arg(name));
  column->addWidget(head);
  auto* buttons = widgets::lay_in<QHBoxLayout>(column, 6);
  side.head = head;
  side.earlier = child_of<widgets::Button>(box, tr("Earlier"));
  side.later = child_of<widgets::Button>(box, tr("Later"));
  side.earlier->setObjectName(QStringLiteral("button-earlier-%1").arg(name));
  side.later->setObjectName(QStringLiteral("button-later-%1").arg(name));
  buttons->addWidget(side.earlier);
  buttons->addWidget(side.later);
  buttons->addStretch(1);
  connect(side.earlier, &QAbstractButton::clicked, this, [this, &side] { go(side, 1); });
  connect(side.later, &QAbstractButton::clicked, this, [this, &side] { go(side, -1); });
  row->addWidget(box, 1);
}

void JobComparison::set_jobs(std::vector<store::JobSummary> jobs) {
  jobs_ = std::move(jobs);
  first_.job = 1;
  second_.job = 0;
  read(first_);
  read(second_);
  refresh();
}

void JobComparison::read(Side& side) {
  const std::string& job = jobs_[side.job].id;
  const auto loaded = store_->load(job);
  side.record = loaded ? store::record_of(*store_, job) : tl::make_unexpected(loaded.error());
  side.sheets = loaded ? loaded->sheets : job::Sheets();
}

void JobComparison::go(Side& side, int step) {
  const std::size_t other = (&side == &first_ ? second_ : first_).job;
  auto wanted = static_cast<std::ptrdiff_t>(side.job) + step;
  // No job is compared with itself.
  wanted += wanted == static_cast<std::ptrdiff_t>(other) ? step : 0;
  if (wanted >= 0 && wanted < static_cast<std::ptrdiff_t>(jobs_.size())) {
    side.job = static_cast<std::size_t>(wanted);
    read(side);
    refresh();
  }
}

void JobComparison::refresh() {
  for (const Side* side : {&first_, &second_}) {
    side->head->setText(job_words(jobs_[side->job]));
    side->earlier->setAccessibleDescription(job_words(jobs_[side->job]));
    side->later->setAccessibleDescription(job_words(jobs_[side->job]));
  }
  show_rows();
}

void JobComparison::show_rows() {
  auto* const old = table_;
  auto* fresh = child_of<QFrame>(this);
  widgets::set_part(fresh, "card");
  table_ = fresh;
  widgets::put_in_place_of(*layout(), old, table_);
  old->hide();
  old->deleteLater();
  if (!first_.record || !second_.record) {
    widgets::set_part(told_, "error");
    told_->setText(widgets::say(!first_.record ? first_.record.error() : second_.record.error()));
    return;
  }
  const auto rows = record::compare(*first_.record, *second_.record);
  const auto different = std::count_if(rows.begin(), rows.end(), [](const auto& each) { return each.differs; });
  widgets::set_part(told_, "strong");
  told_->setText(tr("%1 of %2 readings differ").arg(different).arg(rows.size()));
  auto* grid = child_of<QGridLayout>(table_);
  grid->setContentsMargins(14, 10, 14, 10);
  grid->setHorizontalSpacing(14);
  grid->setVerticalSpacing(6);
  grid->setColumnStretch(1, 4);
  grid->setColumnStretch(2, 3);
  grid->setColumnStretch(3, 3);
  for (const record::ComparedRow& each : rows) {
    if (each.differs || !only_different_) {
      add_line(table_, grid, each, each.first ? first_.sheets : second_.sheets);
    }
  }
  table_->show();
}

}  // namespace shimwright::past
