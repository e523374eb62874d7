#include <algorithm>

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;
using shimwright::quantity::micrometres;

namespace {

const std::string demo = "invented for the demo";

void check_side_sources(const SideSpec& side) {
  CHECK(side.tray_source == demo);
  CHECK(side.disc_float.source == demo);
  if (side.gauge_fit) {
    CHECK(side.gauge_fit->source == demo);
    CHECK((!side.gauge_fit->prior || side.gauge_fit->prior->source == demo));
  }
  if (side.depth) {
    CHECK(side.depth->source == demo);
    for (const DepthConstant& constant : side.depth->constants) {
      CHECK(constant.source == demo);
    }
  }
  CHECK((!side.disc_float.sensitivity || side.disc_float.sensitivity->source == demo));
}

}  // namespace

TEST_CASE("Every shipped value says that it was invented") {
  for (const std::string& name : test::shipped_specs()) {
    INFO(name);
    const SpecSheet spec = test::good_spec_sheet(test::shipped_file(name));
    CHECK(spec.demonstration);
    CHECK(spec.source.rfind(demo, 0) == 0);
    for (const auto& entry : spec.limits) {
      CHECK(entry.second.source == demo);
    }
    for (const auto& entry : spec.work_values) {
      CHECK(entry.second.source == demo);
    }
    check_side_sources(spec.lower);
    check_side_sources(spec.upper);
  }
}

TEST_CASE("D7, issue 2 has the values the screens show") {
  const SpecSheet spec = test::good_spec_sheet(test::shipped_file("specs/D7-2.json"));
  CHECK(spec.gearbox == "D7");
  CHECK(spec.issue == 2);
  for (const Side side : {Side::lower, Side::upper}) {
    const SideSpec& values = spec.side(side);
    REQUIRE(values.gauge_fit);
    CHECK(values.tray.size() == 18);
    CHECK(values.tray.front().thickness == micrometres(1300));
    CHECK(values.tray.back().thickness == micrometres(2150));
    CHECK(values.gauge_fit->snug_band == micrometres(50));
    CHECK(values.gauge_fit->feel_u_mm == 0.010);
    CHECK(values.disc_float.least == micrometres(250));
    CHECK(values.disc_float.most == micrometres(850));
    CHECK(values.disc_float.max_spread == micrometres(150));
  }
  CHECK(spec.lower.disc_float.sensitivity->mean == 1.00);
  CHECK_FALSE(spec.upper.disc_float.sensitivity);
  CHECK(spec.upper.gauge_fit->prior->mean_mm == 1.74);
  CHECK(spec.limits.at("press_torque").most == 12'000);
  CHECK(spec.limits.at("face_to_shaft_end").most == 7'000);
  CHECK(spec.limits.at("face_to_shaft_end").decimals == 2);
  CHECK(spec.limits.at("pressings_per_pack").most == 3);
}

TEST_CASE("D7, issue 1 is another issue with other values") {
  const SpecSheet first = test::good_spec_sheet(test::shipped_file("specs/D7-1.json"));
  const SpecSheet second = test::good_spec_sheet(test::shipped_file("specs/D7-2.json"));
  CHECK(first.gearbox == second.gearbox);
  CHECK(first.issue == 1);
  CHECK(first.id != second.id);
  CHECK_FALSE(first.limits == second.limits);
}

TEST_CASE("D6, issue 1 finds both shims by depth, one of them by ranges") {
  const SpecSheet spec = test::good_spec_sheet(test::shipped_file("specs/D6-1.json"));
  REQUIRE(spec.lower.depth);
  REQUIRE(spec.upper.depth);
  CHECK(spec.lower.tray.size() == 13);
  CHECK_FALSE(spec.lower.depth->bins);
  CHECK(spec.lower.depth->constants.size() == 1);
  REQUIRE(spec.upper.depth->bins);
  CHECK(spec.upper.depth->bins->size() == 13);
  const auto bin = std::find_if(spec.upper.depth->bins->begin(), spec.upper.depth->bins->end(),
                                [](const DepthBin& each) { return each.shim == "2.10"; });
  REQUIRE(bin != spec.upper.depth->bins->end());
  CHECK(bin->from == micrometres(2025));
  CHECK(bin->to == micrometres(2175));
  CHECK((spec.lower.depth->stamp_used && spec.upper.depth->stamp_used));
}

TEST_CASE("One-time parts are marked in every shipped sheet") {
  for (const std::string& name : test::shipped_specs()) {
    const SpecSheet spec = test::good_spec_sheet(test::shipped_file(name));
    for (const char* id : {"pack-ring", "hub-ring", "guide-bolts", "housing-bolts"}) {
      INFO(name << " " << id);
      REQUIRE(spec.part(id) != nullptr);
      CHECK(spec.part(id)->one_time);
    }
  }
}
