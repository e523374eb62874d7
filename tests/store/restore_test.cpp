#include "shimwright/store/restore.h"

#include <sqlite3.h>

#include <QDirIterator>

#include "exchange.h"
#include "offers.h"
#include "replace_store.h"
#include "shimwright/store/backup.h"

namespace shimwright::store {

using namespace test;

namespace {

const Opening opening{Mode::read_write, "Mara Kern", monday_ms};

/// A store with a backup, and what came after it.
struct Backed {
  Workbench bench;
  std::string sealed = sealed_job_with_photos(bench, "10");
  TestJob job{bench, "20", "2026-0147"};
  TestJob later{bench, "30", "2026-0148", "TESTVN0020A000123"};
  std::string backup = bench.file("backups/monday.sqlite").toStdString();
  std::vector<record::StoredEntry> backed;

  Backed() {
    job.open();
    job.add(job::Done{{"battery-off", 1}});
    static_cast<void>(got(back_up(bench.path(), backup)));
    backed = got(bench.store().load(job.id())).stored;
    job.add(job::Noted{std::nullopt, "After the backup"});
    later.open();
  }
};

/// Somebody without our rules at a file.
void run_sql(const std::string& path, const char* script) {
  sqlite3* database = nullptr;
  REQUIRE(sqlite3_open(path.c_str(), &database) == SQLITE_OK);
  const int code = sqlite3_exec(database, script, nullptr, nullptr, nullptr);
  sqlite3_close(database);
  REQUIRE(code == SQLITE_OK);
}

/// Without the log, which whoever looks at the store makes and leaves empty.
QStringList files_of(Workbench& bench) {
  QStringList names = QDir(QString::fromStdString(bench.path()).section('/', 0, -2)).entryList(QDir::Files, QDir::Name);
  names.removeAll("bench.sqlite-wal");
  names.removeAll("bench.sqlite-shm");
  return names;
}

}  // namespace

TEST_CASE("a restore brings back every entry of the backup and keeps what was there") {
  Backed backed;
  const auto now = got(backed.bench.store().load(backed.job.id())).stored;
  const auto sealed = got(backed.bench.store().load(backed.sealed)).stored;
  backed.bench.close();
  const BackupOffer offer = got(look_at_backup(backed.bench.path(), backed.backup));
  REQUIRE(offer.missing);
  CHECK(offer.missing->entries == 2);
  CHECK(offer.missing->jobs == 2);
  CHECK(told_before_restore(offer).in_english().find(
            "Entered after it: 2 entries, in jobs: 2; they will only be in") != std::string::npos);
  const RestoreReport report = got(restore(backed.bench.path(), backed.backup, opening));
  CHECK(report.jobs == 2);
  CHECK(report.entries == std::int64_t(backed.backed.size() + sealed.size()));
  CHECK(report.kept == backed.bench.path() + ".before-restore-1");
  backed.bench.open();
  CHECK(got(backed.bench.store().load(backed.job.id())).stored == backed.backed);
  CHECK(got(backed.bench.store().load(backed.sealed)).stored == sealed);
  CHECK(code_of(backed.bench.store().load(backed.later.id())) == "unknown_job");
  CHECK(got(check(backed.bench.store())).in_order());
  const auto kept = got(Store::open(report.kept, {Mode::look_only, "", monday_ms}));
  CHECK(got(kept->load(backed.job.id())).stored == now);
  CHECK(got(check(*kept)).in_order());
}

TEST_CASE("what was kept can be restored again: forth and back") {
  Backed backed;
  const std::string before = [&] {
    std::string all;
    for (const JobSummary& each : got(backed.bench.store().jobs())) {
      all += each.id + got(backed.bench.store().load(each.id)).stored.back().hash;
    }
    return all;
  }();
  backed.bench.close();
  const RestoreReport first = got(restore(backed.bench.path(), backed.backup, opening));
  const RestoreReport second = got(restore(backed.bench.path(), first.kept, opening));
  CHECK(second.kept == backed.bench.path() + ".before-restore-2");
  backed.bench.open();
  std::string after;
  for (const JobSummary& each : got(backed.bench.store().jobs())) {
    after += each.id + got(backed.bench.store().load(each.id)).stored.back().hash;
  }
  CHECK(after == before);
}

TEST_CASE("photos come back with the backup, and without them it is not taken") {
  Backed backed;
  backed.bench.close();
  const QString photos = QString::fromStdString(backed.bench.path()).section('/', 0, -2) + "/photos";
  QDir(photos).removeRecursively();
  CHECK(got(restore(backed.bench.path(), backed.backup, opening)).photos >= 1);
  QDir(photos).removeRecursively();
  QDir(backed.bench.file("backups/photos")).removeRecursively();
  const QStringList files = files_of(backed.bench);
  CHECK(code_of(restore(backed.bench.path(), backed.backup, opening)) == "backup_wrong");
  CHECK(files_of(backed.bench) == files);
}

TEST_CASE("a backup that has lost one photo is taken all the same, and the loss is told") {
  Backed backed;
  backed.bench.close();
  const auto remove_one = [](const QString& folder) {
    QDirIterator files(folder, QDir::Files, QDirIterator::Subdirectories);
    REQUIRE(files.hasNext());
    REQUIRE(QFile::remove(files.next()));
  };
  QDir(QString::fromStdString(backed.bench.path()).section('/', 0, -2) + "/photos").removeRecursively();
  remove_one(backed.bench.file("backups/photos"));
  const BackupOffer offer = got(look_at_backup(backed.bench.path(), backed.backup));
  CHECK(offer.photos_gone == 1);
  const auto told = offer.told_of_photos();
  REQUIRE(told);
  CHECK(told->in_english() == "Photos that are gone from this backup: 1.");
  const auto offered = got(last_whole_backup(backed.bench.path(), backed.bench.file("backups").toStdString()));
  REQUIRE(offered);
  CHECK(offered->photos_gone == 1);
  const RestoreReport report = got(restore(backed.bench.path(), backed.backup, opening));
  CHECK(report.photos_gone == 1);
  backed.bench.open();
  CHECK(got(check(backed.bench.store())).whole_but_for_photos());
}

TEST_CASE("a text erased after the backup stays erased") {
  Backed backed;
  const auto opened = std::get<job::Opened>(backed.job.state().entries.front().body);
  went(backed.bench.store().erase_private_text(opened.plate->id, by_mk()));
  backed.bench.close();
  CHECK(got(restore(backed.bench.path(), backed.backup, opening)).erased == 1);
  CHECK_FALSE(content_of(backed.bench.path()).contains("HL-MK 412"));
  backed.bench.open();
  const auto texts = got(backed.bench.store().load(backed.job.id())).private_texts;
  CHECK_FALSE(texts.at(opened.plate->id));
  CHECK(texts.at(opened.customer_reference->id) == "Miller/77");
  CHECK(got(backed.bench.store().search("HLMK412")).empty());
  CHECK(got(check(backed.bench.store())).in_order());
}

TEST_CASE("a store on a new machine begins with the backup") {
  Backed backed;
  const std::string place = backed.bench.file("new machine/workshop.shimwright").toStdString();
  const RestoreReport report = got(restore(place, backed.backup, opening));
  CHECK(report.kept.empty());
  CHECK(report.photos >= 1);
  const auto store = got(Store::open(place, opening));
  CHECK(got(store->load(backed.job.id())).stored == backed.backed);
  CHECK(got(check(*store)).in_order());
}

TEST_CASE("a backup of another store takes no place of one with jobs, but that of an empty one") {
  Backed backed;
  Workbench other;
  other.close();
  CHECK(got(restore(other.path(), backed.backup, opening)).jobs == 2);
  Workbench busy;
  TestJob job(busy, "40", "2026-0149");
  job.open();
  busy.close();
  CHECK(code_of(look_at_backup(busy.path(), backed.backup)) == "other_store");
  CHECK(code_of(restore(busy.path(), backed.backup, opening)) == "other_store");
  busy.open();
  CHECK(got(busy.store().load(job.id())).entries.size() == 1);
}

TEST_CASE("a store that somebody has open is not restored") {
  Backed backed;
  CHECK(code_of(restore(backed.bench.path(), backed.backup, opening)) == "locked");
  CHECK(got(look_at_backup(backed.bench.path(), backed.backup)).jobs == 2);
}

TEST_CASE("a backup that is damaged, foreign, newer or planted with more than ours is refused and changes nothing") {
  Backed backed;
  backed.bench.close();
  // Emptied of its log, so that its bytes can be compared.
  run_sql(backed.bench.path(), "PRAGMA wal_checkpoint(TRUNCATE)");
  const QByteArray before = content_of(backed.bench.path());
  const QStringList files = files_of(backed.bench);
  const QByteArray whole = content_of(backed.backup);
  const std::string hostile = backed.bench.file("backups/hostile.sqlite").toStdString();
  const auto refused = [&] {
    std::string code;
    for (const auto& outcome : {look_at_backup(backed.bench.path(), hostile).map([](const BackupOffer&) {}),
                                restore(backed.bench.path(), hostile, opening).map([](const RestoreReport&) {})}) {
      REQUIRE_FALSE(outcome);
      const std::string line = outcome.error().in_english();
      CHECK(line.find('\n') == std::string::npos);
      CHECK(line.back() == '.');
      code = outcome.error().code;
    }
    CHECK(content_of(backed.bench.path()) == before);
    CHECK(files_of(backed.bench) == files);
    return code;
  };
  const auto planted = [&](const char* script) {
    QFile::remove(QString::fromStdString(hostile));
    put_file(QString::fromStdString(hostile), whole);
    run_sql(hostile, script);
    return refused();
  };
  CHECK(planted("CREATE VIEW planted AS SELECT 1") == "backup_wrong");
  CHECK(planted("CREATE TRIGGER planted AFTER INSERT ON person BEGIN DELETE FROM person; END") == "backup_wrong");
  CHECK(planted("DROP TRIGGER entry_is_not_changed") == "backup_wrong");
  CHECK(planted("PRAGMA foreign_keys = OFF; DROP TABLE pin_attempt; CREATE VIEW pin_attempt AS WITH RECURSIVE endless "
                "(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM endless) SELECT n FROM endless") == "backup_wrong");
  CHECK(planted("PRAGMA foreign_keys = OFF; DROP TABLE store; CREATE VIEW store AS WITH RECURSIVE endless (n) AS "
                "(SELECT 1 UNION ALL SELECT n + 1 FROM endless) SELECT count(*) AS id, 1 AS made_at_ms FROM endless") ==
        "backup_wrong");
  CHECK(planted("CREATE TABLE more (a INTEGER)") == "backup_wrong");
  CHECK(planted("PRAGMA user_version = 99") == "newer_backup");
  CHECK(planted("PRAGMA application_id = 7") == "not_a_store");
  CHECK(planted("DROP TRIGGER entry_is_not_changed; UPDATE entry SET person = 'x' WHERE seq = 1; CREATE TRIGGER "
                "entry_is_not_changed BEFORE UPDATE ON entry\nBEGIN SELECT RAISE(ABORT, 'an entry is kept for ever'); "
                "END") == "backup_wrong");
  QFile::remove(QString::fromStdString(hostile));
  run_sql(hostile, "CREATE TABLE theirs (a INTEGER); INSERT INTO theirs VALUES (1)");
  CHECK(refused() == "not_a_store");
  put_file(QString::fromStdString(hostile), "no database at all, but a text that is long enough to be looked at");
  CHECK(refused() == "not_a_store");
  put_file(QString::fromStdString(hostile), whole.left(whole.size() / 2));
  CHECK(refused() == "store_damaged");
  put_file(QString::fromStdString(hostile), {});
  CHECK(refused() == "backup_wrong");
  QFile::remove(QString::fromStdString(hostile));
  CHECK(refused() == "cannot_open");
  CHECK(code_of(restore(backed.bench.path(), backed.bench.path(), opening)) == "same_file");
  CHECK(code_of(restore(backed.bench.path(), "monday.sqlite", opening)) == "path_not_absolute");
}

TEST_CASE("a backup with planted views is neither offered nor written over") {
  Backed backed;
  run_sql(backed.backup,
          "PRAGMA foreign_keys = OFF; DROP TABLE store; CREATE VIEW store AS WITH RECURSIVE endless (n) "
          "AS (SELECT 1 UNION ALL SELECT n + 1 FROM endless) SELECT count(*) AS id FROM endless");
  CHECK(code_of(back_up(backed.bench.path(), backed.backup)) == "backup_in_the_way");
  CHECK_FALSE(got(last_whole_backup(backed.bench.path(), backed.bench.file("backups").toStdString())));
  backed.bench.close();
  CHECK(code_of(put_back(backed.bench.path(), backed.backup, opening)) == "backup_wrong");
}

TEST_CASE("a copy that lost entries on its way does not take the store's place") {
  Backed backed;
  backed.bench.close();
  const auto source = got(open_backup(backed.backup));
  const QString place = backed.bench.file("elsewhere.sqlite");
  const auto replaced = replace_store(*source, place, ".kept-", [](Connection& copy) {
    return copy.run_script(
        "PRAGMA foreign_keys = OFF; DROP TRIGGER entry_is_not_deleted; DELETE FROM entry WHERE seq = 2");
  });
  CHECK(code_of(replaced) == "restore_differs");
  CHECK_FALSE(QFile::exists(place));
  CHECK_FALSE(QFile::exists(place + ".restored"));
}

TEST_CASE("a backup of a newer program is left alone before its tables are read") {
  Backed backed;
  run_sql(backed.backup,
          "PRAGMA foreign_keys = OFF; DROP TABLE store; CREATE VIEW store AS WITH RECURSIVE endless (n) "
          "AS (SELECT 1 UNION ALL SELECT n + 1 FROM endless) SELECT count(*) AS id FROM endless; "
          "PRAGMA user_version = 99");
  CHECK(code_of(back_up(backed.bench.path(), backed.backup)) == "backup_in_the_way");
  CHECK_FALSE(got(last_whole_backup(backed.bench.path(), backed.bench.file("backups").toStdString())));
}

TEST_CASE("after going back, the backup of a day that is no more is put aside and the day has one again") {
  Backed backed;
  const std::string friday = backed.bench.file("backups/friday.sqlite").toStdString();
  static_cast<void>(got(back_up(backed.bench.path(), friday)));
  backed.bench.close();
  static_cast<void>(got(restore(backed.bench.path(), backed.backup, opening)));
  const BackupReport report = got(back_up(backed.bench.path(), friday));
  REQUIRE_FALSE(report.put_aside.empty());
  const auto aside = got(Store::open(report.put_aside, {Mode::look_only, "", monday_ms}));
  CHECK(got(aside->load(backed.later.id())).stored.size() == 1);
  CHECK(got(back_up(backed.bench.path(), friday)).put_aside.empty());
}

}  // namespace shimwright::store
