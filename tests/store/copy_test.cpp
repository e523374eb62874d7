#include "copy.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include "workbench_results.h"

namespace shimwright::store {

using namespace test;

namespace {

std::unique_ptr<Connection> source(const QTemporaryDir& folder) {
  auto connection = got(Connection::open(folder.filePath("source.sqlite"), Access::make));
  went(connection->run_script("CREATE TABLE kept (number INTEGER) STRICT; INSERT INTO kept VALUES (7)"));
  return connection;
}

QStringList files_in(const QTemporaryDir& folder) {
  return QDir(folder.path()).entryList(QDir::Files, QDir::Name);
}

}  // namespace

TEST_CASE("a copy is whole, for its owner alone, and leaves nothing beside it") {
  const QTemporaryDir folder;
  const auto connection = source(folder);
  const QString out = folder.filePath("copy.sqlite");
  went(lay_copy(*connection, out));
  CHECK(files_in(folder) == QStringList{"copy.sqlite", "source.sqlite"});
  CHECK(QFile::permissions(out) == (QFile::ReadOwner | QFile::WriteOwner | QFile::ReadUser | QFile::WriteUser));
  const auto copy = got(Connection::open(out, Access::look));
  CHECK(got(copy->value("SELECT number FROM kept")) == number_value(7));
}

TEST_CASE("a copy that does not pass never takes the name") {
  const QTemporaryDir folder;
  const auto connection = source(folder);
  const QString out = folder.filePath("copy.sqlite");
  went(lay_copy(*connection, out));
  went(connection->execute("INSERT INTO kept VALUES (8)"));
  const auto laid = lay_copy(*connection, out, [](Connection& copy) -> Result<void> {
    CHECK(got(copy.value("SELECT count(*) FROM kept")) == number_value(2));
    return refuse("backup_wrong", "", "wrong");
  });
  CHECK(code_of(laid) == "backup_wrong");
  CHECK(files_in(folder) == QStringList{"copy.sqlite", "source.sqlite"});
  const auto copy = got(Connection::open(out, Access::look));
  CHECK(got(copy->value("SELECT count(*) FROM kept")) == number_value(1));
}

TEST_CASE("an unfinished copy of before is thrown away") {
  const QTemporaryDir folder;
  const auto connection = source(folder);
  const QString out = folder.filePath("copy.sqlite");
  QFile left(out + ".unfinished");
  REQUIRE(left.open(QIODevice::WriteOnly));
  REQUIRE(left.write("half a database") > 0);
  left.close();
  went(lay_copy(*connection, out));
  CHECK(files_in(folder) == QStringList{"copy.sqlite", "source.sqlite"});
}

TEST_CASE("a copy to a folder that is not there is refused") {
  const QTemporaryDir folder;
  const auto connection = source(folder);
  CHECK(code_of(lay_copy(*connection, folder.filePath("no/such/copy.sqlite"))) == "cannot_open");
}

TEST_CASE("a row that points at nothing is a fault of the file") {
  const QTemporaryDir folder;
  const auto connection = source(folder);
  CHECK(got(fault_of_file(*connection)) == std::nullopt);
  went(
      connection->run_script("PRAGMA foreign_keys = OFF; CREATE TABLE a (b INTEGER PRIMARY KEY) STRICT; CREATE TABLE c "
                             "(d INTEGER REFERENCES a (b)) STRICT; INSERT INTO c VALUES (5)"));
  CHECK(got(fault_of_file(*connection)) == std::optional<std::string>("c"));
}

}  // namespace shimwright::store
