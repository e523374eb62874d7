#include <catch2/catch.hpp>

#include "refusals.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

TEST_CASE("every fault of the limits and the instrument is refused where it stands") {
  check_refused({
      {"/float", "1", "/float", "wrong_type"},
      {"/float/colour", "1", "/float/colour", "unknown_field"},
      {"/float/limits_mm", "", "/float/limits_mm", "missing_field"},
      {"/float/limits_mm", "0.5", "/float/limits_mm", "wrong_type"},
      {"/float/limits_mm", "[0.25]", "/float/limits_mm", "wrong_type"},
      {"/float/limits_mm", "[0.25, 0.85, 0.9]", "/float/limits_mm", "wrong_type"},
      {"/float/limits_mm/1", "\"0,8,5\"", "/float/limits_mm/1", "two_marks"},
      {"/float/limits_mm", "[0.85, 0.25]", "/float/limits_mm", "limits_order"},
      {"/float/limits_mm", "[0.85, 0.85]", "/float/limits_mm", "limits_order"},
      {"/float/target_mm", "0.249", "/float/target_mm", "outside_limits"},
      {"/float/target_mm", "0.851", "/float/target_mm", "outside_limits"},
      {"/float/target_mm", "true", "/float/target_mm", "wrong_type"},
      {"/float/max_spread_mm", "0", "/float/max_spread_mm", "out_of_range"},
      {"/float/fitted_shim", "\"none\"", "/float/fitted_shim", "unknown_shim"},
      {"/float/indicator", "null", "/float/indicator", "wrong_type"},
      {"/float/indicator/colour", "1", "/float/indicator/colour", "unknown_field"},
      {"/float/indicator/resolution_mm", "0", "/float/indicator/resolution_mm", "out_of_range"},
      {"/float/indicator/mpe_mm", "-0.001", "/float/indicator/mpe_mm", "out_of_range"},
      {"/float/repeatability_mm", "-0.001", "/float/repeatability_mm", "out_of_range"},
      {"/float/guard_factor", "-1", "/float/guard_factor", "out_of_range"},
      {"/float/guard_factor", "10000", "/float/guard_factor", "out_of_range"},
      {"/float/unit_confirmed", "null", "/float/unit_confirmed", "wrong_type"},
      {"/float/direction_confirmed", "\"no\"", "/float/direction_confirmed", "wrong_type"},
      {"/float/sensitivity", "1.0", "/float/sensitivity", "wrong_type"},
      {"/float/sensitivity/sd", "0", "/float/sensitivity/sd", "out_of_range"},
      {"/float/sensitivity/mean", "", "/float/sensitivity/mean", "missing_field"},
      {"/float/history_u_mm", "0", "/float/history_u_mm", "out_of_range"},
  });
}

TEST_CASE("every fault of history and spots is refused where it stands") {
  check_refused({
      {"/float/history", "null", "/float/history", "wrong_type"},
      {"/float/history/1/shim_change_mm", "0.00001", "/float/history/1/shim_change_mm", "too_fine"},
      {"/float/history/1/float_change_mm", "", "/float/history/1/float_change_mm", "missing_field"},
      {"/float/spots", "[]", "/float/spots", "too_few_spots"},
      {"/float/spots", "{}", "/float/spots", "wrong_type"},
      {"/float/spots/2", "", "/float/spots", "too_few_spots"},
      {"/float/spots/2/angle_deg", "210", "/float/spots", "too_few_spots"},
      {"/float/spots/2/angle_deg", "-150", "/float/spots", "too_few_spots"},
      {"/float/spots/2/angle_deg", "450", "/float/spots", "too_few_spots"},
      {"/float/spots/2/angle_deg", "10000", "/float/spots/2/angle_deg", "out_of_range"},
      {"/float/spots/2/angle_deg", "\"330\"", "/float/spots/2/angle_deg", "wrong_type"},
      {"/float/spots/1/runs", "[]", "/float/spots/1/runs", "empty_list"},
      {"/float/spots/1/runs", "0.9", "/float/spots/1/runs", "wrong_type"},
      {"/float/spots/1/runs/0/rest_mm", "", "/float/spots/1/runs/0/rest_mm", "missing_field"},
      {"/float/spots/1/runs/0/lifted_mm", "\"0 9\"", "/float/spots/1/runs/0/lifted_mm", "space_inside"},
      {"/float/spots/1/runs/0/lifted_mm", "10000", "/float/spots/1/runs/0/lifted_mm", "out_of_range"},
      {"/float/spots/1/runs/0/note", "1", "/float/spots/1/runs/0/note", "unknown_field"},
  });
}

TEST_CASE("a target on a limit, no uncertainty of the hand and a fourth spot beside a first are allowed") {
  CHECK(read_case(with_fault({"/float/target_mm", "0.25", "", ""})));
  CHECK(read_case(with_fault({"/float/target_mm", "0.85", "", ""})));
  CHECK(read_case(with_fault({"/float/repeatability_mm", "0", "", ""})));
  CHECK(read_case(with_fault({"/float/indicator/mpe_mm", "0", "", ""})));
  CHECK(read_case(with_fault({"/float/guard_factor", "0", "", ""})));
  CHECK(read_case(
      with_fault({"/float/spots/3", R"({"angle_deg": 450, "runs": [{"rest_mm": 0, "lifted_mm": 0.9}]})", "", ""})));
}
