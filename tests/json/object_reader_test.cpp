#include "shimwright/json/object_reader.h"

#include <catch2/catch.hpp>

using shimwright::json::ObjectReader;
using shimwright::json::parse;
using shimwright::json::Value;

namespace {

Value read(std::string_view text) {
  const auto value = parse(text);
  return value ? *value : Value();
}

std::string opened(std::string_view text) {
  const Value value = read(text);
  const auto reader = ObjectReader::open(value, "/case", {"shim", "fit"}, {"note"});
  return reader ? "open" : reader.error().code + " " + reader.error().place;
}

template <class Result>
std::string refusal(const Result& result) {
  return result ? "taken" : result.error().code + " " + result.error().place;
}

}  // namespace

TEST_CASE("an object opens when all required fields and only known ones are there") {
  CHECK(opened(R"({"shim": 1, "fit": 2})") == "open");
  CHECK(opened(R"({"note": 3, "fit": 2, "shim": 1})") == "open");
}

TEST_CASE("what is no object is refused at its own place") {
  CHECK(opened("[]") == "wrong_type /case");
  CHECK(opened("null") == "wrong_type /case");
}

TEST_CASE("unknown and repeated fields come before missing ones, in the order of the file") {
  CHECK(opened(R"({"shim": 1, "colour": 2})") == "unknown_field /case/colour");
  CHECK(opened(R"({"shim": 1, "shim": 2})") == "repeated_field /case/shim");
  CHECK(opened(R"({"shim": 1, "shim": 2, "colour": 3})") == "repeated_field /case/shim");
  CHECK(opened(R"({"colour": 3, "shim": 1, "shim": 2})") == "unknown_field /case/colour");
  CHECK(opened(R"({"a/b~": 3})") == "unknown_field /case/a~1b~0");
}

TEST_CASE("missing fields are named in the order they are listed") {
  CHECK(opened("{}") == "missing_field /case/shim");
  CHECK(opened(R"({"shim": 1})") == "missing_field /case/fit");
}

TEST_CASE("values are taken by type") {
  const Value value = read(R"({"t": "x", "b": true, "n": -12, "l": [1], "z": null})");
  const auto reader = ObjectReader::open(value, "", {"t", "b", "n", "l", "z"}, {"absent"});
  REQUIRE(reader.has_value());
  CHECK(*reader->string("t") == "x");
  CHECK(*reader->boolean("b"));
  CHECK(*reader->integer("n", -12, 0) == -12);
  CHECK((*reader->array("l"))->size() == 1);
  CHECK(reader->member("z")->is_null());
  CHECK_FALSE(reader->has("absent"));
  CHECK(refusal(reader->string("b")) == "wrong_type /b");
  CHECK(refusal(reader->boolean("z")) == "wrong_type /z");
  CHECK(refusal(reader->integer("t", 0, 1)) == "wrong_type /t");
  CHECK(refusal(reader->array("n")) == "wrong_type /n");
  CHECK(refusal(reader->string("absent")) == "wrong_type /absent");
  CHECK(refusal(reader->boolean("absent")) == "wrong_type /absent");
  CHECK(refusal(reader->integer("absent", 0, 1)) == "wrong_type /absent");
  CHECK(refusal(reader->array("absent")) == "wrong_type /absent");
}

TEST_CASE("an integer is whole and within its bounds") {
  const Value value = read(R"({"n": 5, "f": 5.0, "e": 5e0, "h": 99999999999999999999, "m": -0})");
  const auto reader = ObjectReader::open(value, "", {"n", "f", "e", "h", "m"});
  REQUIRE(reader.has_value());
  CHECK(refusal(reader->integer("n", 5, 5)) == "taken");
  CHECK(refusal(reader->integer("n", 6, 9)) == "out_of_range /n");
  CHECK(refusal(reader->integer("n", 0, 4)) == "out_of_range /n");
  CHECK(refusal(reader->integer("f", 0, 9)) == "wrong_type /f");
  CHECK(refusal(reader->integer("e", 0, 9)) == "wrong_type /e");
  CHECK(refusal(reader->integer("h", 0, 9)) == "out_of_range /h");
  CHECK(*reader->integer("m", 0, 9) == 0);
}
