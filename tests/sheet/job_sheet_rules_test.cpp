#include "job_sheet_rules.h"

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;

TEST_CASE("A sheet put together in the program is held to the same rules") {
  JobSheet sheet = test::good_job_sheet(test::test_file("small_job_sheet.json"));
  CHECK(check_rules(sheet));
  sheet.stages[0].steps[2].id = "lay-out";
  const auto kept = check_rules(sheet);
  REQUIRE_FALSE(kept);
  CHECK(kept.error().code == "repeated_id");
  CHECK(kept.error().place == "/stages/0/steps/2/id");
}

TEST_CASE("A sheet without a step is signed by nobody") {
  CHECK(check_rules(JobSheet()).error().code == "no_signature");
}

TEST_CASE("What breaks a rule over several steps is refused") {
  test::check_refusals("job_sheet_rules");
}
