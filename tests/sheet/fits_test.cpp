#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;
using nlohmann::json;

namespace {

struct Row {
  const char* name;
  json sheet_patch;
  json spec_patch;
  const char* code;
  const char* step;
};

json replace(const char* path, const json& value) {
  return json::array({json{{"op", "replace"}, {"path", path}, {"value", value}}});
}
json taken_out(const char* path) {
  return json::array({json{{"op", "remove"}, {"path", path}}});
}
json lower_by_depth() {
  const auto spec = test::small_spec_sheet();
  auto depth = spec["upper"]["depth"];
  depth["bins"] = nullptr;
  return json::array({json{{"op", "replace"}, {"path", "/lower/method"}, {"value", "depth"}},
                      json{{"op", "remove"}, {"path", "/lower/gauge_fit"}},
                      json{{"op", "add"}, {"path", "/lower/depth"}, {"value", depth}}});
}

shimwright::Result<void> fit(const json& sheet_patch, const json& spec_patch) {
  return fits(test::good_job_sheet(test::small_job_sheet().patch(sheet_patch).dump()),
              test::good_spec_sheet(test::small_spec_sheet().patch(spec_patch).dump()));
}

}  // namespace

TEST_CASE("The small sheets fit") {
  CHECK(fit(json::array(), json::array()));
}

TEST_CASE("What a sheet names and the spec sheet lacks is refused with the step") {
  const json none = json::array();
  const std::vector<Row> rows{
      {"no such limit", none, taken_out("/limits/press_torque"), "unknown_limit", "press"},
      {"no such limit of a teach-in", none, taken_out("/limits/touch_point"), "unknown_limit", "teach"},
      {"no such limit of attempts", none, taken_out("/limits/pressings"), "unknown_limit", "press"},
      {"a limit of another kind", replace("/stages/1/steps/6/channels/0/limit", "press_torque"), none,
       "wrong_dimension", "teach"},
      {"a limit of attempts that does not count", replace("/stages/1/steps/2/attempts_limit", "touch_point"), none,
       "wrong_dimension", "press"},
      {"a limit of attempts without an upper end", none,
       json::array({json{{"op", "move"}, {"from", "/limits/pressings/most"}, {"path", "/limits/pressings/least"}}}),
       "wrong_limit", "press"},
      {"no attempt allowed", none, replace("/limits/pressings/most", "0"), "wrong_limit", "press"},
      {"no such part", none, taken_out("/parts/1"), "unknown_part", "ring"},
      {"another method than the sheet has", none, lower_by_depth(), "wrong_method", "fit"},
  };
  for (const Row& row : rows) {
    INFO(row.name);
    const auto kept = fit(row.sheet_patch, row.spec_patch);
    REQUIRE_FALSE(kept);
    CHECK(kept.error().code == row.code);
    CHECK(kept.error().place == row.step);
    CHECK(test::is_sentence(kept.error().message.in_english()));
  }
}

TEST_CASE("A sheet with both methods takes either, if each step is for its method only") {
  auto sheet = test::small_job_sheet();
  auto depth = sheet["stages"][1]["steps"][1];
  depth["id"] = "depths-lower";
  depth["side"] = "lower";
  auto& steps = sheet["stages"][1]["steps"];
  steps.insert(steps.begin(), depth);
  const auto by_depth = test::good_spec_sheet(test::small_spec_sheet().patch(lower_by_depth()).dump());
  CHECK(fits(test::good_job_sheet(sheet.dump()), by_depth));
  steps[1].erase("only_for");
  const auto kept = fits(test::good_job_sheet(sheet.dump()), by_depth);
  REQUIRE_FALSE(kept);
  CHECK(kept.error().place == "fit");
}

TEST_CASE("The shipped sheet fits every shipped spec sheet") {
  const JobSheet sheet = test::default_job_sheet();
  for (const std::string& name : test::shipped_specs()) {
    INFO(name);
    const auto kept = fits(sheet, test::good_spec_sheet(test::shipped_file(name)));
    INFO((kept ? std::string() : kept.error().in_english()));
    CHECK(kept.has_value());
  }
}
