#include "shimwright/store/rescue.h"

#include <algorithm>
#include <map>
#include <utility>

#include <QDir>
#include <QFileInfo>

#include "bring_photos.h"
#include "lock.h"
#include "offers.h"
#include "opening.h"
#include "plain_time.h"
#include "private_texts.h"
#include "replace_store.h"

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

}  // namespace

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

Result<BackupOffer> offer_made(Connection& backup, const CheckReport& report, const Remains& remains) {
  auto ends = ends_of_jobs(backup);
  if (!ends) {
    return passed_on(ends);
  }
  auto last = backup.value("SELECT max(at_ms) FROM entry");
  if (!last) {
    return passed_on(last);
  }
  const auto* last_at_ms = std::get_if<std::int64_t>(&*last);
  return BackupOffer{
      backup.path().toStdString(), last_at_ms == nullptr ? 0 : *last_at_ms,          report.jobs, report.entries,
      missing_in(*ends, remains),  static_cast<std::int64_t>(report.findings.size())};
}

namespace {

/// Nothing where the file is no whole backup of that store, for whatever reason but that it was stopped.
Result<std::optional<BackupOffer>> offer_of(const QString& file, const Remains& remains, const BackupWatch& watch) {
  auto connection = open_backup(file.toStdString());
  auto id = connection ? (*connection)->value("SELECT id FROM store") : tl::make_unexpected(connection.error());
  if (!id || (remains.id != Value() && *id != remains.id)) {
    return std::nullopt;
  }
  auto checked = check_connection(**connection, file, watch);
  if (!checked && checked.error().code == "stopped") {
    return passed_on(checked);
  }
  if (!checked || !checked->whole_but_for_photos()) {
    return std::nullopt;
  }
  auto offer = offer_made(**connection, *checked, remains);
  return offer ? std::optional(std::move(*offer)) : std::nullopt;
}

}  // namespace

Message BackupOffer::told() const {
  const std::string until = plain_time(last_at_ms);
  if (!missing) {
    return {SHIMWRIGHT_TEXT("store",
                            "The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. What was "
                            "entered after that cannot be read from the damaged store any more."),
            {file, until, std::to_string(jobs), std::to_string(entries)}};
  }
  return {SHIMWRIGHT_TEXT(
              "store",
              "The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. Entered after it, and "
              "then missing: {4} entries, in jobs: {5}."),
          {file, until, std::to_string(jobs), std::to_string(entries), std::to_string(missing->entries),
           std::to_string(missing->jobs)}};
}

std::optional<Message> BackupOffer::told_of_photos() const {
  if (photos_gone == 0) {
    return std::nullopt;
  }
  return Message{SHIMWRIGHT_TEXT("store", "Photos that are gone from this backup: {0}."),
                 {std::to_string(photos_gone)}};
}

Result<std::optional<BackupOffer>> last_whole_backup(const std::string& store_path, const std::string& folder,
                                                     const BackupWatch& watch) {
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
    if (file == QFileInfo(place)) {
      continue;
    }
    auto offer = offer_of(file.absoluteFilePath(), remains, watch);
    if (!offer) {
      return offer;
    }
    if (*offer && (!best || std::pair((*offer)->entries, -(*offer)->photos_gone) >
                                std::pair(best->entries, -best->photos_gone))) {
      best = std::move(*offer);
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
  auto source = open_backup(backup);
  if (!source) {
    return passed_on(source);
  }
  if (auto photos = bring_photos(**source, (*source)->path(), place); !photos) {
    return passed_on(photos);
  }
  const std::vector<Row> erased = erased_here(place);
  auto replaced = replace_store(**source, place, QStringLiteral(".damaged-"), [&](Connection& copy) -> Result<void> {
    auto again = erase_again(copy, erased, opening.now_ms);
    return again ? Result<void>() : passed_on(again);
  });
  if (!replaced) {
    return passed_on(replaced);
  }
  return replaced->kept.toStdString();
}

}  // namespace shimwright::store
