#include "shimwright/sheet/spec_sheet.h"

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;

TEST_CASE("A part is found by its id") {
  const SpecSheet spec = test::good_spec_sheet(test::test_file("small_spec_sheet.json"));
  REQUIRE(spec.part("pack-ring") != nullptr);
  CHECK(spec.part("pack-ring")->title.in_english() == "Pack ring");
  CHECK(spec.part("lever-set") == nullptr);
}

TEST_CASE("Each side has its own values") {
  const SpecSheet spec = test::good_spec_sheet(test::test_file("small_spec_sheet.json"));
  CHECK(&spec.side(Side::lower) == &spec.lower);
  CHECK(&spec.side(Side::upper) == &spec.upper);
}
