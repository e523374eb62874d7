#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;

TEST_CASE("A job sheet is read with its stages in order") {
  const JobSheet sheet = test::good_job_sheet(test::test_file("small_job_sheet.json"));
  CHECK(sheet.id == "0198f0c0-5a00-7a11-8d01-0000000000aa");
  CHECK(sheet.name == "small");
  CHECK(sheet.issue == 3);
  CHECK(sheet.demonstration);
  CHECK(sheet.title.in("de") == "Kleines Blatt");
  REQUIRE(sheet.stages.size() == 2);
  CHECK(sheet.stages[0].id == "begin");
  CHECK(sheet.stages[1].title.in_english() == "End");
}

TEST_CASE("What is no JSON is refused as a whole") {
  const auto sheet = read_job_sheet("{\"format\": ");
  REQUIRE_FALSE(sheet);
  CHECK(sheet.error().code == "no_json");
  CHECK(read_job_sheet("[]").error().code == "wrong_type");
  CHECK(read_job_sheet("[]").error().place.empty());
}

TEST_CASE("Wrong job sheets are refused") {
  test::check_refusals("job_sheet_reader");
}
