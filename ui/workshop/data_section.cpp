#include "data_section.h"

#include <QDateTime>
#include <QDir>
#include <QLocale>
#include <QProgressBar>
#include <utility>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

using widgets::child_of;

DataSection::DataSection(store::Store& store, WorkshopWays ways, QWidget* parent)
    : QWidget(parent), store_(&store), ways_(std::move(ways)), work_(child_of<BackupWork>(this)) {
  build();
  connect(begin_, &QAbstractButton::clicked, this, &DataSection::begin_backup);
  connect(stop_, &QAbstractButton::clicked, this, [this] {
    stop_->setEnabled(false);
    say_outcome(tr("Stopping at the next step."), true);
    work_->stop();
  });
  connect(work_, &BackupWork::came_to, this, &DataSection::show_progress);
  connect(work_, &BackupWork::made, this, &DataSection::show_made);
  connect(work_, &BackupWork::failed, this, [this](const Error& error) {
    show_run(false);
    say_outcome(widgets::say(error), false);
  });
  refresh();
}

void DataSection::build() {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(child_of<widgets::Text>(this, tr("Data and backup"), "heading"));
  auto* where = child_of<widgets::Box>(this, tr("The store"), QString(), "card");
  place_ = child_of<widgets::Text>(where, QString());
  place_->setObjectName(QStringLiteral("store-place"));
  place_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  where->body()->addWidget(place_);
  jobs_ = child_of<widgets::Text>(where, QString());
  jobs_->setObjectName(QStringLiteral("store-jobs"));
  where->body()->addWidget(jobs_);
  column->addWidget(where);
  auto* backup = child_of<widgets::Box>(this, tr("Backup"), QString(), "card");
  last_ = child_of<widgets::Text>(backup, tr("No backup was made from here yet."));
  last_->setObjectName(QStringLiteral("last-backup"));
  backup->body()->addWidget(last_);
  backup->body()->addWidget(child_of<widgets::Text>(
      backup, tr("Keep backups on another disk. Jobs go on while one is made; it is checked before it takes its name."),
      "soft"));
  auto* row = widgets::lay_in<QHBoxLayout>(backup->body(), 12);
  begin_ = child_of<widgets::Button>(backup, tr("Back up now"), widgets::Button::Kind::main);
  begin_->setObjectName(QStringLiteral("button-back-up"));
  row->addWidget(begin_);
  progress_ = child_of<QProgressBar>(backup);
  progress_->setAccessibleName(tr("Progress of the backup"));
  row->addWidget(progress_, 1);
  stop_ = child_of<widgets::Button>(backup, tr("Stop"));
  stop_->setObjectName(QStringLiteral("button-stop-backup"));
  row->addWidget(stop_);
  row->addStretch(0);
  outcome_ = child_of<widgets::Text>(backup, QString());
  outcome_->setObjectName(QStringLiteral("backup-result"));
  backup->body()->addWidget(outcome_);
  column->addWidget(backup);
  column->addStretch(1);
  show_run(false);
}

void DataSection::refresh() {
  place_->setText(QDir::toNativeSeparators(widgets::qt(store_->path())));
  const auto count = store_->job_count();
  jobs_->setText(count ? (*count == 1 ? tr("1 job") : tr("%1 jobs").arg(*count)) : widgets::say(count.error()));
}

void DataSection::set_last_backup(std::int64_t at_ms, const QString& file) {
  const QString when = QLocale().toString(QDateTime::fromMSecsSinceEpoch(at_ms), tr("d MMM yyyy, hh:mm"));
  last_->setText(tr("Last backup: %1, %2").arg(when, QDir::toNativeSeparators(file)));
}

void DataSection::begin_backup() {
  if (work_->runs()) {
    return;
  }
  const QString folder = ways_.choose_folder();
  if (folder.isEmpty()) {
    return;
  }
  file_ = backup_file(folder, widgets::qt(store_->path()));
  show_run(true);
  say_outcome(tr("The backup is being made."), true);
  work_->begin(store_->path(), widgets::plain(file_));
}

void DataSection::show_progress(qint64 step, qint64 of_all) {
  progress_->setRange(0, static_cast<int>(of_all));
  progress_->setValue(static_cast<int>(step));
}

void DataSection::show_made(const store::BackupReport& report) {
  show_run(false);
  say_outcome(tr("Backup made and checked: %1 entries, %2 photos.")
                  .arg(report.entries)
                  .arg(report.photos_copied + report.photos_there),
              true);
  const std::int64_t now_ms = ways_.clock().at_ms;
  set_last_backup(now_ms, file_);
  emit backed_up(now_ms, file_);
}

void DataSection::show_run(bool runs) {
  const bool stop_had_focus = stop_->hasFocus();
  progress_->setRange(0, 0);
  progress_->setVisible(runs);
  stop_->setVisible(runs);
  stop_->setEnabled(true);
  begin_->setEnabled(!runs);
  if (runs) {
    stop_->setFocus();
  } else if (stop_had_focus) {
    begin_->setFocus();
  }
}

void DataSection::say_outcome(const QString& text, bool good) {
  widgets::set_part(outcome_, good ? "strong" : "error");
  outcome_->setText(text);
}

}  // namespace shimwright::workshop
