#include "shimwright/sheet/job_sheet.h"

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;

TEST_CASE("Steps are found and counted over all stages") {
  const JobSheet sheet = test::good_job_sheet(test::test_file("small_job_sheet.json"));
  const auto steps = sheet.steps();
  REQUIRE(steps.size() == 16);
  for (std::size_t position = 0; position < steps.size(); ++position) {
    CHECK(sheet.find(steps[position]->id) == steps[position]);
    CHECK(sheet.position_of(steps[position]->id) == position);
    const Stage* stage = sheet.stage_of(steps[position]->id);
    REQUIRE(stage != nullptr);
    CHECK(steps[position] >= stage->steps.data());
    CHECK(steps[position] < stage->steps.data() + stage->steps.size());
  }
  CHECK(steps.front()->id == "lay-out");
  CHECK(steps.back()->id == "sign");
}

TEST_CASE("A step that is not there is not found") {
  const JobSheet sheet;
  CHECK(sheet.find("look") == nullptr);
  CHECK_FALSE(sheet.position_of("look"));
  CHECK(sheet.stage_of("look") == nullptr);
  CHECK(sheet.steps().empty());
}

TEST_CASE("Each kind has the name its file spells") {
  const auto file = test::small_job_sheet();
  const JobSheet sheet = test::good_job_sheet(file.dump());
  for (const auto& stage : file["stages"]) {
    for (const auto& step : stage["steps"]) {
      CHECK(kind_of(sheet.find(step["id"].get<std::string>())->body) == step["kind"].get<std::string>());
    }
  }
}
