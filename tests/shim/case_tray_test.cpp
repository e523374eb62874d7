#include <catch2/catch.hpp>

#include "refusals.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

TEST_CASE("every fault of a tray is refused where it stands") {
  check_refused({
      {"/tray", "[]", "/tray", "empty_list"},
      {"/tray", "{}", "/tray", "wrong_type"},
      {"/tray", "null", "/tray", "wrong_type"},
      {"/tray/2", "7", "/tray/2", "wrong_type"},
      {"/tray/2/id", "7", "/tray/2/id", "wrong_type"},
      {"/tray/2/id", "", "/tray/2/id", "missing_field"},
      {"/tray/2/colour", "7", "/tray/2/colour", "unknown_field"},
      {"/tray/3/id", "\"1300\"", "/tray/3/id", "repeated_shim"},
      {"/tray/3/thickness_mm", "1.3", "/tray/3/thickness_mm", "repeated_shim"},
      {"/tray/3/thickness_mm", "\"1,30\"", "/tray/3/thickness_mm", "repeated_shim"},
      {"/tray/3/thickness_mm", "0", "/tray/3/thickness_mm", "out_of_range"},
      {"/tray/3/thickness_mm", "\"0\"", "/tray/3/thickness_mm", "out_of_range"},
      {"/tray/3/thickness_mm", "-1.3", "/tray/3/thickness_mm", "out_of_range"},
      {"/tray/3/thickness_mm", "10000", "/tray/3/thickness_mm", "out_of_range"},
      {"/tray/3/thickness_mm", "null", "/tray/3/thickness_mm", "wrong_type"},
      {"/tray/3/thickness_mm", "", "/tray/3/thickness_mm", "missing_field"},
      {"/tray/3/u_mm", "0", "/tray/3/u_mm", "out_of_range"},
      {"/tray/3/u_mm", "-0.003", "/tray/3/u_mm", "out_of_range"},
      {"/tray/3/u_mm", "10000", "/tray/3/u_mm", "out_of_range"},
      {"/tray/3/u_mm", "\"0.003\"", "/tray/3/u_mm", "wrong_type"},
      {"/tray/3/u_mm", "", "/tray/3/u_mm", "missing_field"},
  });
}

TEST_CASE("a field of a shim that stands twice is refused") {
  check_refused(replaced(full_json().dump(), "\"u_mm\":0.003", "\"u_mm\":0.003,\"u_mm\":0.003"), "/tray/0/u_mm",
                "repeated_field");
}
