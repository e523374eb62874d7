#include "projections.h"

#include <set>

#include <catch2/catch.hpp>

#include "sample_entries.h"
#include "schema.h"
#include "workbench_results.h"

namespace shimwright::store {

using namespace test;

namespace {

std::vector<ProjectedRow> rows_of(const job::EntryBody& body) {
  return projected_rows("job", {7, {}, "person", body});
}

Row values_of(const job::EntryBody& body, std::size_t row = 0) {
  const auto rows = rows_of(body);
  REQUIRE(rows.size() > row);
  return rows[row].values;
}

}  // namespace

TEST_CASE("each table is as the schema has it") {
  const auto connection = got(Connection::open(QStringLiteral(":memory:"), Access::make));
  went(take_steps(*connection, schema_steps()));
  for (const ProjectionTable& table : projection_tables()) {
    std::vector<std::string> columns;
    for (const Row& row : got(connection->rows("SELECT name FROM pragma_table_info(?)", {text_value(table.name)}))) {
      columns.push_back(text_in(row, 0));
    }
    INFO(table.name);
    CHECK(std::vector<std::string>(table.columns.begin(), table.columns.end()) == columns);
    CHECK(got(connection->rows(select_from(table), {text_value("none")})).empty());
  }
}

TEST_CASE("every row has a value for each column of its table, and every table gets a row") {
  std::set<std::string_view> filled;
  for (const job::EntryBody& body : job::test::sample_bodies()) {
    for (const ProjectedRow& row : rows_of(body)) {
      CHECK(row.values.size() == row.table->columns.size());
      CHECK(row.values[0] == text_value("job"));
      CHECK(row.values[1] == number_value(7));
      filled.insert(row.table->name);
    }
  }
  CHECK(filled.size() == projection_tables().size());
}

TEST_CASE("a run keeps its numbers as typed and the float that follows") {
  job::FloatRun run;
  run.at = {"lower-float", 2};
  run.rest = job::test::millimetres(20);
  run.lifted = job::test::millimetres(740);
  CHECK(values_of(run) == Row{text_value("job"), number_value(7), text_value("lower-float"), number_value(2),
                              text_value("lower"), number_value(0), number_value(1), number_value(1), number_value(20),
                              number_value(740), Value(), number_value(720), text_value("mm"), Value()});
}

TEST_CASE("every number of an entry becomes a measurement, each with its place") {
  const auto rows = rows_of(job::DepthsRead{{"d", 1},
                                            job::Side::upper,
                                            {job::test::millimetres(61240), job::test::millimetres(61260)},
                                            job::test::millimetres(20000),
                                            job::test::millimetres(-120),
                                            {}});
  std::vector<std::string> channels;
  for (const ProjectedRow& row : rows) {
    CHECK(row.values[2] == number_value(static_cast<std::int64_t>(channels.size()) + 1));
    channels.push_back(text_in(row.values, 5));
  }
  CHECK(channels == std::vector<std::string>{"depth-1", "depth-2", "reference", "stamp"});
}

TEST_CASE("a measurement that is of no step, and one with limit and attempt") {
  job::Opened opened = job::test::sample_opened();
  CHECK(values_of(opened)[3] == Value());
  CHECK(values_of(opened)[5] == text_value("odometer"));
  opened.odometer.reset();
  CHECK(rows_of(opened).empty());

  const Row peak = values_of(job::PeakRead{{"press-peak", 1}, 2, job::test::sample_torque(), 3});
  CHECK(peak[9] == text_value("within"));
  CHECK(peak[10] == Value());
  CHECK(peak[11] == number_value(12000));
  CHECK(peak[13] == number_value(2));
}

TEST_CASE("values before and after a teach-in are told apart") {
  const job::TeachInTried tried{
      {"t", 1}, 1, true, {{"touch", job::test::millimetres(8400), job::test::sample_thickness()}, {"none", {}, {}}},
      "",       ""};
  CHECK(rows_of(tried).size() == 2);
  CHECK(values_of(tried, 0)[5] == text_value("touch.before"));
  CHECK(values_of(tried, 1)[5] == text_value("touch.after"));
}

TEST_CASE("the statements name every column") {
  CHECK(insert_into(projection_tables().back()) ==
        "INSERT INTO withdrawal (job, seq, entry, reason) VALUES (?, ?, ?, ?)");
  CHECK(select_from(projection_tables().back()) ==
        "SELECT job, seq, entry, reason FROM withdrawal WHERE job = ? ORDER BY seq");
}

}  // namespace shimwright::store
