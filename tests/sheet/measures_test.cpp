#include "measures.h"

#include <catch2/catch.hpp>

#include "spec_ranges.h"

using namespace shimwright;
using quantity::micrometres;
using quantity::Unit;
using sheet::Fields;

namespace {

/// Reads the field `x` of an object by `read`; its value, or the code of the refusal.
template <class Read>
std::string read_field(const std::string& text, Read read) {
  const auto value = json::parse("{\"x\": \"" + text + "\"}");
  REQUIRE(value);
  Fields fields = Fields::open(*value, "", {"x"});
  const std::string result = read(fields);
  const auto finished = fields.finish(result);
  return finished ? *finished : finished.error().code + " " + finished.error().place;
}

std::string as_length(const std::string& text) {
  return read_field(text, [](Fields& fields) {
    const sheet::LengthRange range{micrometres(10), micrometres(2'000)};
    return std::to_string(read_length(fields, "x", range).count());
  });
}
std::string as_decimal(const std::string& text) {
  return read_field(text, [](Fields& fields) {
    return sheet::read_decimal(fields, "x", {1'000, 2'000'000}) == 0.25 ? "a quarter" : "another";
  });
}
std::string as_torque(const std::string& text) {
  return read_field(text, [](Fields& fields) {
    const auto number = sheet::read_measure(fields, "x", Unit::newton_metre);
    return std::to_string(number.base) + " with " + std::to_string(number.decimals);
  });
}
std::string as_unit(const std::string& text) {
  return read_field(text, [](Fields& fields) { return std::string(symbol_of(sheet::read_unit(fields, "x"))); });
}

}  // namespace

TEST_CASE("Lengths are read in mm, exactly, within their range") {
  CHECK(as_length("0.05") == "50");
  CHECK(as_length("0,05") == "50");
  CHECK(as_length("0.010") == "10");
  CHECK(as_length("2.000") == "2000");
  CHECK(as_length("0.05 mm") == "50");
  CHECK(as_length("0.009") == "out_of_range /x");
  CHECK(as_length("2.001") == "out_of_range /x");
  CHECK(as_length("0.05 in") == "wrong_unit /x");
  CHECK(as_length("1.2345") == "too_fine /x");
  CHECK(as_length("") == "empty /x");
}

TEST_CASE("Plain decimals are read within their range") {
  CHECK(as_decimal("0.25") == "a quarter");
  CHECK(as_decimal("0,250000") == "a quarter");
  CHECK(as_decimal("0.000999") == "out_of_range /x");
  CHECK(as_decimal("2.000001") == "out_of_range /x");
  CHECK(as_decimal("2.5e-1") == "not_a_number /x");
  CHECK(as_decimal("-0.25") == "out_of_range /x");
}

TEST_CASE("Other measures keep the decimals they are written with") {
  CHECK(as_torque("12") == "12000 with 0");
  CHECK(as_torque("12.50") == "12500 with 2");
  CHECK(as_torque("9 lbf·ft") == "wrong_unit /x");
}

TEST_CASE("Units are named by their symbol") {
  for (const char* symbol : {"mm", "N·m", "°C", "V", "l", "km", ""}) {
    CHECK(as_unit(symbol) == symbol);
  }
  CHECK(as_unit("furlong") == "unknown_word /x");
}

TEST_CASE("A refused range says what it is") {
  const auto value = json::parse(R"({"x": "9"})");
  REQUIRE(value);
  Fields fields = Fields::open(*value, "", {"x"});
  static_cast<void>(read_length(fields, "x", sheet::snug_band_range));
  const auto finished = fields.finish(0);
  REQUIRE_FALSE(finished);
  CHECK(finished.error().message.in_english() == "A number from 0.001 to 5.000 has to stand here.");
}
