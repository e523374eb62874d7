#include "shimwright/json/canonical.h"

#include <algorithm>
#include <limits>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "random_json.h"
#include "shimwright/json/value.h"

using nlohmann::json;
using shimwright::json::canonical;
namespace test = shimwright::json::test;

namespace {

std::string canonical_text(const json& value) {
  const auto text = canonical(value);
  return text ? *text : "refused: " + text.error().code + " at '" + text.error().place + "'";
}

/// The members in that order, with spaces the canonical text does not have.
std::string text_of_members(const std::vector<std::string>& members) {
  std::string text = "{ ";
  for (const std::string& member : members) {
    text += (text.size() > 2 ? " ,\n" : "") + member;
  }
  return text + " }";
}

}  // namespace

TEST_CASE("canonical text has sorted keys and no white space") {
  CHECK(canonical_text(json::parse(R"( { "b" : [ 1, true , null ], "a" : {} , "B": "x" } )")) ==
        R"({"B":"x","a":{},"b":[1,true,null]})");
  CHECK(canonical_text(json::array()) == "[]");
  CHECK(canonical_text(json(-7)) == "-7");
}

TEST_CASE("canonical strings escape only what must be") {
  CHECK(canonical_text(json("a\"b\\c/d\b\f\n\r\t\x01\x1f\x7fµ€𝄞")) ==
        "\"a\\\"b\\\\c/d\\b\\f\\n\\r\\t\\u0001\\u001f\x7fµ€𝄞\"");
  CHECK(canonical_text(json(std::string("\0", 1))) == R"("\u0000")");
}

TEST_CASE("canonical numbers are integers that a double holds exactly") {
  CHECK(canonical_text(json(test::largest_exact)) == "9007199254740991");
  CHECK(canonical_text(json(-test::largest_exact)) == "-9007199254740991");
  CHECK(canonical_text(json{{"a", {1, test::largest_exact + 1}}}) == "refused: not_canonical at '/a/1'");
  CHECK(canonical_text(json(-test::largest_exact - 1)) == "refused: not_canonical at ''");
  CHECK(canonical_text(json(std::numeric_limits<std::int64_t>::min())) == "refused: not_canonical at ''");
  CHECK(canonical_text(json(std::numeric_limits<std::uint64_t>::max())) == "refused: not_canonical at ''");
  CHECK(canonical_text(json{{"a", 1.0}}) == "refused: not_canonical at '/a'");
}

TEST_CASE("canonical text refuses keys that are not ASCII and bytes that are no text") {
  CHECK(canonical_text(json{{"a", {{"µm", 1}}}}) == "refused: not_canonical at '/a/µm'");
  CHECK(canonical_text(json{{"a/b", "\xFF"}}) == "refused: not_canonical at '/a~1b'");
  CHECK(canonical_text(json::binary({1, 2})) == "refused: not_canonical at ''");
}

TEST_CASE("canonical text is never deeper than the reader takes") {
  json value = json::array();
  for (std::size_t level = 1; level < shimwright::json::ParseLimits{}.depth; ++level) {
    value = json::array({value});
  }
  const auto text = canonical(value);
  REQUIRE(text.has_value());
  CHECK(shimwright::json::parse(*text).has_value());
  CHECK_FALSE(canonical(json::array({value})).has_value());
}

TEST_CASE("canonical text of what canonical text says is the same text") {
  CHECK(rc::check([](const std::vector<std::uint8_t>& bytes) {
    const json value = test::RandomJson(bytes).value(3);
    const auto text = canonical(value);
    RC_ASSERT(text.has_value());
    RC_ASSERT((json::parse(*text) == value));
    RC_ASSERT(canonical_text(json::parse(*text)) == *text);
    RC_ASSERT(shimwright::json::parse(*text).has_value());
  }));
}

TEST_CASE("canonical text does not depend on the order or the spacing in the file") {
  CHECK(rc::check([](const std::vector<std::uint8_t>& bytes) {
    const json value = test::RandomJson(bytes).object(2);
    std::vector<std::string> members;
    for (const auto& [key, member] : value.items()) {
      members.push_back(json(key).dump() + " : " + member.dump(2));
    }
    const std::string there = text_of_members(members);
    std::reverse(members.begin(), members.end());
    RC_ASSERT(canonical_text(json::parse(there)) == canonical_text(value));
    RC_ASSERT(canonical_text(json::parse(text_of_members(members))) == canonical_text(value));
  }));
}
