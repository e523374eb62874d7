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

TEST_CASE("A road test of its own name keeps the name from deciding") {
  auto file = test::small_job_sheet();
  auto& steps = file["stages"][1]["steps"];
  nlohmann::json before{{"id", "road-test-before"}, {"kind", "check"}, {"title", {{"en", "Before"}}}};
  nlohmann::json first{{"id", "road-test-one"}, {"kind", "check"}, {"title", {{"en", "One"}}}};
  nlohmann::json last{{"id", "drive"}, {"kind", "check"}, {"title", {{"en", "Drive"}}}};
  steps.insert(steps.begin(), before);
  steps.insert(steps.end() - 1, first);
  steps.insert(steps.end() - 1, last);
  const auto role_of = [](const JobSheet& sheet, const std::string& id) { return sheet.find(id)->role; };
  const JobSheet by_name = test::good_job_sheet(file.dump());
  CHECK_FALSE(role_of(by_name, "road-test-before"));
  CHECK(role_of(by_name, "road-test-one") == Role::road_test);
  CHECK_FALSE(role_of(by_name, "drive"));
  steps[steps.size() - 2]["role"] = "road_test";
  const JobSheet by_role = test::good_job_sheet(file.dump());
  CHECK_FALSE(role_of(by_role, "road-test-one"));
  CHECK(role_of(by_role, "drive") == Role::road_test);
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
