// Every call of every operation that changes the disk fails once, in every way a disk fails. Then: one sentence,
// nothing half written, all of before is there, and the same goes through on the same store once the fault is gone.
#include <functional>
#include <set>

#include <QDir>
#include <QFile>

#include "connection.h"
#include "copy.h"
#include "each_call.h"
#include "opening.h"
#include "sample_photos.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

int fail_each_call(FaultyDisk& disk, Fault fault, const std::function<Result<void>()>& attempt,
                   const std::function<void(bool succeeded)>& after) {
  static const std::set<std::string> told = {"disk_full", "disk_fault",  "cannot_open",
                                             "look_only", "not_durable", "schema_step"};
  return test::fail_each_call(disk, fault, attempt, after, told);
}

Result<void> no_content(const Result<BackupReport>& result) {
  return result ? Result<void>() : tl::make_unexpected(result.error());
}

void is_stored(Workbench& bench, const TestJob& job) {
  const auto look = got(Store::open(bench.path(), {Mode::look_only, "", monday_ms}));
  CHECK(got(look->load(job.id())).entries == job.state().entries);
}

void write_file(const QString& path, const QByteArray& content) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(content) == content.size());
}

}  // namespace

TEST_CASE("an entry that meets a fault of the disk is not there, and goes in once the disk is whole") {
  FaultyDisk disk;
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  // Both ways: with the log emptied after each entry, and not.
  const int pages = GENERATE(1, 1000);
  went(bench.store().connection().run_script("PRAGMA wal_autocheckpoint = " + QByteArray::number(pages)));
  for (const Fault fault : all_faults) {
    const job::EntryBody body = job::Done{{"battery-off", 1}};
    const int calls = fail_each_call(
        disk, fault, [&] { return job.try_to_add({body}); },
        [&](bool succeeded) {
          is_stored(bench, job);
          if (!succeeded) {
            job.add(body);
            is_stored(bench, job);
          }
        });
    CHECK(calls >= 2);
  }
  CHECK(got(check(bench.store())).in_order());
}

TEST_CASE("a new store that meets a fault of the disk is made at the next try") {
  FaultyDisk disk;
  for (const Fault fault : all_faults) {
    const QTemporaryDir folder;
    int made = 0;
    std::unique_ptr<Store> store;
    std::string path;
    const int calls = fail_each_call(
        disk, fault,
        [&]() -> Result<void> {
          path = folder.filePath(QStringLiteral("%1/bench.sqlite").arg(++made)).toStdString();
          auto opened = Store::open(path, {Mode::read_write, "Mara Kern", monday_ms});
          if (!opened) {
            return tl::make_unexpected(opened.error());
          }
          store = std::move(*opened);
          return {};
        },
        [&](bool succeeded) {
          if (!succeeded) {
            store = got(Store::open(path, {Mode::read_write, "Mara Kern", monday_ms}));
          }
          CHECK_FALSE(store->looks_only());
          CHECK(got(check(*store)).in_order());
          store.reset();
        });
    CHECK(calls >= 10);
  }
}

TEST_CASE("a store that meets a fault on opening has lost nothing") {
  FaultyDisk disk;
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  for (const Fault fault : all_faults) {
    std::unique_ptr<Store> store;
    const auto attempt = [&]() -> Result<void> {
      auto opened = Store::open(bench.path(), {Mode::read_write, "Mara Kern", monday_ms});
      if (!opened) {
        return tl::make_unexpected(opened.error());
      }
      store = std::move(*opened);
      return {};
    };
    bench.close();
    static_cast<void>(fail_each_call(disk, fault, attempt, [&](bool) {
      store.reset();
      is_stored(bench, job);
    }));
    bench.open();
    CHECK(got(check(bench.store())).in_order());
  }
}

TEST_CASE("a photo that meets a fault of the disk is kept at the next try") {
  FaultyDisk disk;
  Workbench bench;
  int taken = 0;
  for (const Fault fault : all_faults) {
    std::string source;
    const auto keep = [&] { return bench.store().keep_photo(source); };
    const auto attempt = [&]() -> Result<void> {
      source = bench.file(QStringLiteral("%1.jpg").arg(++taken)).toStdString();
      write_file(QString::fromStdString(source), bare_jpeg(QByteArray(64, char(taken))));  // 70 bytes
      auto kept = keep();
      return kept ? Result<void>() : tl::make_unexpected(kept.error());
    };
    const int calls = fail_each_call(disk, fault, attempt, [&](bool) {
      const KeptPhoto photo = got(keep());
      QFile file(QString::fromStdString(bench.store().photo_path(photo.sha256)));
      REQUIRE(file.open(QIODevice::ReadOnly));
      CHECK(file.size() == 70);
    });
    CHECK(calls >= 3);
  }
}

TEST_CASE("a backup that meets a fault leaves the one before it, and the store takes entries meanwhile") {
  FaultyDisk disk;
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  write_file(bench.file("a.jpg"), bare_jpeg("pack"));
  const KeptPhoto photo = got(bench.store().keep_photo(bench.file("a.jpg").toStdString()));
  job.add(job::PhotoTaken{{"received-photos", 1}, photo.sha256, photo.media_type, photo.bytes, ""});
  const std::string out = bench.file("backups/monday.sqlite").toStdString();
  static_cast<void>(got(back_up(bench.path(), out)));
  for (const Fault fault : all_faults) {
    QDir(bench.file("backups/photos")).removeRecursively();
    const int calls = fail_each_call(
        disk, fault, [&] { return no_content(back_up(bench.path(), out)); },
        [&](bool) {
          const auto backup = got(Store::open(out, {Mode::look_only, "", monday_ms}));
          CHECK(got(backup->load(job.id())).entries.size() >= 2);
        });
    CHECK(calls >= 10);
    job.add(job::Done{{"battery-off", 1}});
    static_cast<void>(got(back_up(bench.path(), out)));
    CHECK(got(check(*got(Store::open(out, {Mode::look_only, "", monday_ms})))).in_order());
    CHECK(QDir(bench.file("backups")).entryList(QDir::Files) == QStringList{"monday.sqlite"});
  }
}

TEST_CASE("a schema step that meets a fault is not taken, or whole, and the older file is kept") {
  FaultyDisk disk;
  for (const Fault fault : all_faults) {
    Workbench bench;
    TestJob job(bench, "10", "2026-0147");
    job.open();
    std::vector<SchemaStep> steps = schema_steps();
    Connection& connection = bench.store().connection();
    const int calls = fail_each_call(
        disk, fault,
        [&] {
          // As large as the one before it, so that the number of calls stays the same.
          steps.push_back({steps.back().version + 1,
                           "DROP TABLE IF EXISTS later; CREATE TABLE later (a INTEGER NOT NULL) STRICT;"});
          return bring_up_to_date(connection, Kinship::ours, steps);
        },
        [&](bool) {
          went(bring_up_to_date(connection, Kinship::ours, steps));
          CHECK(got(schema_version(connection)) == steps.back().version);
          CHECK(QFile::exists(connection.path() + QStringLiteral(".schema-%1").arg(steps.back().version - 1)));
        });
    CHECK(calls >= 8);
    is_stored(bench, job);
  }
}

TEST_CASE("erasing and registering that meet a fault go through at the next try") {
  FaultyDisk disk;
  Workbench bench;
  for (const Fault fault : all_faults) {
    const Person person{rt, "Rui Tavares", "RT", std::nullopt, true};
    static_cast<void>(fail_each_call(
        disk, fault, [&] { return bench.store().registers().put(person, by_mk()); },
        [&](bool) { CHECK(got(bench.store().registers().persons()).size() == 2); }));
    TestJob job(bench, std::to_string(10 + int(fault)), "2026-0147");
    job.open();
    const std::string id = std::get<job::Opened>(job.state().entries.front().body).plate->id;
    static_cast<void>(fail_each_call(
        disk, fault, [&] { return bench.store().erase_private_text(id, by_mk()); },
        [&](bool) { CHECK(got(check(bench.store())).in_order()); }));
    CHECK_FALSE(got(bench.store().load(job.id())).private_texts.at(id));
  }
}

}  // namespace shimwright::store
