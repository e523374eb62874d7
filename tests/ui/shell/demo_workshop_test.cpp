#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "shimwright/shell/stores.h"
#include "shimwright/store/check.h"
#include "shimwright/store/registers.h"

using namespace shimwright;

TEST_CASE("the demonstration workshop has jobs in work and one that is done, all before now") {
  const QTemporaryDir folder;
  const std::string path = folder.filePath("demo/workshop.shimwright").toStdString();
  const job::Moment now{1764000000000, 0, false};  // a year before the scripts' days
  REQUIRE(shell::make_demo_workshop(path, now));
  CHECK_FALSE(QDir(folder.filePath("demo.new")).exists());
  auto store = store::Store::open(path, {store::Mode::look_only, "", now.at_ms});
  REQUIRE(store);
  const auto jobs = (*store)->jobs();
  REQUIRE(jobs);
  CHECK(jobs->size() == 4);
  for (const store::JobSummary& each : *jobs) {
    INFO(each.number);
    CHECK(each.last_at_ms <= now.at_ms);
  }
  const auto open = (*store)->open_jobs();
  REQUIRE(open);
  CHECK(open->size() == 3);
  const auto workshop = (*store)->registers().workshop();
  REQUIRE(workshop);
  REQUIRE(*workshop);
  CHECK(shell::is_demo_workshop(**workshop));
  const auto report = store::check(**store);
  REQUIRE(report);
  CHECK(report->in_order());
}

TEST_CASE("a demonstration that was cut off is made anew; one that is there is left alone") {
  const QTemporaryDir folder;
  const job::Moment now{1795770000000, 0, false};
  REQUIRE(QDir(folder.path()).mkpath("demo.new/rest"));
  REQUIRE(QDir(folder.path()).mkpath("demo/own"));
  const auto made = shell::make_demo_workshop(folder.filePath("demo/workshop.shimwright").toStdString(), now);
  REQUIRE_FALSE(made);
  CHECK(made.error().code == "cannot_open");
  CHECK(QDir(folder.filePath("demo/own")).exists());
}
