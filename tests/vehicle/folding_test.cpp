#include "folding.h"

#include <catch2/catch.hpp>

#include "shimwright/vehicle/vehicle_number.h"

using shimwright::vehicle::characters_of;
using shimwright::vehicle::folded_key;
using shimwright::vehicle::is_legal;
using shimwright::vehicle::trimmed;
using shimwright::vehicle::without_look_alikes;

TEST_CASE("characters are counted, broken bytes one by one") {
  CHECK(characters_of("aµ€").size() == 3);
  CHECK(characters_of("\xE2\x82").size() == 2);
  CHECK(characters_of("").empty());
}

TEST_CASE("white space is trimmed at both ends") {
  CHECK(trimmed("\u00A0 a b\u3000\n") == "a b");
  CHECK(trimmed(" \t") == "");
  CHECK(trimmed("") == "");
  CHECK(trimmed("µ") == "µ");
}

TEST_CASE("a key has no white space, no hyphens and no small ASCII letters") {
  CHECK(folded_key(" te-st\u00A0vn\u2011\u20100\u00AD1 ") == "TESTVN01");
  CHECK(folded_key("µ–a") == "µ–A");
}

TEST_CASE("broken bytes do not join to a hyphen") {
  const std::string key = folded_key("A\xE2 \x80\x90");
  CHECK(key == "A\uFFFD\uFFFD\uFFFD");
  CHECK(folded_key(key) == key);
}

TEST_CASE("letters and digits without I, O and Q are legal") {
  int legal = 0;
  for (int code = 0; code < 128; ++code) {
    legal += is_legal(static_cast<char>(code)) ? 1 : 0;
  }
  CHECK(legal == 33);
  CHECK_FALSE(is_legal('O'));
  CHECK_FALSE(is_legal('a'));
}

TEST_CASE("look-alikes become what was meant") {
  CHECK(without_look_alikes("OQI") == "001");
  CHECK(without_look_alikes("АВЕКМНОРСТУХІЈЅ") == "ABEKMH0PCTYX1JS");
  CHECK(without_look_alikes("ΑΒΕΖΗΙΚΜΝΟΡΤΥΧ") == "ABEZH1KMN0PTYX");
  CHECK(without_look_alikes("Ж1Z\xFF") == "Ж1Z\xFF");
}
