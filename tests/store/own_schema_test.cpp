#include "own_schema.h"

#include <QElapsedTimer>
#include <QFile>

#include <sqlite3.h>

#include "schema.h"
#include "shimwright/store/check.h"
#include "shimwright/store/restore.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* endless_view =
    "AS WITH RECURSIVE endless (n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM endless) SELECT n AS id FROM endless";

/// Opened for looking and for writing after somebody else ran this on it.
std::vector<std::string> codes_after(const QByteArray& script) {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  bench.close();
  auto theirs = got(Connection::open(QString::fromStdString(bench.path()), Access::write));
  sqlite3_db_config(theirs->handle(), SQLITE_DBCONFIG_ENABLE_VIEW, 1, nullptr);
  sqlite3_db_config(theirs->handle(), SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
  went(theirs->run_script("PRAGMA foreign_keys = OFF;" + script));
  theirs.reset();
  std::vector<std::string> codes;
  for (const Mode mode : {Mode::look_only, Mode::read_write}) {
    auto opened = Store::open(bench.path(), {mode, "test", monday_ms});
    codes.push_back(opened ? std::string("opened") : opened.error().code);
    if (opened) {
      CHECK(got((*opened)->jobs()).size() == 1);
    }
  }
  return codes;
}

using Codes = std::vector<std::string>;

}  // namespace

TEST_CASE("a store in which something acts that is none of ours is not opened") {
  const Codes refused = {"store_damaged", "store_damaged"};
  CHECK(codes_after("CREATE TRIGGER planted AFTER INSERT ON register_change BEGIN DELETE FROM person; END") == refused);
  CHECK(codes_after("CREATE VIRTUAL TABLE planted USING fts5(a)") == refused);
  CHECK(codes_after("DROP TRIGGER entry_is_not_changed; CREATE TRIGGER entry_is_not_changed BEFORE UPDATE ON entry "
                    "BEGIN SELECT 1; END") == refused);
  CHECK(codes_after("PRAGMA writable_schema = ON; INSERT INTO sqlite_schema VALUES ('index', 'quiet', 'person', 0, "
                    "'CREATE TRIGGER quiet AFTER INSERT ON person BEGIN DELETE FROM entry; END')") == refused);
}

TEST_CASE("a store whose tables are others is not opened, and answers at once") {
  QElapsedTimer since;
  since.start();
  const Codes refused = {"store_damaged", "store_damaged"};
  for (const char* table : {"job", "store", "person", "register_change", "search_suffix"}) {
    const QByteArray name(table);
    CHECK(codes_after("DROP TABLE " + name + "; CREATE VIEW " + name + " " + endless_view) == refused);
    CHECK(codes_after("DROP TABLE " + name) == refused);
    CHECK(codes_after("ALTER TABLE " + name + " ADD COLUMN more INTEGER") == refused);
  }
  CHECK(since.elapsed() < 60000);
}

TEST_CASE("what a person added beside our tables does not keep a store from being opened") {
  const Codes opened = {"opened", "opened"};
  CHECK(codes_after("CREATE TABLE own_list (a INTEGER)") == opened);
  CHECK(codes_after("CREATE INDEX own_index ON measurement (channel)") == opened);
  CHECK(codes_after(QByteArray("CREATE VIEW own_view ") + endless_view) == opened);
  CHECK(codes_after("DROP TRIGGER entry_is_not_changed") == opened);
}

TEST_CASE("a store made today is known by the digest of its tables") {
  Workbench bench;
  bench.close();
  auto made = got(Connection::open(QString::fromStdString(bench.path()), Access::look));
  // After a new step of the schema this says what `newest_schema` becomes.
  CHECK(schema_digest(got(schema_texts(*made))) == newest_schema);
  CHECK(schema_digest({{text_value("ab"), text_value("c")}}) != schema_digest({{text_value("a"), text_value("bc")}}));
}

TEST_CASE("a newer store is looked at with the tables it has, but for virtual ones") {
  CHECK(codes_after(
            "ALTER TABLE person ADD COLUMN more INTEGER; CREATE TRIGGER newer AFTER INSERT ON person BEGIN SELECT 1; "
            "END; PRAGMA user_version = 99") == Codes{"opened", "opened"});
  CHECK(codes_after("CREATE VIRTUAL TABLE newer USING fts5(a); PRAGMA user_version = 99") ==
        Codes{"store_damaged", "store_damaged"});
}

TEST_CASE("of a backup SQLite is asked first whether its structure holds") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  bench.close();
  const std::string backup = bench.file("backup.sqlite").toStdString();
  QFile::copy(QString::fromStdString(bench.path()), QString::fromStdString(backup));
  {
    auto theirs = got(Connection::open(QString::fromStdString(backup), Access::write));
    sqlite3_db_config(theirs->handle(), SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
    // Two tables on the same pages: each by itself could be read.
    went(
        theirs->run_script("PRAGMA writable_schema = ON; UPDATE sqlite_schema SET rootpage = (SELECT rootpage FROM "
                           "sqlite_schema WHERE name = 'deviation') WHERE name = 'withdrawal'"));
  }
  const auto looked = look_at_backup(bench.file("none.sqlite").toStdString(), backup);
  REQUIRE_FALSE(looked);
  CHECK(looked.error().code == "backup_wrong");
  CHECK(looked.error().in_english().find('\n') == std::string::npos);
}

}  // namespace shimwright::store
