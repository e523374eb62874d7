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
  went(check_file(file.fileName()));
  const auto connection = got(Connection::open(file.fileName(), Access::write));
  went(connection->run_script("CREATE TABLE a (b INTEGER)"));
  went(check_file(file.fileName()));
  REQUIRE(file.resize(4096));
  CHECK(code_of(check_file(file.fileName())) == "store_damaged");
}

}  // namespace shimwright::store
