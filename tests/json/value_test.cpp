#include "shimwright/json/value.h"

#include <catch2/catch.hpp>

using shimwright::json::Array;
using shimwright::json::Number;
using shimwright::json::Object;
using shimwright::json::pointer;
using shimwright::json::Value;

TEST_CASE("a pointer escapes what RFC 6901 names") {
  CHECK(pointer("", "a") == "/a");
  CHECK(pointer("/a", "b/c~d") == "/a/b~1c~0d");
  CHECK(pointer("/a", "") == "/a/");
  CHECK(pointer("/a", std::size_t{12}) == "/a/12");
}

TEST_CASE("find gives the first member of a name") {
  const Value value(Object{{"a", Value(true)}, {"b", Value()}, {"a", Value(false)}});
  REQUIRE(value.find("a") != nullptr);
  CHECK(*value.find("a")->boolean());
  CHECK(value.find("c") == nullptr);
  CHECK(Value(Array{}).find("a") == nullptr);
}

TEST_CASE("a value knows what it is") {
  CHECK(Value().is_null());
  CHECK(Value(Number{"1"}).number()->text == "1");
  CHECK(Value(Number{"1"}).string() == nullptr);
  CHECK(Value(std::string("x")) == Value(std::string("x")));
  CHECK_FALSE(Value(Number{"1"}) == Value(Number{"1.0"}));
  CHECK_FALSE(Value(Array{Value()}) == Value(Array{}));
}
