#include "file_header.h"

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright;

TEST_CASE("A newer file is called that, whatever else stands in it") {
  const auto file = json::parse(R"({"format": "shimwright.job-sheet", "min_reader": 99, "weather": "fine"})");
  REQUIRE(file);
  const auto checked = sheet::check_header(*file, "shimwright.job-sheet");
  REQUIRE_FALSE(checked);
  CHECK(checked.error().code == "newer_file");
  CHECK(checked.error().message.in_english() ==
        "This file was made for a newer version of the program; update the program.");
}

TEST_CASE("A file of another format is named") {
  const auto file = json::parse(R"({"format": "shimwright.job-sheet"})");
  REQUIRE(file);
  const auto checked = sheet::check_header(*file, "shimwright.spec-sheet");
  REQUIRE_FALSE(checked);
  CHECK(checked.error().message.in_english() ==
        "This file is a 'shimwright.job-sheet', not a 'shimwright.spec-sheet'; choose another file.");
}

TEST_CASE("A newer version that this reader still reads is taken") {
  auto file = sheet::test::small_job_sheet();
  file["version"] = 2;
  CHECK(sheet::read_job_sheet(file.dump()));
}

TEST_CASE("Wrong headers are refused") {
  sheet::test::check_refusals("file_header");
}
