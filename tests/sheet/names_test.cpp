#include "shimwright/sheet/names.h"

#include <string>

#include <catch2/catch.hpp>

using namespace shimwright::sheet;

TEST_CASE("Ids are small letters, digits and hyphens") {
  CHECK(is_id("press-peak"));
  CHECK(is_id("7"));
  CHECK(is_id(std::string(40, 'a')));
  for (const std::string& text : {std::string(), std::string(41, 'a'), std::string("Press"), std::string("a_b"),
                                  std::string("a b"), std::string("a.b"), std::string("ä")}) {
    INFO(text);
    CHECK_FALSE(is_id(text));
  }
}

TEST_CASE("Names of limits have underscores where ids have hyphens") {
  CHECK(is_key("press_torque"));
  CHECK_FALSE(is_key("press-torque"));
  CHECK_FALSE(is_key(""));
}

TEST_CASE("A shim is named as it is marked") {
  CHECK(is_shim_id("1.65"));
  CHECK(is_shim_id("A 12/3"));
  CHECK(is_shim_id(std::string(16, '9')));
  CHECK_FALSE(is_shim_id(""));
  CHECK_FALSE(is_shim_id(std::string(17, '9')));
  CHECK_FALSE(is_shim_id(" 1.65"));
  CHECK_FALSE(is_shim_id("1.65 "));
  CHECK_FALSE(is_shim_id("1.65\t"));
  CHECK_FALSE(is_shim_id("1.65µ"));
}

TEST_CASE("A UUID has its hyphens and small hexadecimal digits") {
  CHECK(is_uuid("0198f0c0-5a00-7a11-8d01-000000000001"));
  CHECK_FALSE(is_uuid("0198F0C0-5a00-7a11-8d01-000000000001"));
  CHECK_FALSE(is_uuid("0198f0c05a00-7a11-8d01-000000000001-"));
  CHECK_FALSE(is_uuid("0198f0c0-5a00-7a11-8d01-00000000000"));
  CHECK_FALSE(is_uuid("0198f0c0-5a00-7a11-8d01-00000000000g"));
}

TEST_CASE("A language is two or three small letters") {
  CHECK(is_language("en"));
  CHECK(is_language("gsw"));
  for (const char* text : {"", "e", "EN", "de-at", "engl", "e1"}) {
    INFO(text);
    CHECK_FALSE(is_language(text));
  }
}

TEST_CASE("Blank is white space of any kind, and nothing") {
  CHECK(is_blank(""));
  CHECK(is_blank(" \t\r\n"));
  CHECK(is_blank("\xC2\xA0 \xC2\xA0"));
  CHECK_FALSE(is_blank(" x"));
  CHECK_FALSE(is_blank("\xC2\xB5"));
}

TEST_CASE("Characters that do not print are seen") {
  CHECK(has_control_character("a\nb"));
  CHECK(has_control_character(std::string("a\0b", 3)));
  CHECK(has_control_character("\x7F"));
  CHECK_FALSE(has_control_character("25 N·m, dann 90°"));
}

TEST_CASE("Characters are counted, not bytes") {
  CHECK(character_count("") == 0);
  CHECK(character_count("N·m") == 3);
  CHECK(character_count("90°") == 3);
}
