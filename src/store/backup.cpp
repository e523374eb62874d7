#include "shimwright/store/backup.h"

#include <set>

#include <QFile>
#include <QFileInfo>

#include "chain_heads.h"
#include "check_parts.h"
#include "copy.h"
#include "disk.h"
#include "opening.h"
#include "own_schema.h"
#include "photos.h"

namespace shimwright::store {

namespace {

tl::unexpected<Error> in_the_way() {
  return refuse("backup_in_the_way", "",
                SHIMWRIGHT_TEXT("store",
                                "Something other than an older backup of this store lies there and is not "
                                "written over; choose another name."));
}

bool stopped(const BackupWatch& watch) {
  return watch.stop != nullptr && watch.stop->load();
}

tl::unexpected<Error> was_stopped() {
  return refuse("stopped", "", SHIMWRIGHT_TEXT("store", "The backup was stopped; the one before it is still there."));
}

Result<Value> store_id(Connection& connection) {
  return connection.value("SELECT id FROM store");
}

/// What could not be read is no backup of ours, except where it is the disk that did not read.
Result<bool> no_unless_the_disk(const Error& error) {
  if (error.code == "disk_full" || error.code == "disk_fault" || error.code == "cannot_open") {
    return tl::make_unexpected(error);
  }
  return false;
}

/// Ours, and nothing in it that the store does not have.
Result<bool> is_older_backup(Connection& store, const QString& out) {
  auto backup = connect_checked(out, Access::look);
  if (!backup) {
    return no_unless_the_disk(backup.error());
  }
  auto ours = has_own_schema(**backup);
  if (!ours || !*ours) {
    return ours ? Result<bool>(false) : no_unless_the_disk(ours.error());
  }
  auto backup_id = store_id(**backup);
  if (!backup_id) {
    return no_unless_the_disk(backup_id.error());
  }
  auto id = store_id(store);
  if (!id) {
    return passed_on(id);
  }
  if (*id != *backup_id || *id == Value()) {
    return false;
  }
  auto end = end_of_heads(**backup);
  return end ? heads_hold(store, *end) : no_unless_the_disk(end.error());
}

Result<void> check_place(Connection& store, const std::string& out) {
  if (auto checked = check_path(out); !checked) {
    return checked;
  }
  const QString place = QString::fromStdString(out);
  if (QFileInfo(place) == QFileInfo(store.path())) {
    return in_the_way();
  }
  if (!QFileInfo::exists(place)) {
    return make_private_folder(QFileInfo(place).absolutePath());
  }
  auto older = is_older_backup(store, place);
  if (!older) {
    return passed_on(older);
  }
  return *older ? Result<void>() : in_the_way();
}

Result<std::set<std::string>> photo_names(Connection& store) {
  auto rows = store.rows("SELECT DISTINCT sha256 FROM photo ORDER BY sha256");
  if (!rows) {
    return passed_on(rows);
  }
  std::set<std::string> names;
  for (const Row& row : *rows) {
    names.insert(text_in(row, 0));
  }
  return names;
}

tl::unexpected<Error> photo_is_wrong(const std::string& sha256) {
  return refuse("backup_wrong", sha256,
                SHIMWRIGHT_TEXT("store",
                                "This photo is gone or changed, so the backup would not be whole; run the check "
                                "of the store."));
}

Result<void> copy_photo(const QString& store_path, const QString& out, const std::string& sha256,
                        BackupReport& report) {
  const QString target = photo_place(out, sha256);
  if (hash_of_file(target) == sha256) {
    ++report.photos_there;
    return {};
  }
  QFile source(photo_place(store_path, sha256));
  if (!source.open(QIODevice::ReadOnly)) {
    return photo_is_wrong(sha256);
  }
  const QByteArray content = source.readAll();
  if (record::sha256_hex({content.constData(), static_cast<std::size_t>(content.size())}) != sha256) {
    return photo_is_wrong(sha256);
  }
  ++report.photos_copied;
  return write_photo(target, content);
}

/// The photos a store names, from beside `store_path` to beside `out`.
Result<void> copy_photos(Connection& names_of, const QString& store_path, const QString& out, const BackupWatch& watch,
                         BackupReport& report) {
  auto names = photo_names(names_of);
  if (!names) {
    return passed_on(names);
  }
  const auto steps = static_cast<std::int64_t>(names->size()) + 1;
  std::int64_t done = 0;
  for (const std::string& sha256 : *names) {
    if (stopped(watch)) {
      return was_stopped();
    }
    if (auto copied = copy_photo(store_path, out, sha256, report); !copied) {
      return copied;
    }
    if (watch.progress) {
      watch.progress(++done, steps);
    }
  }
  return {};
}

Result<void> check_whole(Connection& copy, BackupReport& report) {
  auto checked = check_connection(copy, std::nullopt);
  if (!checked) {
    return passed_on(checked);
  }
  if (!checked->in_order()) {
    const Finding& first = checked->findings.front();
    return refuse("backup_wrong", first.place(),
                  SHIMWRIGHT_TEXT("store", "The copy is not as it should be and was thrown away: {0}"),
                  {first.message.in_english()});
  }
  report.entries = checked->entries;
  return {};
}

}  // namespace

Result<BackupReport> back_up(const std::string& store_path, const std::string& out, const BackupWatch& watch) {
  if (auto checked = check_path(store_path); !checked) {
    return passed_on(checked);
  }
  const QString place = QString::fromStdString(store_path);
  auto store = connect_checked(place, Access::look);
  if (!store) {
    return passed_on(store);
  }
  if (auto checked = check_place(**store, out); !checked) {
    return passed_on(checked);
  }
  BackupReport report;
  const QString target = QString::fromStdString(out);
  if (auto copied = copy_photos(**store, place, target, watch, report); !copied) {
    return passed_on(copied);
  }
  const auto check = [&](Connection& copy) -> Result<void> {
    if (auto whole = check_whole(copy, report); !whole) {
      return whole;
    }
    // A photo may have come while the others were copied.
    BackupReport since;
    auto copied = copy_photos(copy, place, target, watch, since);
    report.photos_copied += since.photos_copied;
    return copied;
  };
  if (auto laid = lay_copy(**store, target, check); !laid) {
    return passed_on(laid);
  }
  if (watch.progress) {
    watch.progress(1, 1);
  }
  return report;
}

}  // namespace shimwright::store
