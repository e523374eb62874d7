#include "text_reader.h"

#include <string>

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;

namespace {

shimwright::Result<Text> read(const std::string& json_text) {
  const auto value = shimwright::json::parse(json_text);
  REQUIRE(value);
  return read_text(*value, "/title");
}

}  // namespace

TEST_CASE("Texts come by language") {
  const auto text = read(R"({"de": "Schließen", "en": "Close up"})");
  REQUIRE(text);
  CHECK(text->in("de") == "Schließen");
  CHECK(text->in_english() == "Close up");
}

TEST_CASE("A language that stands there twice is refused") {
  const auto text = read(R"({"en": "Close up", "en": "Open up"})");
  REQUIRE_FALSE(text);
  CHECK(text.error().code == "repeated_field");
  CHECK(text.error().place == "/title/en");
}

TEST_CASE("A line is as long as it may be, counted in characters") {
  std::string line;
  for (std::size_t count = 0; count < longest_line; ++count) {
    line += "µ";
  }
  CHECK(check_line(line, "/x", longest_line));
  CHECK_FALSE(check_line(line + "µ", "/x", longest_line));
}

TEST_CASE("Wrong texts are refused") {
  test::check_refusals("text_reader");
}
