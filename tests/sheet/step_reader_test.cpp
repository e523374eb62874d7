#include "step_reader.h"

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;

TEST_CASE("A step has what its file says, and the plain case where it says nothing") {
  const JobSheet sheet = test::good_job_sheet(test::test_file("small_job_sheet.json"));
  const Step* fit = sheet.find("fit");
  REQUIRE(fit != nullptr);
  CHECK(fit->hold_point);
  CHECK(fit->side == Side::lower);
  CHECK(fit->again == Again::side);
  CHECK(fit->may_be_not_required);
  CHECK(fit->only_for == Method::gauge_fit);
  CHECK_FALSE(fit->role);

  const Step* lay_out = sheet.find("lay-out");
  REQUIRE(lay_out != nullptr);
  CHECK(lay_out->text.in("de") == "Der Reihe nach.");
  REQUIRE(lay_out->cautions.size() == 1);
  CHECK(lay_out->cautions[0].hazard.in_english() == "It falls.");
  CHECK(lay_out->cautions[0].precaution.in_english() == "Hold it.");
  CHECK(lay_out->unproven_until == "look");
  CHECK_FALSE(lay_out->hold_point);
  CHECK_FALSE(lay_out->side);
  CHECK(lay_out->again == Again::never);
  CHECK(lay_out->shows == Drawing::none);
  CHECK_FALSE(lay_out->may_be_not_required);
  CHECK_FALSE(lay_out->only_for);

  CHECK(sheet.find("look")->shows == Drawing::pack);
  CHECK(sheet.find("serial")->role == Role::new_pack_serial);
}

TEST_CASE("Wrong steps are refused") {
  test::check_refusals("step_reader");
}
