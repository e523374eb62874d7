#include "scanner.h"

#include <catch2/catch.hpp>

using shimwright::json::Scanner;

namespace {

std::string scanned_string(std::string_view text) {
  Scanner scanner(text);
  const auto result = scanner.string();
  return result ? *result : "refused";
}

std::string scanned_number(std::string_view text) {
  Scanner scanner(text);
  const auto result = scanner.number();
  return result ? result->text : "refused";
}

}  // namespace

TEST_CASE("strings are taken with their escapes") {
  CHECK(scanned_string(R"("a\"\\\/\b\f\n\r\tz")") == "a\"\\/\b\f\n\r\tz");
  CHECK(scanned_string(R"("\u00b5\u20AC\ud834\uDD1E")") == "µ€𝄞");
  CHECK(scanned_string(R"("\u0000")") == std::string("\0", 1));
}

TEST_CASE("strings that are not well formed are refused") {
  CHECK(scanned_string("\"open") == "refused");
  CHECK(scanned_string("\"line\nbreak\"") == "refused");
  CHECK(scanned_string(R"("\x")") == "refused");
  CHECK(scanned_string("\"\\") == "refused");
  CHECK(scanned_string(R"("\u12g4")") == "refused");
  CHECK(scanned_string(R"("\ud834")") == "refused");
  CHECK(scanned_string(R"("\ud834\u0041")") == "refused");
  CHECK(scanned_string(R"("\udd1e")") == "refused");
  CHECK(scanned_string("\"\xFF\"") == "refused");
}

TEST_CASE("numbers keep their text") {
  CHECK(scanned_number("-0.50e+10,") == "-0.50e+10");
  CHECK(scanned_number("0") == "0");
  CHECK(scanned_number("12E-3 ") == "12E-3");
  CHECK(scanned_number("1e99999") == "1e99999");
}

TEST_CASE("numbers that are not well formed are refused") {
  CHECK(scanned_number("-") == "refused");
  CHECK(scanned_number("01") == "refused");
  CHECK(scanned_number("1.") == "refused");
  CHECK(scanned_number("-.5") == "refused");
  CHECK(scanned_number("1e") == "refused");
  CHECK(scanned_number("1e+-1") == "refused");
}

TEST_CASE("a refusal names line and column in characters") {
  Scanner scanner("µ\n µ?");
  CHECK(scanner.take("µ\n µ"));
  const auto refused = scanner.refuse_unexpected();
  CHECK(refused.value().message.arguments == std::vector<std::string>{"2", "3"});
}
