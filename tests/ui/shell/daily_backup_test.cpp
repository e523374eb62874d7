#include "shimwright/shell/daily_backup.h"

#include <QFile>
#include <QSignalSpy>
#include <catch2/catch.hpp>

#include "shell_bench.h"
#include "shimwright/workshop/data_ways.h"

using namespace shimwright;

namespace {

constexpr std::int64_t an_hour = 60LL * 60 * 1000;

struct BackupBench {
  test::UiBench bench;
  std::shared_ptr<std::int64_t> now = std::make_shared<std::int64_t>(1795770000000);
  shell::Settings settings{test::settings_file(bench.file("settings.ini"))};
  shell::DailyBackup backup{bench.store().path(), [now = now] { return job::Moment{*now, 0, false}; }, settings};
  QSignalSpy done{&backup, &shell::DailyBackup::done};
  QSignalSpy failed{&backup, &shell::DailyBackup::failed};

  BackupBench() { settings.use_store(bench.store().path()); }
};

}  // namespace

TEST_CASE("a backup is made in the background once a day") {
  BackupBench it;
  CHECK(it.backup.due());
  it.backup.start_if_due();
  CHECK(it.backup.running());
  REQUIRE(QTest::qWaitFor([&] { return it.done.count() == 1; }, 20000));
  REQUIRE(it.settings.last_backup());
  CHECK(QFile::exists(it.settings.last_backup()->file));
  CHECK_FALSE(it.backup.due());
  *it.now += 23 * an_hour;
  CHECK_FALSE(it.backup.due());
  *it.now += an_hour;
  CHECK(it.backup.due());
}

TEST_CASE("a backup that is gone is due again") {
  BackupBench it;
  it.settings.set_last_backup({*it.now, it.bench.file("gone.shimwright")});
  CHECK(it.backup.due());
}

TEST_CASE("a failure is told, and the next try waits an hour") {
  BackupBench it;
  QFile in_the_way(it.bench.file("no-folder"));
  REQUIRE(in_the_way.open(QIODevice::WriteOnly));
  it.settings.set_backup_folder(it.bench.file("no-folder"));
  it.backup.start_if_due();
  REQUIRE(QTest::qWaitFor([&] { return it.failed.count() == 1; }, 20000));
  CHECK(it.done.count() == 0);
  CHECK_FALSE(it.backup.due());
  *it.now += an_hour;
  CHECK(it.backup.due());
}

TEST_CASE("seven files, one for each day of the week") {
  const job::Moment friday{1795770000000, 0, false};
  const QString file = workshop::backup_file("/backups", "/stores/bench.shimwright", friday);
  CHECK(file == "/backups/bench-day-5.shimwright");
  const job::Moment later{friday.at_ms + 24 * an_hour, 0, false};
  CHECK(workshop::backup_file("/backups", "/stores/bench.shimwright", later) == "/backups/bench-day-6.shimwright");
}
