#include "shimwright/shim/advise_case.h"

#include <catch2/catch.hpp>

#include "refusals.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

TEST_CASE("a case that keeps every rule is read as it was written") {
  const auto read = read_case(full_json().dump());
  REQUIRE(read);
  CHECK(read->content() == full_case());
}

TEST_CASE("what is no case at all is refused at the empty place") {
  check_refused("", "", "no_json");
  check_refused("{\"tray\": [", "", "no_json");
  check_refused("[]", "", "wrong_type");
  check_refused("3", "", "wrong_type");
}

TEST_CASE("the top level names unknown, repeated and missing fields before it asks for a section") {
  check_refused({{"/colour", "1", "/colour", "unknown_field"}, {"/tray", "", "/tray", "missing_field"}});
  check_refused(R"({"tray": [], "tray": []})", "/tray", "repeated_field");
  check_refused(R"({})", "/tray", "missing_field");
  check_refused(R"({"tray": []})", "", "no_section");
  check_refused(R"({"a~/b": 1})", "/a~0~1b", "unknown_field");
}

TEST_CASE("each section alone is enough, and none may be null") {
  for (const auto* name : {"gauge_fit", "depth", "float"}) {
    Json alone = full_json();
    for (const auto* other : {"gauge_fit", "depth", "float"}) {
      if (std::string(other) != name) {
        alone.erase(other);
      }
    }
    INFO(name);
    CHECK(read_case(alone.dump()));
    const std::string place = std::string("/") + name;
    check_refused({{place, "null", place, "wrong_type"}});
  }
}

TEST_CASE("the first fault is told: tray, gauge fit, depth, float, each from top to bottom") {
  Json broken = full_json();
  broken["float"]["spots"][2]["runs"][0]["rest_mm"] = "x";
  check_refused(broken.dump(), "/float/spots/2/runs/0/rest_mm", "not_a_number");
  broken["float"]["fitted_shim"] = "none";
  check_refused(broken.dump(), "/float/fitted_shim", "unknown_shim");
  broken["float"]["limits_mm"] = Json::array({0.9, 0.8});
  check_refused(broken.dump(), "/float/limits_mm", "limits_order");
  broken["depth"]["bins"][1]["shim"] = "none";
  check_refused(broken.dump(), "/depth/bins/1/shim", "unknown_shim");
  broken["depth"]["stamp_mm"] = nullptr;
  check_refused(broken.dump(), "/depth/stamp_mm", "stamp_missing");
  broken["gauge_fit"]["trials"][1]["fit"] = "wobbly";
  check_refused(broken.dump(), "/gauge_fit/trials/1/fit", "unknown_name");
  broken["gauge_fit"]["trials"][1]["shim"] = "none";
  check_refused(broken.dump(), "/gauge_fit/trials/1/shim", "unknown_shim");
  broken["gauge_fit"].erase("order");
  check_refused(broken.dump(), "/gauge_fit/order", "missing_field");
  broken["gauge_fit"]["colour"] = 1;
  check_refused(broken.dump(), "/gauge_fit/colour", "unknown_field");
  broken["tray"][3]["u_mm"] = 0;
  check_refused(broken.dump(), "/tray/3/u_mm", "out_of_range");
  broken["tray"][3]["thickness_mm"] = 1.3;
  check_refused(broken.dump(), "/tray/3/thickness_mm", "repeated_shim");
  broken["tray"][3]["id"] = "1300";
  check_refused(broken.dump(), "/tray/3/id", "repeated_shim");
  broken["tray"][3].erase("u_mm");
  check_refused(broken.dump(), "/tray/3/u_mm", "missing_field");
}

TEST_CASE("a case put together in the program is held to the same rules") {
  CHECK(checked(full_case()));
  AdviseCase broken = full_case();
  broken.disc_float->spots.pop_back();
  const auto refused = checked(broken);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().place == "/float/spots");
  AdviseCase not_a_number = full_case();
  not_a_number.gauge_fit->feel_u_mm = std::nan("");
  REQUIRE_FALSE(checked(not_a_number));
  CHECK(checked(not_a_number).error().place == "/gauge_fit/feel_u_mm");
  AdviseCase not_text = full_case();
  not_text.depth->constants.front().name = "\xFF";
  REQUIRE_FALSE(checked(not_text));
  CHECK(checked(not_text).error().code == "not_utf8");
}
