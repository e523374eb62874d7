#include "typed_text.h"

#include <catch2/catch.hpp>

using shimwright::quantity::folded_and_trimmed;
using shimwright::quantity::in_lower_case;

TEST_CASE("full-width characters and the minus sign become ASCII") {
  CHECK(folded_and_trimmed("０１２３４５６７８９") == "0123456789");
  CHECK(folded_and_trimmed("－０．９３，＋") == "-0.93,+");
  CHECK(folded_and_trimmed("\u22120,02") == "-0,02");
}

TEST_CASE("white space of every kind is trimmed and becomes a space inside") {
  CHECK(folded_and_trimmed("\u00A0\u202F\u2007\u3000\t\r\n\v\f1\u00A0mm\u2009 ") == "1 mm");
  CHECK(folded_and_trimmed(" \u00A0\t") == "");
  CHECK(folded_and_trimmed("") == "");
}

TEST_CASE("other characters stay as they are, broken ones too") {
  CHECK(folded_and_trimmed("µ½\xFF\xE2\x88") == "µ½\xFF\xE2\x88");
}

TEST_CASE("lower case is for ASCII letters, spaces become one") {
  CHECK(in_lower_case("LBF   FT Ω·Z") == "lbf ft Ω·z");
}
