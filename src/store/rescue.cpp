#include "shimwright/store/rescue.h"

#include <algorithm>
#include <map>

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "check_parts.h"
#include "copy.h"
#include "disk.h"
#include "lock.h"
#include "opening.h"
#include "photos.h"
#include "plain_time.h"

namespace shimwright::store {

namespace {

/// How far each job goes; what the file does not show any more is a refusal.
Result<std::map<std::string, std::int64_t>> ends_of_jobs(Connection& connection) {
  auto rows = connection.rows("SELECT job, max(seq) FROM entry GROUP BY job");
  if (!rows) {
    return passed_on(rows);
  }
  std::map<std::string, std::int64_t> ends;
  for (const Row& row : *rows) {
    ends.emplace(text_in(row, 0), number_in(row, 1));
  }
  return ends;
}

/// As much of a damaged store as can still be read.
struct Remains {
  Value id;
  std::optional<std::map<std::string, std::int64_t>> ends;
};

Remains remains_of(const QString& path) {
  Remains remains;
  auto connection = Connection::open(path, Access::look);
  if (!connection) {
    return remains;
  }
  if (auto id = (*connection)->value("SELECT id FROM store")) {
    remains.id = *id;
  }
  if (auto ends = ends_of_jobs(**connection)) {
    remains.ends = std::move(*ends);
  }
  return remains;
}

std::optional<BackupOffer::Missing> missing_in(const std::map<std::string, std::int64_t>& backup,
                                               const Remains& remains) {
  if (!remains.ends) {
    return std::nullopt;
  }
  BackupOffer::Missing missing;
  for (const auto& [job, end] : *remains.ends) {
    const auto kept = backup.find(job);
    const std::int64_t after = end - (kept == backup.end() ? 0 : kept->second);
    missing.jobs += after > 0 ? 1 : 0;
    missing.entries += std::max<std::int64_t>(after, 0);
  }
  return missing;
}

/// Nothing where the file is no whole backup of that store, for whatever reason.
std::optional<BackupOffer> offer_of(const QString& file, const Remains& remains) {
  auto connection = connect_checked(file, Access::look);
  if (!connection) {
    return std::nullopt;
  }
  auto kinship = kinship_of(**connection);
  auto id = (*connection)->value("SELECT id FROM store");
  if (!kinship || *kinship == Kinship::empty || !id || (remains.id != Value() && *id != remains.id)) {
    return std::nullopt;
  }
  auto checked = check_connection(**connection, file);
  auto ends = ends_of_jobs(**connection);
  auto last = (*connection)->value("SELECT max(at_ms) FROM entry");
  if (!checked || !checked->in_order() || !ends || !last) {
    return std::nullopt;
  }
  const auto* last_at_ms = std::get_if<std::int64_t>(&*last);
  return BackupOffer{file.toStdString(), last_at_ms == nullptr ? 0 : *last_at_ms, checked->jobs, checked->entries,
                     missing_in(*ends, remains)};
}

Result<void> put_back_photos(Connection& backup, const QString& store_path) {
  auto rows = backup.rows("SELECT DISTINCT sha256 FROM photo");
  if (!rows) {
    return passed_on(rows);
  }
  for (const Row& row : *rows) {
    const std::string sha256 = text_in(row, 0);
    const QString place = photo_place(store_path, sha256);
    if (hash_of_file(place) == sha256) {
      continue;
    }
    QFile source(photo_place(backup.path(), sha256));
    if (source.open(QIODevice::ReadOnly)) {
      if (auto written = write_photo(place, source.readAll()); !written) {
        return written;
      }
    }
  }
  return {};
}

QString name_for_damaged(const QString& path) {
  for (int number = 1;; ++number) {
    QString name = path + QStringLiteral(".damaged-%1").arg(number);
    if (!QFileInfo::exists(name)) {
      return name;
    }
  }
}

/// The damaged file and its log, byte for byte.
Result<void> keep_damaged(const QString& path, const QString& kept) {
  for (const char* ending : {"", "-wal"}) {
    const QString from = path + QLatin1String(ending);
    const QString to = kept + QLatin1String(ending);
    if (!QFileInfo::exists(from)) {
      continue;
    }
    if (!QFile::copy(from, to)) {
      QFile::remove(to);
      return refuse("disk_fault", to.toStdString(),
                    SHIMWRIGHT_TEXT("store",
                                    "The damaged store could not be kept beside its place, so nothing was changed; "
                                    "look whether the disk is full."));
    }
    if (auto synced = sync_file(to); !synced) {
      return synced;
    }
  }
  return sync_folder(QFileInfo(path).absolutePath());
}

}  // namespace

Message BackupOffer::told() const {
  const std::string until = plain_time(last_at_ms);
  if (!missing) {
    return {SHIMWRIGHT_TEXT("store",
                            "The backup {0} is whole and goes to {1}: {2} jobs, {3} entries. What came after it the "
                            "damaged store does not show any more."),
            {file, until, std::to_string(jobs), std::to_string(entries)}};
  }
  return {
      SHIMWRIGHT_TEXT("store",
                      "The backup {0} is whole and goes to {1}: {2} jobs, {3} entries. {4} entries in {5} jobs came "
                      "after it and would be missing."),
      {file, until, std::to_string(jobs), std::to_string(entries), std::to_string(missing->entries),
       std::to_string(missing->jobs)}};
}

Result<std::optional<BackupOffer>> last_whole_backup(const std::string& store_path, const std::string& folder) {
  if (auto checked = check_path(store_path); !checked) {
    return passed_on(checked);
  }
  if (auto checked = check_path(folder); !checked) {
    return passed_on(checked);
  }
  const QString place = QString::fromStdString(store_path);
  const Remains remains = remains_of(place);
  std::optional<BackupOffer> best;
  for (const QFileInfo& file : QDir(QString::fromStdString(folder)).entryInfoList(QDir::Files, QDir::Name)) {
    auto offer = file == QFileInfo(place) ? std::nullopt : offer_of(file.absoluteFilePath(), remains);
    if (offer && (!best || offer->entries > best->entries)) {
      best = std::move(offer);
    }
  }
  return best;
}

Result<std::string> put_back(const std::string& store_path, const std::string& backup, const Opening& opening) {
  if (auto checked = check_path(store_path); !checked) {
    return passed_on(checked);
  }
  const QString place = QString::fromStdString(store_path);
  auto lock = WriterLock::take(place, opening.person, opening.now_ms);
  if (!lock) {
    return passed_on(lock);
  }
  auto source = connect_checked(QString::fromStdString(backup), Access::look);
  if (!source) {
    return passed_on(source);
  }
  const QString restored = place + QStringLiteral(".restored");
  if (auto laid = lay_copy(**source, restored); !laid) {
    return passed_on(laid);
  }
  if (auto photos = put_back_photos(**source, place); !photos) {
    return passed_on(photos);
  }
  const QString kept = name_for_damaged(place);
  if (auto done = keep_damaged(place, kept); !done) {
    return passed_on(done);
  }
  // A log of the damaged file would be taken for one of the backup.
  QFile::remove(place + QStringLiteral("-wal"));
  QFile::remove(place + QStringLiteral("-shm"));
  if (auto renamed = rename_over(restored, place); !renamed) {
    return passed_on(renamed);
  }
  return kept.toStdString();
}

}  // namespace shimwright::store
