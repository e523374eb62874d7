#include "fields.h"

#include <catch2/catch.hpp>

using namespace shimwright;
using sheet::Fields;

namespace {

json::Value parsed(std::string_view text) {
  const auto value = json::parse(text);
  REQUIRE(value);
  return *value;
}

Result<std::int64_t> read_whole(const json::Value& value, const std::string& place) {
  const json::Number* number = value.number();
  if (number == nullptr) {
    return refuse("wrong_type", place, "No number.");
  }
  return static_cast<std::int64_t>(number->text.size());
}

}  // namespace

TEST_CASE("Fields are read one after another") {
  const auto value =
      parsed(R"({"id": "a-1", "name": "A 1", "on": true, "count": 3, "side": "upper", "list": [1, 22]})");
  Fields fields = Fields::open(value, "/here", {"id", "name", "on", "count", "side", "list"}, {"off", "way"});
  CHECK(fields.id("id") == "a-1");
  CHECK(fields.line("name") == "A 1");
  CHECK(fields.flag("on"));
  CHECK_FALSE(fields.optional_flag("off"));
  CHECK(fields.integer("count", 1, 3) == 3);
  CHECK(fields.word("side", sheet::side_words) == sheet::Side::upper);
  CHECK_FALSE(fields.optional_word("way", sheet::side_words));
  CHECK(fields.list("list", 1, 2, read_whole) == std::vector<std::int64_t>{1, 2});
  CHECK(fields.sound());
  CHECK(fields.place_of("id") == "/here/id");
  const auto finished = fields.finish(7);
  REQUIRE(finished);
  CHECK(*finished == 7);
}

TEST_CASE("The first refusal stays, and what follows reads as empty") {
  const auto value = parsed(R"({"id": "A", "count": 3, "list": [1]})");
  Fields fields = Fields::open(value, "", {"id", "count", "list"});
  CHECK(fields.id("id") == "A");
  CHECK_FALSE(fields.sound());
  CHECK(fields.integer("count", 5, 9) == 0);
  CHECK(fields.list("list", 1, 2, read_whole).empty());
  CHECK(fields.string("id").empty());
  CHECK_FALSE(fields.has("count"));
  fields.refuse("another", "count", "Another.");
  const auto finished = fields.finish(7);
  REQUIRE_FALSE(finished);
  CHECK(finished.error().code == "wrong_id");
  CHECK(finished.error().place == "/id");
}

TEST_CASE("What is no object has no fields") {
  const auto value = parsed("[]");
  Fields fields = Fields::open(value, "/x", {"id"});
  CHECK(fields.string("id").empty());
  const auto finished = fields.finish(0);
  REQUIRE_FALSE(finished);
  CHECK(finished.error().code == "wrong_type");
  CHECK(finished.error().place == "/x");
}

TEST_CASE("Null is there but is no value") {
  const auto value = parsed(R"({"prior": null, "mean": "1"})");
  const Fields fields = Fields::open(value, "", {"prior", "mean"});
  CHECK(fields.has("prior"));
  CHECK_FALSE(fields.has_value("prior"));
  CHECK(fields.has_value("mean"));
}

TEST_CASE("A list too short, too long or with a wrong element is refused at its place") {
  const auto value = parsed(R"({"list": [1, 2, "x"]})");
  const auto code_and_place = [&value](std::size_t least, std::size_t most) {
    Fields fields = Fields::open(value, "", {"list"});
    static_cast<void>(fields.list("list", least, most, read_whole));
    const auto finished = fields.finish(0);
    return finished ? std::string() : finished.error().code + " " + finished.error().place;
  };
  CHECK(code_and_place(4, 9) == "too_few /list");
  CHECK(code_and_place(0, 2) == "too_many /list");
  CHECK(code_and_place(0, 3) == "wrong_type /list/2");
}

TEST_CASE("A word that is not known is refused with those that are") {
  const auto value = parsed(R"({"side": "left"})");
  Fields fields = Fields::open(value, "", {"side"});
  CHECK_FALSE(fields.word("side", sheet::side_words));
  const auto finished = fields.finish(0);
  REQUIRE_FALSE(finished);
  CHECK(finished.error().message.in_english() == "'left' is not known here; write one of: lower, upper.");
}
