#include <rapidcheck.h>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "shimwright/json/value.h"

using shimwright::json::Array;
using shimwright::json::Number;
using shimwright::json::Object;
using shimwright::json::parse;
using shimwright::json::ParseLimits;
using shimwright::json::Value;

namespace {

std::string refused(std::string_view text, const ParseLimits& limits = {}) {
  const auto value = parse(text, limits);
  return value ? "taken" : value.error().code;
}

std::string nested(std::size_t levels) {
  return std::string(levels, '[') + std::string(levels, ']');
}

}  // namespace

TEST_CASE("a text is read into values as they stand") {
  const auto value = parse(R"( {"a": [1.50, -0, "x", null, true], "b": {}, "a": false} )");
  REQUIRE(value.has_value());
  CHECK(*value == Value(Object{{"a", Value(Array{Value(Number{"1.50"}), Value(Number{"-0"}), Value(std::string("x")),
                                                 Value(), Value(true)})},
                               {"b", Value(Object{})},
                               {"a", Value(false)}}));
}

TEST_CASE("a number too large for any machine keeps its text") {
  const auto value = parse("[1e99999, 123456789012345678901234567890]");
  REQUIRE(value.has_value());
  CHECK((*value->array())[0].number()->text == "1e99999");
  CHECK((*value->array())[1].number()->text == "123456789012345678901234567890");
}

TEST_CASE("a byte order mark is stepped over") {
  CHECK(refused("\xEF\xBB\xBF{}") == "taken");
}

TEST_CASE("what is no JSON is refused") {
  const std::string text =
      GENERATE("", "  ", "{", "[1,]", "[1 2]", "{\"a\"}", "{\"a\":}", "{\"a\":1,}", "{a:1}", "nul", "'x'", "1 2", "[}",
               "// no\n1", "NaN", "+1", ".5", "\"\xC3\"", "\xEF\xBB", "{\"a\":1]", "[1", "{\"a\" 1}", "\"\t\"");
  CAPTURE(text);
  CHECK(refused(text) == "no_json");
}

TEST_CASE("a refusal is one sentence with line and column") {
  const auto value = parse("{\n  \"a\": 01\n}");
  REQUIRE_FALSE(value.has_value());
  CHECK(value.error().place.empty());
  CHECK(value.error().in_english() ==
        "Line 2, column 9: a number is written wrongly; write it like 12 or -0.5, with a point.");
  CHECK(parse("[1").error().in_english() == "Line 1, column 3: the text ends too early; take a complete copy of it.");
}

TEST_CASE("nesting stops at its limit") {
  CHECK(refused(nested(64)) == "taken");
  CHECK(refused(nested(65)) == "too_deep");
  CHECK(refused(std::string(1'000'000, '[')) == "too_deep");
  CHECK(refused(R"([{"a": [1]}])", {3, 100}) == "taken");
  CHECK(refused(R"([{"a": [1]}])", {2, 100}) == "too_deep");
  CHECK(refused("[[],[],[[]]]", {3, 100}) == "taken");
}

TEST_CASE("size stops at its limit") {
  CHECK(refused("[1]", {64, 3}) == "taken");
  CHECK(refused("[1] ", {64, 3}) == "too_large");
}

TEST_CASE("what is taken is what a general JSON library takes") {
  CHECK(rc::check([] {
    const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
        "{", "}", "[", "]", ",", ":", "\"a\"", "\"\\u00e9\\n\"", "\"\\ud83d\\ude00\"", "\"\\udc00\"", "0", "-1", "1.5",
        "2e3", "-", ".", "e", "true", "false", "null", " ", "\n", "\"", "\\", "µ", "\xFF"));
    std::string text;
    for (const auto& piece : pieces) {
      text += piece;
    }
    RC_ASSERT(parse(text).has_value() == nlohmann::json::accept(text));
  }));
}

TEST_CASE("one changed character is judged as a general JSON library judges it") {
  CHECK(rc::check([] {
    std::string text = R"({"tray": [{"id": "D6", "mm": 0.93, "u": -1.5e-3}, null, true, false], "é\n": {"b": [[]]}})";
    const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
    text[at] = *rc::gen::oneOf(rc::gen::element(',', ':', '"', '}', ']', '[', '{', '0', '-', '.', 'e', '\\', ' '),
                               rc::gen::inRange<char>(0, 127));
    RC_ASSERT(parse(text).has_value() == nlohmann::json::accept(text));
  }));
}
