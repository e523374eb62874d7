#include "sheets.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("the shipped sheets are built in") {
  CHECK(cli::shipped_job_sheet("dry-pack-renewal"));
  CHECK(cli::shipped_spec_sheet("D7-2"));
  CHECK(cli::shipped_spec_sheet("D7-3"));
  CHECK(cli::shipped_spec_sheet("D6-1"));
}

TEST_CASE("a sheet that is not shipped is refused with the names of those that are") {
  const auto none = cli::shipped_spec_sheet("D9-1");
  REQUIRE_FALSE(none);
  CHECK(none.error().code == "unknown_sheet");
  CHECK(none.error().in_english().find("D7-2") != std::string::npos);
  CHECK_FALSE(cli::shipped_spec_sheet("../sheets/dry-pack-renewal"));
}
