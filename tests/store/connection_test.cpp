#include "connection.h"

#include <sqlite3.h>
#include <QSqlDatabase>
#include <QTemporaryDir>

#include "workbench_results.h"

namespace shimwright::store {

using namespace test;

namespace {

std::unique_ptr<Connection> memory() {
  return got(Connection::open(QStringLiteral(":memory:"), Access::make));
}

}  // namespace

TEST_CASE("every connection has its safeguards") {
  const auto connection = memory();
  CHECK(got(connection->value("PRAGMA foreign_keys")) == number_value(1));
  CHECK(got(connection->value("PRAGMA secure_delete")) == number_value(1));
  CHECK(got(connection->value("PRAGMA trusted_schema")) == number_value(0));
  CHECK(got(connection->value("PRAGMA cell_size_check")) == number_value(1));
  CHECK_FALSE(connection->rows("SELECT \"no such column\""));
  // Defensive: the schema's own table is not written.
  went(connection->run_script("CREATE TABLE a (b INTEGER) STRICT; PRAGMA writable_schema = ON"));
  CHECK_FALSE(connection->execute("UPDATE sqlite_schema SET sql = 'x'"));
}

TEST_CASE("no connection asks a view, maps a file into memory, or takes what is far above its own needs") {
  const QTemporaryDir folder;
  const auto connection = got(Connection::open(folder.filePath("a.sqlite"), Access::make));
  went(connection->run_script("CREATE TABLE kept (number INTEGER) STRICT; CREATE VIEW seen AS SELECT 1 AS number"));
  CHECK_FALSE(connection->rows("SELECT number FROM seen"));
  CHECK(got(connection->value("PRAGMA mmap_size")) == number_value(0));
  CHECK(sqlite3_limit(connection->handle(), SQLITE_LIMIT_LENGTH, -1) == 64 * 1024 * 1024);
  CHECK(sqlite3_limit(connection->handle(), SQLITE_LIMIT_ATTACHED, -1) == 1);
  CHECK(sqlite3_limit(connection->handle(), SQLITE_LIMIT_TRIGGER_DEPTH, -1) == 10);
  CHECK(code_of(connection->value("SELECT length(zeroblob(100000000))")) == "too_large");
  CHECK_FALSE(connection->rows("SELECT 1" + std::string(20, ' ') +
                               "UNION SELECT 1 UNION SELECT 2 UNION SELECT 3 UNION "
                               "SELECT 4 UNION SELECT 5 UNION SELECT 6 UNION SELECT 7 UNION SELECT 8 UNION SELECT 9 "
                               "UNION SELECT 10 UNION SELECT 11"));
  CHECK_FALSE(connection->rows("SELECT " + std::string(120000, ' ') + "1"));
}

TEST_CASE("the linked SQLite is the driver's") {
  const auto connection = memory();
  CHECK(got(connection->value("SELECT sqlite_source_id()")) == text_value(sqlite3_sourceid()));
}

TEST_CASE("every kind of value comes back as it went in") {
  const auto connection = memory();
  went(connection->run_script("CREATE TABLE kept (number INTEGER, text TEXT, bytes BLOB, absent TEXT) STRICT"));
  const std::vector<Row> rows = {
      {number_value(-9007199254740991), text_value("µm \"'"), Bytes{std::string("\0\xff", 2)}, Nothing()},
      {number_value(0), text_value(""), Bytes{""}, text_value("")},
  };
  for (const Row& row : rows) {
    went(connection->execute("INSERT INTO kept VALUES (?, ?, ?, ?)", row));
  }
  CHECK(got(connection->rows("SELECT * FROM kept ORDER BY number")) == rows);
  CHECK(connection->changes() == 1);
  CHECK(got(connection->value("SELECT text FROM kept WHERE number = 5")) == Value());
}

TEST_CASE("a transaction that is not committed never was") {
  const auto connection = memory();
  went(connection->run_script("CREATE TABLE kept (number INTEGER) STRICT"));
  {
    auto transaction = got(Transaction::begin(*connection));
    went(connection->execute("INSERT INTO kept VALUES (1)"));
  }
  {
    auto transaction = got(Transaction::begin(*connection));
    went(connection->execute("INSERT INTO kept VALUES (2)"));
    went(transaction.commit());
  }
  CHECK(got(connection->rows("SELECT number FROM kept")) == std::vector<Row>{{number_value(2)}});
}

TEST_CASE("a transaction within another is a part of it: taken back by itself, kept only with the whole") {
  const auto connection = memory();
  went(connection->run_script("CREATE TABLE kept (number INTEGER) STRICT"));
  const auto add = [&](int number, bool commit) {
    auto part = got(Transaction::begin(*connection));
    went(connection->execute("INSERT INTO kept VALUES (?)", {number_value(number)}));
    if (commit) {
      went(part.commit());
    }
  };
  {
    auto whole = got(Transaction::begin(*connection));
    add(1, true);
    add(2, false);
    add(3, true);
    went(whole.commit());
  }
  {
    auto whole = got(Transaction::begin(*connection));
    add(4, true);
  }
  CHECK(got(connection->rows("SELECT number FROM kept ORDER BY number")) ==
        std::vector<Row>{{number_value(1)}, {number_value(3)}});
}

TEST_CASE("a column of a strict table takes only its kind") {
  const auto connection = memory();
  went(connection->run_script("CREATE TABLE kept (number INTEGER) STRICT"));
  CHECK(code_of(connection->execute("INSERT INTO kept VALUES (?)", {text_value("many")})) == "kept_for_ever");
}

TEST_CASE("connections are gone from Qt's registry when they are closed") {
  const auto before = QSqlDatabase::connectionNames().size();
  {
    const auto one = memory();
    const auto two = memory();
    static_cast<void>(got(one->rows("SELECT 1")));
    CHECK(QSqlDatabase::connectionNames().size() == before + 2);
  }
  CHECK(QSqlDatabase::connectionNames().size() == before);
}

TEST_CASE("a file that is not there is not made for writing or looking") {
  CHECK(code_of(Connection::open(QStringLiteral("/no/such/folder/a.sqlite"), Access::look)) == "cannot_open");
}

}  // namespace shimwright::store
