#include "flow.h"

#include <algorithm>

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "paper.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::FontRole;
using record::Ink;

namespace {

std::string without_space(std::string text) {
  text.erase(std::remove_if(text.begin(), text.end(), [](char each) { return each == ' ' || each == '\n'; }),
             text.end());
  return text;
}

}  // namespace

TEST_CASE("lines break at spaces") {
  const FixedMeasure measure;
  const double width = measure.width_mm("0.93 mm and", FontRole::body);
  const auto lines = record::wrapped("0.93 mm and 0.90 mm", FontRole::body, width, measure);
  CHECK(lines == std::vector<std::string>{"0.93 mm and", "0.90 mm"});
  CHECK(record::wrapped("", FontRole::body, width, measure).empty());
  CHECK(record::wrapped("a\nb", FontRole::body, width, measure) == std::vector<std::string>{"a", "b"});
}

TEST_CASE("a word too long for the line is broken between characters") {
  const FixedMeasure measure;
  const double width = measure.width_mm("1234", FontRole::body);
  CHECK(record::wrapped("äöüßäöüß", FontRole::body, width, measure) == std::vector<std::string>{"äöüß", "äöüß"});
  CHECK(record::wrapped("ab", FontRole::body, 0.1, measure) == std::vector<std::string>{"a", "b"});
}

TEST_CASE("a change of weight inside a line keeps its space") {
  const FixedMeasure measure;
  const auto lines = record::flow(
      {{"Result.", FontRole::result_strong, Ink::text}, {" Shim 1.95", FontRole::result, Ink::text}}, 200, measure);
  REQUIRE(lines.size() == 1);
  REQUIRE(lines.front().parts.size() == 2);
  CHECK(lines.front().parts[1].span.text == "Shim 1.95");
  CHECK(lines.front().parts[1].x_mm ==
        Approx(measure.width_mm("Result.", FontRole::result_strong) + measure.width_mm(" ", FontRole::result)));
}

TEST_CASE("no character is lost and no line too wide") {
  CHECK(rc::check([] {
    const FixedMeasure measure;
    const auto words = *rc::gen::container<std::vector<std::string>>(
        rc::gen::container<std::string>(rc::gen::elementOf(std::string("abc19.,-"))));
    std::string text;
    for (const std::string& word : words) {
      text += word + " ";
    }
    const double width = *rc::gen::inRange(2, 80);
    std::string read;
    for (const std::string& line : record::wrapped(text, FontRole::body, width, measure)) {
      RC_ASSERT(measure.width_mm(line, FontRole::body) <= width + 1e-5);
      read += line;
    }
    RC_ASSERT(without_space(read) == without_space(text));
  }));
}
