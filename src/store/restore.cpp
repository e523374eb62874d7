#include "shimwright/store/restore.h"

#include <QFileInfo>

#include "bring_photos.h"
#include "check_parts.h"
#include "copy.h"
#include "disk.h"
#include "lock.h"
#include "offers.h"
#include "opening.h"
#include "own_schema.h"
#include "photos.h"
#include "plain_time.h"
#include "private_texts.h"
#include "replace_store.h"

namespace shimwright::store {

namespace {

tl::unexpected<Error> not_whole(const std::string& place) {
  return refuse("backup_wrong", place,
                SHIMWRIGHT_TEXT("store", "This backup is not whole, so it takes no place; choose an earlier one."));
}

/// As when a backup was carried to another machine without the folder beside it.
tl::unexpected<Error> photos_left_behind() {
  return refuse("backup_wrong", "photos",
                SHIMWRIGHT_TEXT("store",
                                "The photos of this backup were left behind: bring its folder photos too, "
                                "beside the backup."));
}

/// A backup of another store may come where no job would be put aside by it.
Result<void> check_belongs(const Value& id, const Remains& remains) {
  if (remains.id == Value() || remains.id == id || (remains.ends && remains.ends->empty())) {
    return {};
  }
  return refuse(
      "other_store", "",
      SHIMWRIGHT_TEXT("store",
                      "This is a backup of another store, and there are jobs in this one: take single jobs in "
                      "by their files, or begin a new store for the backup."));
}

Result<BackupOffer> offer_for(Connection& connection, const std::string& store_path, const BackupWatch& watch) {
  const Remains remains = remains_of(QString::fromStdString(store_path));
  auto id = connection.value("SELECT id FROM store");
  if (!id) {
    return passed_on(id);
  }
  if (auto belongs = check_belongs(*id, remains); !belongs) {
    return passed_on(belongs);
  }
  auto report = check_connection(connection, connection.path(), watch);
  if (!report) {
    return passed_on(report);
  }
  if (!report->whole_but_for_photos()) {
    return not_whole(report->findings.front().place());
  }
  return offer_made(connection, *report, remains);
}

Result<void> check_paths(const std::string& store_path, const std::string& backup) {
  for (const std::string& path : {store_path, backup}) {
    if (auto checked = check_path(path); !checked) {
      return checked;
    }
  }
  if (QFileInfo(QString::fromStdString(store_path)) == QFileInfo(QString::fromStdString(backup))) {
    return refuse("same_file", "", SHIMWRIGHT_TEXT("store", "This is the store itself: choose a backup of it."));
  }
  return {};
}

/// So that what is kept is one file, and a power cut finds the store with all its entries.
void empty_log_of(const QString& store_path) {
  if (auto connection = connect_checked(store_path, Access::write)) {
    static_cast<void>((*connection)->rows("PRAGMA wal_checkpoint(TRUNCATE)"));
  }
}

}  // namespace

Result<std::unique_ptr<Connection>> open_backup(const std::string& backup) {
  auto connection = connect_checked(QString::fromStdString(backup), Access::look);
  if (!connection) {
    return connection;
  }
  auto fault = quick_fault_of_file(**connection);
  if (!fault) {
    return passed_on(fault);
  }
  if (const auto& found = *fault) {
    return not_whole(*found);
  }
  auto kinship = kinship_of(**connection);
  if (!kinship) {
    return passed_on(kinship);
  }
  if (*kinship == Kinship::newer) {
    return refuse("newer_backup", "",
                  SHIMWRIGHT_TEXT("store", "This backup was written by a newer program: restore it with that."));
  }
  if (*kinship == Kinship::empty) {
    return refuse("backup_wrong", "",
                  SHIMWRIGHT_TEXT("store", "This backup is empty, so it takes no place; choose another."));
  }
  auto ours = has_own_schema(**connection);
  if (!ours) {
    return passed_on(ours);
  }
  if (!*ours) {
    return refuse("backup_wrong", "",
                  SHIMWRIGHT_TEXT("store",
                                  "The tables of this backup are not those of this program, so it takes no place; "
                                  "choose another."));
  }
  return connection;
}

Message told_before_restore(const BackupOffer& offer) {
  const std::string until = plain_time(offer.last_at_ms);
  if (!offer.missing || offer.missing->entries == 0) {
    return {
        SHIMWRIGHT_TEXT("store",
                        "The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. Nothing here was "
                        "entered after it."),
        {offer.file, until, std::to_string(offer.jobs), std::to_string(offer.entries)}};
  }
  return {
      SHIMWRIGHT_TEXT("store",
                      "The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. Entered after it: "
                      "{4} entries, in jobs: {5}; they will only be in the file that is kept."),
      {offer.file, until, std::to_string(offer.jobs), std::to_string(offer.entries),
       std::to_string(offer.missing->entries), std::to_string(offer.missing->jobs)}};
}

Result<BackupOffer> look_at_backup(const std::string& store_path, const std::string& backup, const BackupWatch& watch) {
  if (auto checked = check_paths(store_path, backup); !checked) {
    return passed_on(checked);
  }
  auto connection = open_backup(backup);
  return connection ? offer_for(**connection, store_path, watch) : passed_on(connection);
}

Result<RestoreReport> restore(const std::string& store_path, const std::string& backup, const Opening& opening) {
  if (auto checked = check_paths(store_path, backup); !checked) {
    return passed_on(checked);
  }
  auto source = open_backup(backup);
  if (!source) {
    return passed_on(source);
  }
  const QString place = QString::fromStdString(store_path);
  if (auto made = make_private_folder(QFileInfo(place).absolutePath()); !made) {
    return passed_on(made);
  }
  auto lock = WriterLock::take(place, opening.person, opening.now_ms);
  if (!lock) {
    return passed_on(lock);
  }
  empty_log_of(place);
  auto offer = offer_for(**source, store_path, {});
  if (!offer) {
    return passed_on(offer);
  }
  auto photos = bring_photos(**source, (*source)->path(), place);
  if (!photos) {
    return passed_on(photos);
  }
  if (photos->gone > 0 && !QFileInfo(photo_folder((*source)->path())).isDir()) {
    return photos_left_behind();
  }
  RestoreReport report{{}, offer->jobs, 0, photos->copied, photos->gone, 0};
  const std::vector<Row> erased = erased_here(place);
  auto replaced =
      replace_store(**source, place, QStringLiteral(".before-restore-"), [&](Connection& copy) -> Result<void> {
        auto count = erase_again(copy, erased, opening.now_ms);
        report.erased = count ? *count : 0;
        return count ? Result<void>() : passed_on(count);
      });
  if (!replaced) {
    return passed_on(replaced);
  }
  report.kept = replaced->kept.toStdString();
  report.entries = replaced->entries;
  return report;
}

}  // namespace shimwright::store
