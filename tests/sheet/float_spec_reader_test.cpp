#include "float_spec_reader.h"

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;
using shimwright::quantity::micrometres;

TEST_CASE("The float section gives limits, uncertainty and spots") {
  const FloatSpec spec = test::good_spec_sheet(test::test_file("small_spec_sheet.json")).lower.disc_float;
  CHECK(spec.least == micrometres(250));
  CHECK(spec.most == micrometres(850));
  CHECK(spec.target == micrometres(550));
  CHECK(spec.max_spread == micrometres(150));
  CHECK(spec.repeatability_mm == 0.008);
  CHECK(spec.guard_factor == 1.645);
  CHECK(spec.sensitivity == SensitivitySpec{1.02, 0.10, "invented for the test"});
  CHECK(spec.history_u_mm == 0.02);
  CHECK(spec.spot_angles_deg == std::vector<double>{0, 120, 240});
  CHECK(spec.least_runs == 2);
  CHECK(spec.as_found);
}

TEST_CASE("What is null is not stated") {
  const FloatSpec spec = test::good_spec_sheet(test::test_file("small_spec_sheet.json")).upper.disc_float;
  CHECK_FALSE(spec.target);
  CHECK_FALSE(spec.sensitivity);
}

TEST_CASE("A target on a limit is taken") {
  auto file = test::small_spec_sheet();
  file["lower"]["float"]["target_mm"] = "0.25";
  CHECK(read_spec_sheet(file.dump()));
  file["lower"]["float"]["target_mm"] = "0.85";
  CHECK(read_spec_sheet(file.dump()));
}

TEST_CASE("Wrong float sections are refused") {
  test::check_refusals("float_spec_reader");
}
