#include "shimwright/record/measurement_table.h"

#include <algorithm>

#include <rapidcheck.h>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "sample_job.h"
#include "shimwright/json/canonical.h"
#include "shimwright/record/measurements.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

using Cells = std::vector<std::string>;

/// Reads CSV as RFC 4180 has it: every line ends with CR and LF, and a quotation mark in quotation marks is two.
std::vector<Cells> lines_of(const std::string& csv) {
  std::vector<Cells> lines(1, Cells(1));
  bool quoted = false;
  for (std::size_t at = 0; at < csv.size(); ++at) {
    const char each = csv[at];
    std::string& cell = lines.back().back();
    if (quoted && each == '"' && at + 1 < csv.size() && csv[at + 1] == '"') {
      cell += csv[++at];
    } else if (each == '"') {
      quoted = !quoted;
    } else if (!quoted && each == ',') {
      lines.back().emplace_back();
    } else if (!quoted && each == '\r') {
      REQUIRE(csv.at(++at) == '\n');
      lines.emplace_back(1);
    } else {
      REQUIRE((quoted || each != '\n'));
      cell += each;
    }
  }
  REQUIRE_FALSE(quoted);
  REQUIRE(lines.back() == Cells(1));
  lines.pop_back();
  return lines;
}

std::size_t column(const std::string& head) {
  const Cells heads = lines_of(record::csv_head()).front();
  const auto found = std::find(heads.begin(), heads.end(), head);
  INFO(head);
  REQUIRE(found != heads.end());
  return static_cast<std::size_t>(found - heads.begin());
}

}  // namespace

TEST_CASE("each line has a cell for each head, and each measurement its line") {
  for (const Bench& bench : {finished_job(), open_job(), long_job()}) {
    const auto record = record_of(bench);
    const auto lines = lines_of(record::csv_lines("01930000-0000-7000-8000-000000000001", record));
    CHECK(lines.size() == record::measurements(record).size());
    for (const Cells& each : lines) {
      CHECK(each.size() == lines_of(record::csv_head()).front().size());
    }
  }
}

TEST_CASE("a number stands in the column of its unit, with a point, and in no other") {
  Bench bench;
  bench.add(opened());
  auto inches = reading("thickness", "0.067 in");
  inches.verdict = job::ReadingVerdict::within;
  inches.limit = job::LimitUsed{Unit::millimetre, 1600, 1800, 2, "invented"};
  bench.read("old-shim-lower", {inches});
  const auto lines = lines_of(record::csv_lines("j", record_of(bench)));
  const Cells& line = lines.back();
  CHECK(line[column("length [mm]")] == "1.702");
  CHECK(line[column("least length [mm]")] == "1.600");
  CHECK(line[column("most length [mm]")] == "1.800");
  CHECK(line[column("as typed")] == "0.067 in");
  CHECK(line[column("torque [N·m]")].empty());
  CHECK(line[column("verdict")] == "within");
  CHECK(line[column("counts")] == "1");
}

TEST_CASE("times are of that place and day, as ISO 8601 has them") {
  const auto record = record_of(finished_job());
  const auto lines = lines_of(record::csv_lines("j", record));
  const std::string opened_at = lines.front()[column("opened")];
  REQUIRE(opened_at.size() == 25);
  CHECK(opened_at[10] == 'T');
  CHECK((opened_at[19] == '+' || opened_at[19] == '-'));
}

TEST_CASE("no text is taken for a formula, whatever a person typed") {
  const auto hidden = rc::gen::container<std::string>(rc::gen::elementOf(std::string("=+-@\t\r\n\",;a1 ")));
  rc::check([&hidden] {
    const std::string typed = *hidden;
    record::Record record = record_of(finished_job());
    record.vehicle.gearbox = typed;
    const auto lines = lines_of(record::csv_lines("j", record));
    const std::string cell = lines.front()[column("gearbox")];
    // As it is read, and as a program reads it that parts cells at other characters as well.
    std::string back;
    for (std::size_t at = 0; at < cell.size(); ++at) {
      const bool begins = at == 0 || std::string(";\t\r\n").find(cell[at - 1]) != std::string::npos;
      RC_ASSERT_FALSE((begins && std::string("=+-@\t\r\n").find(cell[at]) != std::string::npos));
      back += cell[at] == '\'' ? std::string() : std::string(1, cell[at]);
    }
    RC_ASSERT(back == typed);
  });
}

TEST_CASE("an erased text is said to be erased, in both forms, and a text that is there stands there") {
  record::Record record = record_of(finished_job());
  record.vehicle.plate = record::Personal{"id", "digest", record::PersonalText{"HL-MK 412", "00"}};
  record.vehicle.customer_reference = record::Personal{"id", "digest", std::nullopt};
  const auto line = lines_of(record::csv_lines("j", record)).front();
  CHECK(line[column("plate")] == "HL-MK 412");
  CHECK(line[column("customer reference")] == "erased");
  const auto json = nlohmann::json::parse(record::measurements_json("j", record));
  CHECK(json.at("plate") == "HL-MK 412");
  CHECK(json.at("customer_reference") == "erased");
}

TEST_CASE("the complaint, in the customer's words, is in neither form") {
  record::Record record = record_of(finished_job());
  record.vehicle.complaint = record::Personal{"id", "digest", record::PersonalText{"KEPT-IN-CONFIDENCE", "00"}};
  CHECK(record::csv_lines("j", record).find("KEPT-IN-CONFIDENCE") == std::string::npos);
  CHECK(record::measurements_json("j", record).find("KEPT-IN-CONFIDENCE") == std::string::npos);
}

TEST_CASE("the file of JSON is canonical, whatever jobs are in it") {
  const std::string one = record::measurements_json("a", record_of(finished_job()));
  const std::string two = record::measurements_json("b", record_of(long_job()));
  for (const std::string& jobs : {std::string(), one, one + "," + two}) {
    const std::string file = record::measurements_begin() + jobs + record::measurements_end();
    const auto parsed = nlohmann::json::parse(file);
    const auto canonical = json::canonical(parsed);
    REQUIRE(canonical);
    CHECK(*canonical == file);
    CHECK(parsed.at("format") == "shimwright.measurements");
  }
}
