// Export, import, restore and putting back a backup, with every call that changes the disk failing once, in every way a
// disk fails: one sentence, nothing half written, and the same goes through once the fault is gone.
#include <QRegularExpression>

#include <functional>
#include <set>

#include "each_call.h"
#include "exchange.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/restore.h"

namespace shimwright::store {

using namespace test;

namespace {

int fail_each_call(FaultyDisk& disk, Fault fault, const std::function<Result<void>()>& attempt,
                   const std::function<void(bool succeeded)>& after) {
  static const std::set<std::string> told = {"disk_full", "disk_fault", "cannot_open", "look_only", "not_durable"};
  return test::fail_each_call(disk, fault, attempt, after, told);
}

/// A job with a photo, small, since every call is gone through.
std::string small_job(Workbench& bench) {
  TestJob job(bench, "10", "2026-0147");
  job.open();
  put_file(bench.file("a.jpg"), tiny_photo(1));
  const KeptPhoto photo = got(bench.store().keep_photo(bench.file("a.jpg").toStdString()));
  job.add(job::PhotoTaken{{"received-photos", 1}, photo.sha256, photo.media_type, photo.bytes, ""});
  return job.id();
}

std::string photo_folder_of(Workbench& bench) {
  return bench.path().substr(0, bench.path().rfind('/')) + "/photos";
}

}  // namespace

TEST_CASE("an export that meets a fault leaves the file that was there, and none half written") {
  FaultyDisk disk;
  Workbench bench;
  const std::string job = small_job(bench);
  const std::string out = exported(bench, job);
  const QByteArray whole = content_of(out);
  for (const Fault fault : all_faults) {
    const int calls = fail_each_call(
        disk, fault, [&] { return export_job(bench.path(), job, out).map([](const ExportReport&) {}); },
        [&](bool) { CHECK(content_of(out) == whole); });
    CHECK(calls >= 4);
    CHECK(QDir(bench.file("")).entryList({"*.part"}, QDir::Files).isEmpty());
  }
}

TEST_CASE("an import that meets a fault has taken all or nothing, and goes through at the next try") {
  FaultyDisk disk;
  Workbench from;
  const std::string job = small_job(from);
  const std::string file = exported(from, job);
  const auto stored = got(from.store().load(job)).stored;
  for (const Fault fault : all_faults) {
    auto to = std::make_unique<Workbench>();
    const int calls = fail_each_call(
        disk, fault, [&] { return import_job(to->path(), file, by_mk()).map([](const ImportReport&) {}); },
        [&](bool succeeded) {
          const auto there = to->store().load(job);
          CHECK((there ? there->stored == stored : there.error().code == "unknown_job"));
          CHECK((there || !succeeded));
          CHECK(got(to->store().registers().persons()).size() == 2);
          CHECK(got(check(to->store())).in_order());
          CHECK(got(import_job(to->path(), file, by_mk())).job == job);
          CHECK(got(to->store().load(job)).stored == stored);
          CHECK(got(check(to->store())).in_order());
          to = std::make_unique<Workbench>();
        });
    CHECK(calls >= 8);
  }
}

TEST_CASE(
    "a restore that meets a fault leaves the store as it was or as the backup is, and never loses what was there") {
  FaultyDisk disk;
  Workbench bench;
  const std::string job = small_job(bench);
  const std::string backup = bench.file("backups/monday.sqlite").toStdString();
  static_cast<void>(got(back_up(bench.path(), backup)));
  TestJob later(bench, "20", "2026-0148", "TESTVN0020A000123");
  later.open();
  bench.close();
  const std::string now = bench.file("backups/now.sqlite").toStdString();
  static_cast<void>(got(back_up(bench.path(), now)));
  const Opening opening{Mode::read_write, "Mara Kern", monday_ms};
  for (const Fault fault : all_faults) {
    const int calls = fail_each_call(
        disk, fault,
        [&] {
          if (fault == Fault::broken) {
            QDir(QString::fromStdString(photo_folder_of(bench))).removeRecursively();
          }
          return restore(bench.path(), backup, opening).map([](const RestoreReport&) {});
        },
        [&](bool succeeded) {
          const auto there = [&] {
            const auto store = got(Store::open(bench.path(), {Mode::look_only, "", monday_ms}));
            CHECK(got(store->load(job)).stored.size() == 2);
            return store->load(later.id()).has_value();
          };
          const bool as_it_was = there();
          CHECK((!as_it_was || !succeeded));
          if (!as_it_was) {
            static_cast<void>(got(restore(bench.path(), now, opening)));
            CHECK(there());
          }
          QDir folder(QString::fromStdString(bench.path()).section('/', 0, -2));
          for (const QString& each : folder.entryList({"*.before-restore-*"}, QDir::Files)) {
            if (each.endsWith("-wal") || each.endsWith("-shm")) {
              continue;
            }
            const auto kept = got(Store::open(folder.filePath(each).toStdString(), {Mode::look_only, "", monday_ms}));
            CHECK(got(kept->load(job)).stored.size() == 2);
          }
          for (const QString& each : folder.entryList({"*.before-restore-*"}, QDir::Files)) {
            folder.remove(each);
          }
        });
    CHECK(calls >= 10);
    static_cast<void>(got(restore(bench.path(), now, opening)));
    CHECK(got(check(*got(Store::open(bench.path(), {Mode::look_only, "", monday_ms})))).in_order());
  }
  const QDir beside(QString::fromStdString(bench.path()).section('/', 0, -2));
  CHECK(beside.entryList({"*.part", "*.restored*", "*.unfinished*"}, QDir::Files).isEmpty());
}

TEST_CASE("putting a backup back that meets a fault keeps the damaged file, and goes through at the next try") {
  FaultyDisk disk;
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const std::string backup = bench.file("backups/monday.sqlite").toStdString();
  static_cast<void>(got(back_up(bench.path(), backup)));
  bench.close();
  const Opening opening{Mode::read_write, "Mara Kern", monday_ms};
  const QByteArray damaged = content_of(bench.path()).left(9000);
  for (const Fault fault : all_faults) {
    put_file(QString::fromStdString(bench.path()), damaged);
    int kept = 0;
    const int calls = fail_each_call(
        disk, fault, [&] { return put_back(bench.path(), backup, opening).map([](const std::string&) {}); },
        [&](bool succeeded) {
          if (!succeeded && content_of(bench.path()) == damaged) {
            static_cast<void>(got(put_back(bench.path(), backup, opening)));
          }
          const auto store = got(Store::open(bench.path(), {Mode::look_only, "", monday_ms}));
          CHECK(got(store->load(job.id())).stored.size() == 1);
          const QDir beside(QString::fromStdString(bench.path()).section('/', 0, -2));
          // What lay beside the file is kept beside it.
          const QStringList files =
              beside.entryList({"*.damaged-*"}, QDir::Files).filter(QRegularExpression("\\.damaged-[0-9]+$"));
          REQUIRE_FALSE(files.isEmpty());
          CHECK(content_of(beside.filePath(files.last()).toStdString()) == damaged);
          for (const QString& each : beside.entryList({"*.damaged-*"}, QDir::Files)) {
            QFile::remove(beside.filePath(each));
          }
          ++kept;
          put_file(QString::fromStdString(bench.path()), damaged);
        });
    CHECK(calls >= 6);
    CHECK(kept == CallsOf(fault).attempts(calls));
  }
}

}  // namespace shimwright::store
