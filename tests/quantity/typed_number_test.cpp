#include "shimwright/quantity/typed_number.h"

#include <catch2/catch.hpp>

using shimwright::quantity::digits_of;
using shimwright::quantity::read_number;
using shimwright::quantity::symbol_of;
using shimwright::quantity::Unit;

namespace {

/// `930/2 mm` or the code of the refusal.
std::string read(std::string_view typed, Unit assumed = Unit::millimetre) {
  const auto number = read_number(typed, assumed);
  return number ? std::to_string(number->base) + "/" + std::to_string(number->decimals) + " " +
                      std::string(symbol_of(number->unit))
                : number.error().code;
}

std::string sentence(std::string_view typed, Unit assumed) {
  const auto number = read_number(typed, assumed);
  return number ? "taken" : number.error().in_english();
}

}  // namespace

TEST_CASE("full-width text and odd spaces are read") {
  CHECK(read("－０，９３\u00A0mm") == "-930/2 mm");
  CHECK(read("\u202F\u20071.5\u3000") == "1500/1 mm");
  CHECK(read("1\u00A0000") == "space_inside");
}

TEST_CASE("units of length are understood in any case, with and without space") {
  CHECK(read("0.42mm") == "420/2 mm");
  CHECK(read("0.42  MM") == "420/2 mm");
  CHECK(read("1 IN") == "25400/0 in");
  CHECK(read("16.5Thou") == "419/1 thou");
  CHECK(read("0.42 m m") == "unknown_unit");
  CHECK(read("0.42 mm x") == "unknown_unit");
  CHECK(read("0.42 inch") == "unknown_unit");
  CHECK(read("5", Unit::inch) == "127000/0 in");
}

TEST_CASE("inch and thou are rounded half away from zero") {
  CHECK(read("0.0625 in") == "1588/4 in");
  CHECK(read("-0.0625 in") == "-1588/4 in");
  CHECK(read("2.5 thou") == "64/1 thou");
  CHECK(read("-2.5 thou") == "-64/1 thou");
}

TEST_CASE("refusals come in their order") {
  CHECK(read("\u00A0") == "empty");
  CHECK(read("+,.") == "incomplete");
  CHECK(read("- .") == "not_a_number");
  CHECK(read("mm") == "not_a_number");
  CHECK(read("mm 5") == "not_a_number");
  CHECK(read("--5") == "not_a_number");
  CHECK(read("- 5") == "not_a_number");
  CHECK(read(". 5") == "not_a_number");
  CHECK(read("1,2,3 4 kg") == "two_marks");
  CHECK(read("1, 5") == "space_inside");
  CHECK(read("1,mm") == "incomplete");
  CHECK(read("1 .5") == "not_a_number");
  CHECK(read("1-5") == "not_a_number");
  CHECK(read("1'000") == "not_a_number");
  CHECK(read("1 mm2") == "not_a_number");
  CHECK(read("1 m２") == "not_a_number");
  CHECK(read("1-") == "unknown_unit");
  CHECK(read("99999,1234 kg") == "unknown_unit");
  CHECK(read("99999,1234") == "too_fine");
  CHECK(read("0.0000") == "too_fine");
}

TEST_CASE("a length is refused from ten metres on") {
  CHECK(read("9999.999") == "9999999/3 mm");
  CHECK(read("10000") == "out_of_range");
  CHECK(read("-9999.999") == "-9999999/3 mm");
  CHECK(read("-10000.0") == "out_of_range");
  CHECK(read("393.7007 in") == "9999998/4 in");
  CHECK(read("393.7008 in") == "out_of_range");
  CHECK(read("393700.8 thou") == "out_of_range");
  CHECK(read(std::string(4000, '9')) == "out_of_range");
  CHECK(read(std::string(4000, '0') + "7") == "7000/0 mm");
}

TEST_CASE("torque") {
  CHECK(read("13,5", Unit::newton_metre) == "13500/1 N·m");
  for (const auto* typed : {"20 Nm", "20nm", "20 N·m", "20 N⋅m", "20 n M", "20 N  m"}) {
    CHECK(read(typed, Unit::newton_metre) == "20000/0 N·m");
  }
  for (const auto* typed : {"10 lbf·ft", "10lbfft", "10 LBF FT", "10 lbf⋅ft"}) {
    CHECK(read(typed, Unit::newton_metre) == "13558/0 lbf·ft");
  }
  CHECK(read("7375.621 lbf ft", Unit::newton_metre) == "9999999/3 lbf·ft");
  CHECK(read("7375.622 lbf ft", Unit::newton_metre) == "out_of_range");
  CHECK(read("5 mm", Unit::newton_metre) == "unknown_unit");
}

TEST_CASE("mass, volume, pressure and voltage keep the unit typed") {
  CHECK(read("1.25", Unit::gram) == "1250/2 g");
  CHECK(read("0.000001 KG", Unit::gram) == "1/6 kg");
  CHECK(read("1,7 L", Unit::litre) == "1700000/1 l");
  CHECK(read("20 mL", Unit::litre) == "20000/0 ml");
  CHECK(read("2.5 bar", Unit::bar) == "250000/1 bar");
  CHECK(read("250kpa", Unit::bar) == "250000/0 kPa");
  CHECK(read("12.6 v", Unit::volt) == "12600/1 V");
  CHECK(read("350 mV", Unit::volt) == "350/0 mV");
  CHECK(read("350.5 mV", Unit::volt) == "too_fine");
}

TEST_CASE("a large M for mega is not taken for milli") {
  CHECK(read("1 MV", Unit::volt) == "unknown_unit");
  CHECK(read("1 ML", Unit::litre) == "unknown_unit");
}

TEST_CASE("angle, temperature and percent") {
  CHECK(read("90", Unit::degree) == "90000/0 °");
  CHECK(read("90°", Unit::degree) == "90000/0 °");
  CHECK(read("90 DEG", Unit::degree) == "90000/0 °");
  CHECK(read("-5 °C", Unit::degree_celsius) == "-5000/0 °C");
  CHECK(read("-5c", Unit::degree_celsius) == "-5000/0 °C");
  CHECK(read("5 deg", Unit::degree_celsius) == "unknown_unit");
  CHECK(read("-273.15", Unit::degree_celsius) == "-273150/2 °C");
  CHECK(read("-273.151", Unit::degree_celsius) == "out_of_range");
  CHECK(read("12.5 %", Unit::percent) == "12500/1 %");
}

TEST_CASE("counts are whole and not below zero") {
  CHECK(read("3", Unit::piece) == "3/0 ");
  CHECK(read("3 pcs", Unit::piece) == "3/0 ");
  CHECK(read("3.0", Unit::piece) == "too_fine");
  CHECK(read("-1", Unit::piece) == "out_of_range");
  CHECK(read("-0", Unit::piece) == "0/0 ");
}

TEST_CASE("a distance on the odometer is not below zero") {
  CHECK(read("184200", Unit::kilometre) == "184200000/0 km");
  CHECK(read("100 mi", Unit::kilometre) == "160934/0 mi");
  CHECK(read("-1", Unit::kilometre) == "out_of_range");
}

TEST_CASE("each refusal is a sentence that says what to do") {
  CHECK(sentence("", Unit::millimetre) == "Nothing is entered yet; type a number.");
  CHECK(sentence("1 kg", Unit::millimetre) ==
        "This unit does not fit here; leave it out or type one of: mm, in, thou.");
  CHECK(sentence("1 x", Unit::piece) == "This unit does not fit here; leave it out or type one of: pcs.");
  CHECK(sentence("1.23 thou", Unit::inch) == "That is finer than can be kept; in thou, type no more decimals than 1.");
  CHECK(sentence("1.5", Unit::piece) == "Only a whole number fits here; leave out the decimals.");
  CHECK(sentence("99999", Unit::millimetre) ==
        "The number has to be smaller than 10000.00 mm; check the decimal mark.");
  CHECK(sentence("-300", Unit::degree_celsius) == "The number cannot be less than -273.15 °C; check the sign.");
}
