#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

TEST_CASE("a written case has the fields of the contract and no other") {
  const Json written = full_json();
  CHECK(written["tray"][0] == Json::parse(R"({"id": "1300", "thickness_mm": 1.3, "u_mm": 0.003})"));
  CHECK(written["gauge_fit"]["trials"][1] == Json::parse(R"({"shim": "1600", "fit": "snug"})"));
  CHECK(written["depth"]["stamp_mm"] == Json(-0.02));
  CHECK(written["float"]["limits_mm"] == Json::parse("[0.25, 0.85]"));
}

TEST_CASE("what is not there is written as null or left out") {
  AdviseCase bare{eighteen(), flat_case(50), required_um({1500}), three_spots(500, 510, 520)};
  bare.disc_float->sensitivity.reset();
  const Json written = Json::parse(write_case(bare));
  CHECK(written["gauge_fit"]["prior"].is_null());
  CHECK(written["depth"]["stamp_mm"].is_null());
  CHECK(written["depth"]["bins"].is_null());
  CHECK(written["float"]["target_mm"].is_null());
  CHECK(written["float"]["sensitivity"].is_null());
  const auto read = checked(bare);
  REQUIRE(read);
  CHECK(read->content() == bare);
  const Json tray_only = Json::parse(write_case({eighteen(), {}, {}, {}}));
  CHECK(tray_only.size() == 1);
}
