#include "backup_work.h"

#include <QFile>
#include <QTest>
#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

namespace {

struct Outcome {
  explicit Outcome(workshop::BackupWork& work) {
    QObject::connect(&work, &workshop::BackupWork::made,
                     [this](const store::BackupReport& report) { entries = report.entries; });
    QObject::connect(&work, &workshop::BackupWork::failed,
                     [this](const Error& error) { code = QString::fromStdString(error.code); });
  }
  std::int64_t entries = 0;
  QString code;
};

}  // namespace

TEST_CASE("a backup is made in the background and checked") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  workshop::BackupWork work;
  const Outcome outcome(work);
  work.begin(bench.store().path(), bench.file("out/copy.shimwright").toStdString());
  CHECK(work.runs());
  REQUIRE(QTest::qWaitFor([&] { return !work.runs(); }, 60000));
  CHECK(outcome.code == "");
  CHECK(outcome.entries > 20);
  CHECK(QFile::exists(bench.file("out/copy.shimwright")));
}

TEST_CASE("a backup that cannot be made says why") {
  test::UiBench bench;
  workshop::BackupWork work;
  const Outcome outcome(work);
  work.begin(bench.store().path(), bench.store().path());
  REQUIRE(QTest::qWaitFor([&] { return !work.runs(); }, 60000));
  CHECK(outcome.code == "backup_in_the_way");
}

TEST_CASE("closed while a backup is made, it waits for the thread and nothing is called afterwards") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  {
    workshop::BackupWork work;
    work.begin(bench.store().path(), bench.file("out/copy.shimwright").toStdString());
    work.stop();
  }
  QCoreApplication::processEvents();
  CHECK(bench.store().job_count());
}
