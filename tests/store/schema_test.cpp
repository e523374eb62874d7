#include "schema.h"

#include <QFileInfo>

#include "opening.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

std::vector<SchemaStep> three_steps() {
  return {{1, "CREATE TABLE one (a INTEGER) STRICT;"},
          {2, "CREATE TABLE two (a INTEGER) STRICT; INSERT INTO two VALUES (2);"},
          {3, "CREATE TABLE three (a INTEGER) STRICT;"}};
}

std::unique_ptr<Connection> memory() {
  return got(Connection::open(QStringLiteral(":memory:"), Access::make));
}

Value table_count(Connection& connection) {
  return got(connection.value("SELECT count(*) FROM sqlite_schema WHERE type = 'table'"));
}

}  // namespace

TEST_CASE("each step is taken once, in order") {
  const auto connection = memory();
  went(take_steps(*connection, three_steps()));
  CHECK(got(schema_version(*connection)) == 3);
  CHECK(table_count(*connection) == number_value(3));
  went(take_steps(*connection, three_steps()));
  CHECK(got(connection->value("SELECT count(*) FROM two")) == number_value(1));
  CHECK(got(connection->value("PRAGMA application_id")) == number_value(application_id));
}

TEST_CASE("a step that fails half-way leaves the version before it") {
  const auto whole = three_steps();
  for (std::size_t broken = 0; broken < whole.size(); ++broken) {
    auto steps = whole;
    steps[broken].sql += " INSERT INTO no_such_table VALUES (1);";
    const auto connection = memory();
    const auto taken = take_steps(*connection, steps);
    REQUIRE_FALSE(taken);
    CHECK(taken.error().code == "schema_step");
    CHECK(taken.error().place.rfind(std::to_string(steps[broken].version) + ": ", 0) == 0);
    CHECK(taken.error().in_english().find("no_such_table") != std::string::npos);
    CHECK(got(schema_version(*connection)) == static_cast<int>(broken));
    CHECK(table_count(*connection) == number_value(static_cast<std::int64_t>(broken)));
    went(take_steps(*connection, whole));
    CHECK(got(schema_version(*connection)) == 3);
  }
}

TEST_CASE("every shipped step, failing at its end, leaves the version before it") {
  const auto whole = schema_steps();
  REQUIRE_FALSE(whole.empty());
  for (std::size_t broken = 0; broken < whole.size(); ++broken) {
    CHECK(whole[broken].version == static_cast<int>(broken) + 1);
    auto steps = whole;
    steps[broken].sql += " INSERT INTO no_such_table VALUES (1);";
    const auto connection = memory();
    CHECK(code_of(take_steps(*connection, steps)) == "schema_step");
    CHECK(got(schema_version(*connection)) == static_cast<int>(broken));
  }
}

TEST_CASE("all tables are strict, and none has rows without a key of its own") {
  const auto connection = memory();
  went(take_steps(*connection, schema_steps()));
  const auto tables =
      got(connection->rows("SELECT name, strict, wr FROM pragma_table_list WHERE schema = 'main' AND "
                           "name NOT LIKE 'sqlite\\_%' ESCAPE '\\'"));
  CHECK(tables.size() > 20);
  for (const Row& table : tables) {
    INFO(text_in(table, 0));
    CHECK(number_in(table, 1) == 1);
    CHECK(number_in(table, 2) == 1);
  }
}

TEST_CASE("an older store is copied before it is brought up to date") {
  const QTemporaryDir folder;
  const QString path = folder.filePath("old.sqlite");
  const auto connection = got(Connection::open(path, Access::make));
  went(make_durable(*connection));
  auto steps = three_steps();
  went(take_steps(*connection, {steps[0]}));
  went(connection->execute("INSERT INTO one VALUES (11)"));

  steps[2].sql = "no sql";
  CHECK(code_of(bring_up_to_date(*connection, Kinship::ours, steps)) == "schema_step");
  CHECK(got(schema_version(*connection)) == 2);
  const auto copy = got(Connection::open(path + ".schema-1", Access::look));
  CHECK(got(schema_version(*copy)) == 1);
  CHECK(got(copy->value("SELECT a FROM one")) == number_value(11));

  went(bring_up_to_date(*connection, Kinship::ours, three_steps()));
  CHECK(got(schema_version(*connection)) == 3);
  CHECK(QFileInfo::exists(path + ".schema-2"));
}

}  // namespace shimwright::store
