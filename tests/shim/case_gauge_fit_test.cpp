#include <catch2/catch.hpp>

#include "refusals.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

TEST_CASE("every fault of a gauge fit is refused where it stands") {
  check_refused({
      {"/gauge_fit", "[]", "/gauge_fit", "wrong_type"},
      {"/gauge_fit/colour", "1", "/gauge_fit/colour", "unknown_field"},
      {"/gauge_fit/snug_band_mm", "", "/gauge_fit/snug_band_mm", "missing_field"},
      {"/gauge_fit/feel_u_mm", "", "/gauge_fit/feel_u_mm", "missing_field"},
      {"/gauge_fit/prior", "", "/gauge_fit/prior", "missing_field"},
      {"/gauge_fit/order", "", "/gauge_fit/order", "missing_field"},
      {"/gauge_fit/trials", "", "/gauge_fit/trials", "missing_field"},
      {"/gauge_fit/snug_band_mm", "0", "/gauge_fit/snug_band_mm", "out_of_range"},
      {"/gauge_fit/snug_band_mm", "0.0005", "/gauge_fit/snug_band_mm", "too_fine"},
      {"/gauge_fit/snug_band_mm", "\"0.0001\"", "/gauge_fit/snug_band_mm", "too_fine"},
      {"/gauge_fit/feel_u_mm", "0.00099", "/gauge_fit/feel_u_mm", "out_of_range"},
      {"/gauge_fit/feel_u_mm", "\"0.01\"", "/gauge_fit/feel_u_mm", "wrong_type"},
      {"/gauge_fit/prior", "1.7", "/gauge_fit/prior", "wrong_type"},
      {"/gauge_fit/prior/colour", "1", "/gauge_fit/prior/colour", "unknown_field"},
      {"/gauge_fit/prior/mean_mm", "", "/gauge_fit/prior/mean_mm", "missing_field"},
      {"/gauge_fit/prior/mean_mm", "-10000", "/gauge_fit/prior/mean_mm", "out_of_range"},
      {"/gauge_fit/prior/sd_mm", "0.0099", "/gauge_fit/prior/sd_mm", "out_of_range"},
      {"/gauge_fit/order", "\"thin_to_thick\"", "/gauge_fit/order", "unknown_name"},
      {"/gauge_fit/order", "1", "/gauge_fit/order", "wrong_type"},
      {"/gauge_fit/trials", "null", "/gauge_fit/trials", "wrong_type"},
      {"/gauge_fit/trials/1", "\"1600\"", "/gauge_fit/trials/1", "wrong_type"},
      {"/gauge_fit/trials/1/note", "1", "/gauge_fit/trials/1/note", "unknown_field"},
      {"/gauge_fit/trials/1/shim", "", "/gauge_fit/trials/1/shim", "missing_field"},
      {"/gauge_fit/trials/1/fit", "", "/gauge_fit/trials/1/fit", "missing_field"},
      {"/gauge_fit/trials/1/shim", "\"1.60\"", "/gauge_fit/trials/1/shim", "unknown_shim"},
      {"/gauge_fit/trials/1/shim", "1600", "/gauge_fit/trials/1/shim", "wrong_type"},
      {"/gauge_fit/trials/1/fit", "\"Snug\"", "/gauge_fit/trials/1/fit", "unknown_name"},
      {"/gauge_fit/trials/1/fit", "true", "/gauge_fit/trials/1/fit", "wrong_type"},
  });
}

TEST_CASE("the least feel and the least prior are allowed") {
  CHECK(read_case(with_fault({"/gauge_fit/feel_u_mm", "0.001", "", ""})));
  CHECK(read_case(with_fault({"/gauge_fit/prior/sd_mm", "0.01", "", ""})));
  CHECK(read_case(with_fault({"/gauge_fit/prior", "null", "", ""})));
  CHECK(read_case(with_fault({"/gauge_fit/trials", "[]", "", ""})));
}
