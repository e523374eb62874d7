#include "opening.h"

#include <QFile>
#include <QTemporaryDir>

#include "workbench_results.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("a file's kinship is known by its mark and version") {
  const auto connection = got(Connection::open(QStringLiteral(":memory:"), Access::make));
  CHECK(got(kinship_of(*connection)) == Kinship::empty);
  went(connection->run_script("CREATE TABLE a (b INTEGER)"));
  CHECK(code_of(kinship_of(*connection)) == "not_a_store");
  went(connection->run_script("PRAGMA application_id = 1398240116"));
  CHECK(code_of(kinship_of(*connection)) == "not_a_store");
  went(connection->run_script("PRAGMA user_version = 1"));
  CHECK(got(kinship_of(*connection)) == Kinship::ours);
  went(connection->run_script("PRAGMA user_version = 999"));
  CHECK(got(kinship_of(*connection)) == Kinship::newer);
}

TEST_CASE("what cannot be made durable is refused") {
  // A database in memory has no log on a disk.
  const auto connection = got(Connection::open(QStringLiteral(":memory:"), Access::make));
  CHECK(code_of(make_durable(*connection)) == "not_durable");
}

TEST_CASE("an empty file passes, one that is shorter than it says does not") {
  const QTemporaryDir folder;
  QFile file(folder.filePath("a.sqlite"));
  REQUIRE(file.open(QIODevice::WriteOnly));
  {
    const auto connection = got(connect_checked(file.fileName(), Access::write));
    went(connection->run_script("CREATE TABLE a (b INTEGER)"));
  }
  static_cast<void>(got(connect_checked(file.fileName(), Access::look)));
  REQUIRE(file.resize(4096));
  CHECK(code_of(connect_checked(file.fileName(), Access::look)) == "store_damaged");
  REQUIRE(file.resize(50));
  CHECK(code_of(connect_checked(file.fileName(), Access::look)) == "store_damaged");
}

TEST_CASE("what is no file or may not be read is told") {
  const QTemporaryDir folder;
  CHECK(code_of(connect_checked(folder.path(), Access::look)) == "cannot_open");
  CHECK(code_of(connect_checked(folder.filePath("none"), Access::look)) == "cannot_open");
}

}  // namespace shimwright::store
