#include <catch2/catch.hpp>

#include "refusals.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

TEST_CASE("every fault of a depth case is refused where it stands") {
  check_refused({
      {"/depth", "1", "/depth", "wrong_type"},
      {"/depth/colour", "1", "/depth/colour", "unknown_field"},
      {"/depth/readings_mm", "", "/depth/readings_mm", "missing_field"},
      {"/depth/stamp_mm", "", "/depth/stamp_mm", "missing_field"},
      {"/depth/bins", "", "/depth/bins", "missing_field"},
      {"/depth/readings_mm", "[]", "/depth/readings_mm", "empty_list"},
      {"/depth/readings_mm", "5.36", "/depth/readings_mm", "wrong_type"},
      {"/depth/readings_mm/1", "\"5.3.6\"", "/depth/readings_mm/1", "two_marks"},
      {"/depth/readings_mm/1", "5.36005", "/depth/readings_mm/1", "too_fine"},
      {"/depth/readings_mm/1", "null", "/depth/readings_mm/1", "wrong_type"},
      {"/depth/reference_mm", "\"2.4 N\"", "/depth/reference_mm", "unknown_unit"},
      {"/depth/constants", "null", "/depth/constants", "wrong_type"},
      {"/depth/constants/1", "1", "/depth/constants/1", "wrong_type"},
      {"/depth/constants/1/name", "1", "/depth/constants/1/name", "wrong_type"},
      {"/depth/constants/1/add_mm", "\"\"", "/depth/constants/1/add_mm", "empty"},
      {"/depth/constants/1/add_mm", "", "/depth/constants/1/add_mm", "missing_field"},
      {"/depth/stamp_used", "1", "/depth/stamp_used", "wrong_type"},
      {"/depth/stamp_mm", "null", "/depth/stamp_mm", "stamp_missing"},
      {"/depth/stamp_mm", "\"-\"", "/depth/stamp_mm", "incomplete"},
      {"/depth/max_spread_mm", "0", "/depth/max_spread_mm", "out_of_range"},
      {"/depth/u_reading_mm", "0", "/depth/u_reading_mm", "out_of_range"},
      {"/depth/bins", "[]", "/depth/bins", "empty_list"},
      {"/depth/bins", "{}", "/depth/bins", "wrong_type"},
      {"/depth/bins/1/from_mm", "2.499", "/depth/bins/1/from_mm", "bin_order"},
      {"/depth/bins/1/from_mm", "1.0", "/depth/bins/1/from_mm", "bin_order"},
      {"/depth/bins/1/from_mm", "3.001", "/depth/bins/1", "bin_order"},
      {"/depth/bins/0/to_mm", "1.999", "/depth/bins/0", "bin_order"},
      {"/depth/bins/1/shim", "\"9\"", "/depth/bins/1/shim", "unknown_shim"},
      {"/depth/bins/1/to_mm", "", "/depth/bins/1/to_mm", "missing_field"},
  });
}

TEST_CASE("a number too large for any double is refused at its field") {
  check_refused(replaced(full_json().dump(), "\"u_reading_mm\":0.01", "\"u_reading_mm\":1e400"), "/depth/u_reading_mm",
                "out_of_range");
}

TEST_CASE("a stamp that is not used may be null or a length, nothing else") {
  Json unused = full_json();
  unused["depth"]["stamp_used"] = false;
  CHECK(read_case(unused.dump()));
  unused["depth"]["stamp_mm"] = nullptr;
  CHECK(read_case(unused.dump()));
  unused["depth"]["stamp_mm"] = "blank";
  check_refused(unused.dump(), "/depth/stamp_mm", "not_a_number");
}

TEST_CASE("bins may touch and may be one point wide") {
  CHECK(read_case(with_fault({"/depth/bins/1/to_mm", "2.5", "", ""})));
  CHECK(read_case(with_fault({"/depth/bins", "null", "", ""})));
}
