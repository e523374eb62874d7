#include "backup_card.h"

#include <QDir>
#include <QFileInfo>
#include <QStorageInfo>
#include <utility>

#include "shimwright/widgets/say.h"

namespace shimwright::workshop {

namespace {

/// The folder, or the one above it that is there.
QString there(const QString& folder) {
  QString found = folder;
  while (!QFileInfo::exists(found) && QFileInfo(found).absolutePath() != found) {
    found = QFileInfo(found).absolutePath();
  }
  return found;
}

bool on_one_disk(const QString& one, const QString& other) {
  return QStorageInfo(there(one)).device() == QStorageInfo(there(other)).device();
}

}  // namespace

BackupCard::BackupCard(store::Store& store, WorkshopWays ways, QWidget* parent)
    : WorkCard(tr("Backup"), QStringLiteral("backup"), parent), store_(&store), ways_(std::move(ways)) {
  last_ = add_text(tr("No verified backup yet."));
  last_->setObjectName(QStringLiteral("last-backup"));
  folder_ = add_text(QString());
  folder_->setObjectName(QStringLiteral("backup-place"));
  add_text(
      tr("A backup is made by itself every day, checked before it takes its name, and kept for a week: one file for "
         "each day of the week. The file from before each update of the store is kept for good. Jobs go on "
         "meanwhile."),
      "soft");
  const auto* begin = add_button(tr("Back up now"), QStringLiteral("button-back-up"), widgets::Button::Kind::main);
  const auto* folder = add_button(tr("Choose another folder"), QStringLiteral("button-folder"));
  add_progress();
  connect(begin, &QAbstractButton::clicked, this, &BackupCard::begin_backup);
  connect(folder, &QAbstractButton::clicked, this, &BackupCard::choose_folder);
}

void BackupCard::refresh() {
  const QString folder = ways_.data.backup_folder ? ways_.data.backup_folder() : QString();
  if (folder.isEmpty()) {
    folder_->setText(tr("Choose a folder for backups, on a second disk or a share."));
    return;
  }
  const QString place = tr("Folder: %1").arg(QDir::toNativeSeparators(folder));
  folder_->setText(on_one_disk(folder, QFileInfo(widgets::qt(store_->path())).absolutePath())
                       ? place + QLatin1Char('\n') +
                             tr("It lies on the same disk as the store: choose one on a second disk or a share.")
                       : place);
}

void BackupCard::set_last_backup(std::int64_t at_ms, const QString& file) {
  last_->setText(tr("Last verified backup: %1, %2").arg(widgets::day_and_time(at_ms), QDir::toNativeSeparators(file)));
}

void BackupCard::choose_folder() {
  const QString folder = ways_.choose_folder();
  if (!folder.isEmpty() && ways_.data.use_backup_folder) {
    ways_.data.use_backup_folder(folder);
    refresh();
  }
}

void BackupCard::begin_backup() {
  QString folder = ways_.data.backup_folder ? ways_.data.backup_folder() : QString();
  folder = folder.isEmpty() ? ways_.choose_folder() : folder;
  if (folder.isEmpty()) {
    return;
  }
  const QString file = backup_file(folder, store_->path(), ways_.clock());
  run(tr("The backup is being made."), [this, file, from = store_->path()](const store::BackupWatch& watch) {
    auto report = store::back_up(from, widgets::plain(file), watch);
    return [this, file, report = std::move(report)] {
      if (!report) {
        tell_refused(report.error());
        return;
      }
      QString told = tr("Backup made and checked. Entries: %1, photos: %2.")
                         .arg(report->entries)
                         .arg(report->photos_copied + report->photos_there);
      if (report->photos_gone > 0) {
        told += QLatin1Char(' ') + tr("Photos that are gone, and so not in it: %1.").arg(report->photos_gone);
      }
      if (!report->put_aside.empty()) {
        told += QLatin1Char(' ') + tr("The file of before, with what the store has no more, is kept: %1")
                                       .arg(QDir::toNativeSeparators(widgets::qt(report->put_aside)));
      }
      tell(told, true);
      const std::int64_t now_ms = ways_.clock().at_ms;
      set_last_backup(now_ms, file);
      emit backed_up(now_ms, file);
    };
  });
}

}  // namespace shimwright::workshop
