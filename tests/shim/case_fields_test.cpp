#include "case_fields.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

using namespace shimwright;
using namespace shimwright::shim;

namespace {

json::Value number(const std::string& text) {
  return json::Value(json::Number{text});
}

std::string refusal_of(const json::Value& value) {
  const auto read = read_length(value, "/place", any_number);
  if (read) {
    return "";
  }
  CHECK(read.error().place == "/place");
  return read.error().code;
}

}  // namespace

TEST_CASE("a length is a whole micrometre, give or take a millionth of one") {
  const auto read = [](const std::string& text) { return read_length(number(text), "", any_number); };
  CHECK(read("0.93")->count() == 930);
  CHECK(read("0.930000001")->count() == 930);
  CHECK(read("0.929999999")->count() == 930);
  CHECK(read("-0.93")->count() == -930);
  CHECK(read("93e-2")->count() == 930);
  CHECK(read("9999.999")->count() == 9999999);
  CHECK(read("1e-400")->count() == 0);
  CHECK(refusal_of(number("0.930000002")) == "too_fine");
  CHECK(refusal_of(number("0.9305")) == "too_fine");
  CHECK(refusal_of(number("10000")) == "out_of_range");
  CHECK(refusal_of(number("-10000")) == "out_of_range");
  CHECK(refusal_of(number("9999.9999999999")) == "out_of_range");
  CHECK(refusal_of(number("1e400")) == "out_of_range");
  CHECK(refusal_of(number("-1E+400")) == "out_of_range");
  CHECK(refusal_of(json::Value(true)) == "wrong_type");
}

TEST_CASE("a typed length is read as a person means it") {
  const auto read = [](const std::string& text) { return read_length(json::Value(text), "", any_number); };
  CHECK(read("0,93")->count() == 930);
  CHECK(read(" .93 mm ")->count() == 930);
  CHECK(read("0.05 in")->count() == 1270);
  CHECK(refusal_of(json::Value(std::string("0.9301"))) == "too_fine");
  CHECK(refusal_of(json::Value(std::string("10000"))) == "out_of_range");
}

TEST_CASE("a bound is inclusive or not, as it says") {
  CHECK(read_plain_number(number("0"), "", zero_or_more));
  CHECK_FALSE(read_plain_number(number("0"), "", more_than_zero));
  CHECK_FALSE(read_plain_number(number("-0.001"), "", zero_or_more));
  CHECK(read_plain_number(number("0.001"), "", {0.001, true}));
  CHECK_FALSE(read_plain_number(number("0.00099"), "", {0.001, true}));
  CHECK_FALSE(read_plain_number(number("1e-400"), "", more_than_zero));
  CHECK_FALSE(read_plain_number(number("0." + std::string(400, '0') + "1"), "", more_than_zero));
  CHECK(read_plain_number(number("1e-400"), "", any_number));
  CHECK_FALSE(read_plain_number(number(std::string(400, '9') + "e-5"), "", any_number));
}

TEST_CASE("only the first fault is kept, and reading on after it is harmless") {
  FirstFault fault;
  Fields fields(json::Value(json::Object{{"a", number("1")}}), "/x", fault, {"a", "b"});
  CHECK(fields.number("a") == 0.0);
  CHECK(fields.list("b").empty());
  CHECK(fields.text("c").empty());
  CHECK_FALSE(fields.flag("c"));
  REQUIRE(fault.error());
  CHECK(fault.error()->place == "/x/b");
  CHECK(fault.error()->code == "missing_field");
}

TEST_CASE("every whole micrometre written as millimetres is read back") {
  CHECK(rc::check("mm and back", [] {
    const auto count = *rc::gen::inRange<std::int64_t>(-9999999, 9999999);
    const auto read = read_length(number(std::to_string(static_cast<double>(count) / 1000.0)), "", any_number);
    RC_ASSERT(read.has_value());
    RC_ASSERT(read->count() == count);
  }));
}
