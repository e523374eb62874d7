#include <fstream>

#include <catch2/catch.hpp>

#include "shimwright/vehicle/vehicle_number.h"

using nlohmann::json;
using shimwright::vehicle::error_of;
using shimwright::vehicle::read_vehicle_number;
using shimwright::vehicle::VinFault;
using shimwright::vehicle::VinNote;

namespace {

constexpr int this_year = 2026;

json what_is_read(const std::string& typed) {
  const auto number = read_vehicle_number(typed, this_year);
  return number ? to_json(*number) : to_json(number.error());
}

std::string sentence(std::string_view typed) {
  const auto number = read_vehicle_number(typed, this_year);
  return number ? "taken" : error_of(number.error()).in_english();
}

}  // namespace

TEST_CASE("every vehicle number of the vectors is read as it says") {
  std::ifstream file(SHIMWRIGHT_SOURCE_DIR "/tests/vehicle/vectors/vins.json");
  const json vectors = json::parse(file, nullptr, false);
  REQUIRE(vectors.is_object());
  REQUIRE(vectors["cases"].size() == 10);
  for (const json& expected : vectors["cases"]) {
    json read = what_is_read(expected["typed"]);
    // The vectors leave these two out.
    read.erase("notes");
    read.erase("model_years");
    CHECK(read == expected);
  }
}

TEST_CASE("a misfit of the check digit is a note, never a refusal") {
  const auto fits = read_vehicle_number("TESTVN0020A000123", this_year);
  const auto misfit = read_vehicle_number("TESTVN0030A000123", this_year);
  REQUIRE(fits.has_value());
  REQUIRE(misfit.has_value());
  CHECK(fits->notes.empty());
  CHECK(misfit->notes == std::vector{VinNote::check_digit_misfit});
  CHECK_THAT(sentence_for(VinNote::check_digit_misfit).in_english(), Catch::StartsWith("The check digit does not fit"));
}

TEST_CASE("the tenth character gives the model years") {
  const auto number = read_vehicle_number("TESTVN009TA030417", this_year);
  REQUIRE(number.has_value());
  CHECK(number->model_years == std::vector{1996, 2026});
}

TEST_CASE("length is counted in characters after folding") {
  CHECK(what_is_read("")["reason"] == "length");
  CHECK(what_is_read("TESTVN0020A0001234")["reason"] == "length");
  CHECK(what_is_read("ΤESTVN0020A000123")["reason"] == "letters");
  CHECK(sentence("TEST-1") ==
        "A VIN has 17 characters and this one has 5; compare it with the vehicle, or file it as a chassis "
        "number with a reason.");
}

TEST_CASE("a suggestion is made where it is a legal number") {
  CHECK(what_is_read("ТЕSТVNoо20А000i23")["suggestion"] == "TESTVN0020A000123");
  CHECK(sentence("TESTVNOO20A000123") ==
        "A VIN has only the digits and the letters A to Z without I, O and Q; is TESTVN0020A000123 meant?");
  CHECK_FALSE(what_is_read("TESTVN0020A00012Ж").contains("suggestion"));
  CHECK_FALSE(what_is_read("TESTVN0020A00012Ü").contains("suggestion"));
  CHECK_FALSE(what_is_read("OOOOOOOOOOOOOOOOO").contains("suggestion"));
  CHECK_FALSE(what_is_read("TESTVNOO20A00012").contains("suggestion"));
}

TEST_CASE("a placeholder is refused") {
  CHECK(what_is_read("xxxxxxxx-xxxxxxxxx")["reason"] == "placeholder");
  CHECK(sentence("11111111111111111") == "One character 17 times is no VIN; read the number from the vehicle.");
}

TEST_CASE("what was typed comes back, broken bytes replaced so that it can be written") {
  CHECK(what_is_read("a\xFF")["typed"] == "a\uFFFD");
  CHECK(what_is_read(" test-vn0020a000123")["typed"] == " test-vn0020a000123");
}

TEST_CASE("a character is known as one of a vehicle number before all seventeen are there") {
  using shimwright::vehicle::may_be_typed_in_a_vin;
  for (const std::string each : {"A", "z", "0", "9", " ", "-", "\u2010", "\u00A0"}) {
    CHECK(may_be_typed_in_a_vin(each));
  }
  for (const std::string each : {"O", "o", "I", "q", "/", ".", "\u0410", "\u00C4", "\xFF"}) {
    CHECK_FALSE(may_be_typed_in_a_vin(each));
  }
}
