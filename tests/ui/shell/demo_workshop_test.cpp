#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include <sys/mount.h>
#include <map>

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
  CHECK(shell::is_demo_workshop(**store));
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

namespace {

std::map<QString, QByteArray> files_in(const QString& folder) {
  std::map<QString, QByteArray> content;
  QDirIterator files(folder, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
  while (files.hasNext()) {
    QFile file(files.next());
    REQUIRE(file.open(QIODevice::ReadOnly));
    content[file.fileName()] = file.readAll();
  }
  return content;
}

/// A workshop's own store, filled, and the demonstration beside it.
struct BothStores {
  QTemporaryDir folder;
  shell::StorePlaces places{folder.filePath("workshop.shimwright").toStdString(),
                            folder.filePath("demo/workshop.shimwright").toStdString()};
  job::Moment now{1795770000000, 0, false};

  BothStores() {
    auto own = store::Store::open(places.own, {store::Mode::read_write, "", 1});
    REQUIRE(own);
    store::IdSource ids;
    REQUIRE(shell::begin_workshop(**own, {"Own Workshop", "1 Lane", "Ada Bench", "AB"}, ids, now));
  }
};

}  // namespace

TEST_CASE("the demonstration is deleted to the last file, and nothing of the own store is touched") {
  BothStores both;
  const auto before = files_in(both.folder.path());
  REQUIRE(shell::make_demo_workshop(both.places.demo, both.now));
  CHECK(files_in(both.folder.path()).size() > before.size());
  REQUIRE(shell::delete_demo_workshop(both.places));
  CHECK_FALSE(QFileInfo::exists(both.folder.filePath("demo")));
  CHECK(files_in(both.folder.path()) == before);
  CHECK(shell::delete_demo_workshop(both.places));  // there is none any more
  CHECK(files_in(both.folder.path()) == before);
}

TEST_CASE("the demonstration stays one whatever its workshop is called") {
  BothStores both;
  REQUIRE(shell::make_demo_workshop(both.places.demo, both.now));
  {
    auto demo = store::Store::open(both.places.demo, {store::Mode::read_write, "", 1});
    REQUIRE(demo);
    store::Workshop renamed = **(*demo)->registers().workshop();
    renamed.name = "Another";
    REQUIRE((*demo)->registers().put(renamed, {"", both.now}));
    CHECK(shell::is_demo_workshop(**demo));
  }
  CHECK(shell::delete_demo_workshop(both.places));
  CHECK_FALSE(QFileInfo::exists(both.folder.filePath("demo")));
}

TEST_CASE("a folder that holds the own store, or another workshop, is never deleted") {
  BothStores both;
  const auto before = files_in(both.folder.path());
  const auto refused = [](const shell::StorePlaces& places) {
    const auto deleted = shell::delete_demo_workshop(places);
    return deleted ? std::string() : deleted.error().code;
  };
  CHECK(refused({both.places.own, both.folder.filePath("demo.shimwright").toStdString()}) == "demo_not_apart");
  CHECK(refused({both.places.own, both.places.own}) == "demo_not_apart");
  CHECK(refused({"/elsewhere/own.shimwright", both.places.own}) == "not_the_demo");
  // Looking at a store leaves SQLite's empty log beside it; what was there is the same.
  const auto after = files_in(both.folder.path());
  for (const auto& [name, content] : before) {
    REQUIRE(after.count(name) == 1);
    CHECK(after.at(name) == content);
  }
}

TEST_CASE("a demonstration of which something cannot be taken away says so") {
  BothStores both;
  REQUIRE(shell::make_demo_workshop(both.places.demo, both.now));
  // What another program holds there: nobody can take away a folder that something is mounted on, and only who is not
  // the system's administrator is kept out by the rights of one.
  const QString held = both.folder.filePath("demo/held");
  REQUIRE(QDir().mkpath(held + "/within"));
  const bool mounted = ::mount("tmpfs", QFile::encodeName(held).constData(), "tmpfs", 0, "size=1m") == 0;
  if (!mounted) {
    REQUIRE(QFile::setPermissions(held, QFileDevice::ReadOwner | QFileDevice::ExeOwner));
  }
  const auto deleted = shell::delete_demo_workshop(both.places);
  if (mounted) {
    CHECK(::umount(QFile::encodeName(held).constData()) == 0);
  } else {
    QFile::setPermissions(held, QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner);
  }
  REQUIRE_FALSE(deleted);
  CHECK(deleted.error().code == "cannot_delete");
}

TEST_CASE("a demonstration that is open elsewhere is not deleted") {
  BothStores both;
  REQUIRE(shell::make_demo_workshop(both.places.demo, both.now));
  const auto open = store::Store::open(both.places.demo, {store::Mode::read_write, "Mara Kestrel", 1});
  REQUIRE(open);
  const auto deleted = shell::delete_demo_workshop(both.places);
  REQUIRE_FALSE(deleted);
  CHECK(deleted.error().code == "locked");
  CHECK(QFileInfo::exists(QString::fromStdString(both.places.demo)));
}
