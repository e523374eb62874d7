#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;
using shimwright::quantity::Unit;

TEST_CASE("A spec sheet is read with limits in base units and the decimals they are written with") {
  const SpecSheet spec = test::good_spec_sheet(test::test_file("small_spec_sheet.json"));
  CHECK(spec.gearbox == "T1");
  CHECK(spec.issue == 4);
  CHECK(spec.demonstration);
  CHECK(spec.source == "invented for the test");
  REQUIRE(spec.limits.size() == 3);
  const Limit& torque = spec.limits.at("press_torque");
  CHECK(torque.unit == Unit::newton_metre);
  CHECK(torque.most == 12'000);
  CHECK_FALSE(torque.least);
  CHECK(torque.decimals == 1);
  const Limit& touch_point = spec.limits.at("touch_point");
  CHECK(touch_point.least == 7'500);
  CHECK(touch_point.most == 13'500);
  CHECK(touch_point.decimals == 2);
  CHECK(spec.limits.at("pressings").most == 3);
  CHECK(spec.work_values.at("lever_bolts").value == "8 N·m, then 90°");
  REQUIRE(spec.parts.size() == 2);
  CHECK(spec.parts[1].number == "T-2");
  CHECK(spec.parts[1].quantity == 2);
  CHECK(spec.parts[1].one_time);
}

TEST_CASE("A limit may hold one value only") {
  auto file = test::small_spec_sheet();
  file["limits"]["touch_point"]["least"] = "13.5";
  CHECK(read_spec_sheet(file.dump()));
}

TEST_CASE("A name that stands twice among the limits is refused") {
  std::string text = test::test_file("small_spec_sheet.json");
  const std::size_t found = text.find("\"touch_point\"");
  REQUIRE(found != std::string::npos);
  text.replace(found, std::string("\"touch_point\"").size(), "\"pressings\"");
  const auto spec = read_spec_sheet(text);
  REQUIRE_FALSE(spec);
  CHECK(spec.error().code == "repeated_field");
  CHECK(spec.error().place == "/limits/pressings");
}

TEST_CASE("Wrong spec sheets are refused") {
  test::check_refusals("spec_sheet_reader");
}
