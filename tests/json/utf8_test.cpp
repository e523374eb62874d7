#include "shimwright/json/utf8.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

using shimwright::json::append_utf8;
using shimwright::json::as_utf8;
using shimwright::json::is_utf8;
using shimwright::json::utf8_length;

TEST_CASE("UTF-8 of one to four bytes is taken") {
  CHECK(utf8_length("a") == 1);
  CHECK(utf8_length("µ") == 2);
  CHECK(utf8_length("€") == 3);
  CHECK(utf8_length("𝄞") == 4);
  CHECK(utf8_length("") == 0);
  CHECK(is_utf8(""));
}

TEST_CASE("broken UTF-8 is found") {
  const std::string broken =
      GENERATE("\x80", "\xC0\x80", "\xC1\xBF", "\xC3", "\xE0\x9F\xBF", "\xE2\x82", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF",
               "\xF0\x90\x80", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "\xE2\x28\xA1", "\xF0\x90\x28\x80");
  CHECK(utf8_length(broken) == 0);
  CHECK_FALSE(is_utf8("ok" + broken));
}

TEST_CASE("broken bytes are replaced one by one") {
  CHECK(as_utf8("a\xFFµ\xE2\x82") == "a\uFFFDµ\uFFFD\uFFFD");
  CHECK(as_utf8("") == "");
}

TEST_CASE("every character written is one character read") {
  CHECK(rc::check([] {
    const auto character = *rc::gen::suchThat(rc::gen::inRange<std::uint32_t>(0, 0x110000),
                                              [](auto each) { return each < 0xD800 || each > 0xDFFF; });
    std::string text;
    append_utf8(text, character);
    RC_ASSERT(utf8_length(text) == text.size());
  }));
}
