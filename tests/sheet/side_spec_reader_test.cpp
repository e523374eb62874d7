#include "side_spec_reader.h"

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;
using shimwright::quantity::micrometres;

namespace {

SpecSheet small() {
  return test::good_spec_sheet(test::test_file("small_spec_sheet.json"));
}

}  // namespace

TEST_CASE("A side by gauge fit has tray, band, feel, prior and order") {
  const SideSpec side = small().lower;
  CHECK(side.method == Method::gauge_fit);
  CHECK(side.tray_name == "large T1");
  REQUIRE(side.tray.size() == 3);
  CHECK(side.tray[1] == SpecShim{"1.65", micrometres(1650), 0.003});
  REQUIRE(side.gauge_fit);
  CHECK(side.gauge_fit->snug_band == micrometres(50));
  CHECK(side.gauge_fit->feel_u_mm == 0.010);
  CHECK(side.gauge_fit->prior == Prior{1.66, 0.08, "invented for the test"});
  CHECK(side.gauge_fit->thick_to_thin);
  CHECK_FALSE(side.depth);
}

TEST_CASE("A side by depth has places, constants, stamp and bins") {
  const SideSpec side = small().upper;
  CHECK(side.method == Method::depth);
  CHECK_FALSE(side.gauge_fit);
  REQUIRE(side.depth);
  CHECK(side.depth->places == 2);
  CHECK(side.depth->constants == std::vector<DepthConstant>{{"foot", micrometres(-350), "invented for the test"}});
  CHECK(side.depth->stamp_used);
  CHECK(side.depth->max_spread == micrometres(100));
  CHECK(side.depth->u_reading_mm == 0.01);
  REQUIRE(side.depth->bins);
  CHECK((*side.depth->bins)[1] == DepthBin{micrometres(1875), micrometres(2025), "1.95"});
}

TEST_CASE("What is null is not stated, and touching bins are in order") {
  auto file = test::small_spec_sheet();
  file["lower"]["gauge_fit"]["prior"] = nullptr;
  file["lower"]["gauge_fit"]["order"] = "fewest";
  file["upper"]["depth"]["bins"] = nullptr;
  file["upper"]["depth"]["constants"] = nlohmann::json::array();
  const SpecSheet spec = test::good_spec_sheet(file.dump());
  CHECK_FALSE(spec.lower.gauge_fit->prior);
  CHECK_FALSE(spec.lower.gauge_fit->thick_to_thin);
  CHECK_FALSE(spec.upper.depth->bins);
  CHECK(spec.upper.depth->constants.empty());
}

TEST_CASE("A tray has at most 200 shims") {
  auto file = test::small_spec_sheet();
  const auto with_more = [&](int more) {
    auto changed = file;
    auto& shims = changed["lower"]["tray"]["shims"];
    for (int each = 0; each < more; ++each) {
      const std::string thickness = "3." + std::to_string(100 + each);
      shims.push_back({{"id", thickness}, {"thickness_mm", thickness}, {"u_mm", "0.003"}});
    }
    return test::verdict_on(changed, "spec-sheet");
  };
  CHECK(with_more(197).code.empty());
  const test::Verdict verdict = with_more(198);
  CHECK(verdict.code == "too_many");
  CHECK(verdict.place == "/lower/tray/shims");
  CHECK(verdict.sentence == "The list has 201 entries, at most 200 are read; shorten it.");
}

TEST_CASE("Wrong sections of a side are refused") {
  test::check_refusals("side_spec_reader");
}
