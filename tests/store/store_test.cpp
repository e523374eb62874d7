#include "shimwright/store/store.h"

#include <thread>

#include <QFile>
#include <QFileInfo>

#include "connection.h"
#include "opening.h"
#include "schema.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

Result<std::unique_ptr<Store>> open_at(const QString& path, Mode mode = Mode::read_write) {
  return Store::open(path.toStdString(), {mode, "Mara Kern", monday_ms});
}

void write_file(const QString& path, const QByteArray& content) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(content) == content.size());
}

}  // namespace

TEST_CASE("a new store is made, for its owner alone") {
  Workbench bench;
  const auto owner_only = QFile::ReadOwner | QFile::WriteOwner | QFile::ReadUser | QFile::WriteUser;
  const auto folder_owner_only = owner_only | QFile::ExeOwner | QFile::ExeUser;
  CHECK(QFile::permissions(bench.file("workshop/bench.sqlite")) == owner_only);
  CHECK(QFile::permissions(bench.file("workshop/bench.sqlite-wal")) == owner_only);
  CHECK(QFile::permissions(bench.file("workshop")) == folder_owner_only);
  CHECK(QFile::permissions(bench.file("workshop/photos")) == folder_owner_only);
  CHECK(got(bench.store().schema_version()) == schema_steps().back().version);
  CHECK_FALSE(bench.store().looks_only());
  CHECK_FALSE(bench.store().why_look_only());
  CHECK(bench.store().path() == bench.path());
}

TEST_CASE("a path that is not absolute, or an address, is refused") {
  for (const char* path :
       {"", "bench.sqlite", "./bench.sqlite", "file:bench.sqlite", "file:///tmp/x?mode=memory", ":memory:"}) {
    INFO(path);
    CHECK(code_of(Store::open(path, {})) == "path_not_absolute");
  }
}

TEST_CASE("looking makes nothing") {
  const QTemporaryDir folder;
  const QString path = folder.filePath("none.sqlite");
  CHECK(code_of(open_at(path, Mode::look_only)) == "no_store");
  CHECK_FALSE(QFileInfo::exists(path));
  write_file(path, "");
  CHECK(code_of(open_at(path, Mode::look_only)) == "no_store");
}

TEST_CASE("what is no database is refused and left as it is") {
  const QTemporaryDir folder;
  const QString path = folder.filePath("letter.sqlite");
  write_file(path, QByteArray("Dear Sir or Madam, ") + QByteArray(500, 'x'));
  for (const Mode mode : {Mode::read_write, Mode::look_only}) {
    const auto opened = open_at(path, mode);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == "not_a_store");
    CHECK(opened.error().place == path.toStdString());
  }
  CHECK(QFileInfo(path).size() == 519);
  CHECK(code_of(open_at(folder.path())) == "cannot_open");
}

TEST_CASE("another program's database is refused and left as it is") {
  const QTemporaryDir folder;
  const QString path = folder.filePath("other.sqlite");
  {
    auto other = got(Connection::open(path, Access::make));
    went(other->run_script("CREATE TABLE song (name TEXT); PRAGMA application_id = 77; PRAGMA user_version = 1"));
  }
  const QByteArray before = [&path] {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
  }();
  CHECK(code_of(open_at(path)) == "not_a_store");
  CHECK(code_of(open_at(path, Mode::look_only)) == "not_a_store");
  QFile after(path);
  REQUIRE(after.open(QIODevice::ReadOnly));
  CHECK(after.readAll() == before);
}

TEST_CASE("a store whose end is missing is refused") {
  Workbench bench;
  bench.close();
  QFile file(bench.file("workshop/bench.sqlite"));
  REQUIRE(file.resize(file.size() - 4096));
  CHECK(code_of(open_at(file.fileName())) == "store_damaged");
  REQUIRE(file.resize(50));
  CHECK(code_of(open_at(file.fileName())) == "store_damaged");
}

TEST_CASE("a newer store opens for looking and says why") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  bench.sabotage("PRAGMA user_version = 999");
  CHECK(bench.store().looks_only());
  REQUIRE(bench.store().why_look_only());
  CHECK(bench.store().why_look_only()->text.find("newer program") != std::string::npos);
  CHECK(got(bench.store().load(job.id())).entries.size() == 1);
  CHECK(got(bench.store().schema_version()) == 999);
  CHECK_FALSE(Store::lock_holder(bench.path()));
}

TEST_CASE("a store on a network share opens for looking and says why") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  bench.close();
  for (const char* kind : {"nfs4", "cifs", "fuse.sshfs"}) {
    INFO(kind);
    const auto shared = got(open_on(kind, bench.path(), {Mode::read_write, "Mara Kern", monday_ms}));
    CHECK(shared->looks_only());
    REQUIRE(shared->why_look_only());
    CHECK(shared->why_look_only()->text.find("network share") != std::string::npos);
    CHECK(got(shared->load(job.id())).entries == job.state().entries);
    CHECK(code_of(shared->append(job.id(), {job.last()}, {}, job.state())) == "look_only");
    CHECK_FALSE(Store::lock_holder(bench.path()));
  }
  CHECK_FALSE(got(open_on("ext4", bench.path(), {Mode::read_write, "Mara Kern", monday_ms}))->looks_only());
}

TEST_CASE("no store is made on a network share") {
  const QTemporaryDir folder;
  const QString path = folder.filePath("new/bench.sqlite");
  CHECK(code_of(open_on("nfs", path.toStdString(), {Mode::read_write, "Mara Kern", monday_ms})) == "no_store");
  CHECK_FALSE(QFileInfo::exists(folder.filePath("new")));
}

TEST_CASE("two may look while one writes") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const auto first = got(open_at(bench.file("workshop/bench.sqlite"), Mode::look_only));
  const auto second = got(open_at(bench.file("workshop/bench.sqlite"), Mode::look_only));
  job.add(job::Done{{"battery-off", 1}});
  CHECK(got(first->load(job.id())).entries.size() == 2);
  CHECK(got(second->load(job.id())).entries.size() == 2);
  CHECK(first->looks_only());
  CHECK_FALSE(first->why_look_only());
}

TEST_CASE("a store is opened beside the first for another thread to write, and each sees what the other kept") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  std::int64_t seen = 0;
  std::thread([&] {
    const auto beside = got(Store::open_beside(bench.path()));
    CHECK_FALSE(beside->looks_only());
    seen = static_cast<std::int64_t>(got(beside->load(job.id())).entries.size());
    Person person = got(beside->registers().persons()).front();
    person.name = "Mara Kestrel-Vale";
    went(beside->registers().put(person, by_mk(5)));
  }).join();
  CHECK(seen == 1);
  CHECK(got(bench.store().registers().persons()).front().name == "Mara Kestrel-Vale");
  job.add(job::Done{{"battery-off", 1}});
  CHECK(Store::lock_holder(bench.path()));
}

TEST_CASE("beside the first nothing is opened that is no store of today, and none is made") {
  Workbench bench;
  CHECK(code_of(Store::open_beside("bench.sqlite")) == "path_not_absolute");
  bench.close();
  {
    auto connection = got(Connection::open(bench.file("workshop/bench.sqlite"), Access::write));
    went(connection->run_script("PRAGMA user_version = 4"));
  }
  CHECK(code_of(Store::open_beside(bench.path())) == "look_only");
  CHECK_FALSE(Store::open_beside(bench.file("none.sqlite").toStdString()));
  CHECK_FALSE(QFileInfo::exists(bench.file("none.sqlite")));
}

}  // namespace shimwright::store
