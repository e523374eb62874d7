#include "shimwright/store/backup.h"

#include <QFile>
#include <QFileInfo>
#include <QLockFile>

#include "bring_photos.h"
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

/// Of this store, by this program or one before.
Result<bool> is_backup_of(Connection& store, Connection& backup) {
  // Before anything is read by its tables: those of a newer program are not known.
  const auto kinship = kinship_of(backup);
  if (!kinship || *kinship != Kinship::ours) {
    return kinship ? Result<bool>(false) : no_unless_the_disk(kinship.error());
  }
  auto ours = has_own_schema(backup);
  if (!ours || !*ours) {
    return ours ? Result<bool>(false) : no_unless_the_disk(ours.error());
  }
  auto backup_id = store_id(backup);
  if (!backup_id) {
    return no_unless_the_disk(backup_id.error());
  }
  auto id = store_id(store);
  return id ? Result<bool>(*id == *backup_id && *id != Value()) : passed_on(id);
}

enum class InTheWay {
  nothing,
  older_backup,    ///< all that is in it the store has as well
  another_branch,  ///< of this store, with what it lost when it went back to an earlier backup
  something_else,
};

Result<InTheWay> in_the_way_at(Connection& store, const QString& out) {
  const auto something_else = [](const Result<bool>& no) {
    return no.map([](bool) { return InTheWay::something_else; });
  };
  if (!QFileInfo::exists(out)) {
    return InTheWay::nothing;
  }
  auto backup = connect_checked(out, Access::look);
  if (!backup) {
    return something_else(no_unless_the_disk(backup.error()));
  }
  auto ours = is_backup_of(store, **backup);
  if (!ours || !*ours) {
    return something_else(ours);
  }
  auto end = end_of_heads(**backup);
  if (!end) {
    return something_else(no_unless_the_disk(end.error()));
  }
  auto held = heads_hold(store, *end);
  return held ? Result<InTheWay>(*held ? InTheWay::older_backup : InTheWay::another_branch) : passed_on(held);
}

/// `day-5.shimwright` is `day-5-before-1.shimwright` then.
Result<std::string> put_aside(const QString& out) {
  const QFileInfo file(out);
  const QString ending = file.suffix().isEmpty() ? QString() : QLatin1Char('.') + file.suffix();
  for (int number = 1;; ++number) {
    const QString name = QStringLiteral("%1/%2-before-%3%4")
                             .arg(file.absolutePath(), file.completeBaseName(), QString::number(number), ending);
    if (!QFileInfo::exists(name)) {
      auto renamed = rename_over(out, name);
      return renamed ? Result<std::string>(name.toStdString()) : passed_on(renamed);
    }
  }
}

Result<void> check_place(Connection& store, const std::string& out) {
  if (auto checked = check_path(out); !checked) {
    return checked;
  }
  const QString place = QString::fromStdString(out);
  if (QFileInfo(place) == QFileInfo(store.path())) {
    return in_the_way();
  }
  return make_private_folder(QFileInfo(place).absolutePath());
}

/// One backup at a time in a folder: two would write the same unfinished files. A lock that cannot be laid there keeps
/// nothing back; whether the folder may be written to is seen by the copy.
Result<void> take_turn(QLockFile& lock) {
  constexpr int longest_backup_ms = 60 * 60 * 1000;  // what a machine that is gone left locked
  lock.setStaleLockTime(longest_backup_ms);
  if (!lock.tryLock(0) && lock.error() == QLockFile::LockFailedError) {
    return refuse("backup_runs", "",
                  SHIMWRIGHT_TEXT("store",
                                  "Another backup is being made in this folder just now; begin this one when it is "
                                  "done."));
  }
  return {};
}

Result<void> check_whole(Connection& copy, const BackupWatch& watch, BackupReport& report) {
  auto checked = check_connection(copy, std::nullopt, {watch.stop, {}});
  if (!checked) {
    return passed_on(checked);
  }
  if (!checked->in_order()) {
    const Finding& first = checked->findings.front();
    return refuse(
        "backup_wrong", first.place(),
        SHIMWRIGHT_TEXT("store", "The copy is not as it should be and was thrown away; run the check of the store."));
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
  const QString target = QString::fromStdString(out);
  QLockFile lock(QFileInfo(target).absolutePath() + QStringLiteral("/backup-runs.lock"));
  if (auto turn = take_turn(lock); !turn) {
    return passed_on(turn);
  }
  auto there = in_the_way_at(**store, target);
  if (!there || *there == InTheWay::something_else) {
    return there ? in_the_way() : Result<BackupReport>(passed_on(there));
  }
  BackupReport report;
  auto photos = bring_photos(**store, place, target, watch);
  if (!photos) {
    return passed_on(photos);
  }
  const auto check = [&](Connection& copy) -> Result<void> {
    if (auto whole = check_whole(copy, watch, report); !whole) {
      return whole;
    }
    // A photo may have come while the others were copied.
    auto since = bring_photos(copy, place, target, watch);
    if (!since) {
      return passed_on(since);
    }
    report.photos_copied = photos->copied + since->copied;
    report.photos_there = photos->there;
    report.photos_gone = since->gone;
    if (*there == InTheWay::another_branch) {
      auto aside = put_aside(target);
      report.put_aside = aside ? *aside : std::string();
      return aside ? Result<void>() : passed_on(aside);
    }
    return {};
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
