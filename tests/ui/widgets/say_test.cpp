#include "shimwright/widgets/say.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("a sentence is said with its arguments") {
  CHECK(widgets::say(Message{"{0} of {1}", {"2", "3"}}) == "2 of 3");
  CHECK(widgets::say(Error{"code", "place", {"Do it again.", {}}}) == "Do it again.");
}

TEST_CASE("text goes both ways unchanged") {
  const std::string text = "N·m, °C, −5";
  CHECK(widgets::plain(widgets::qt(text)) == text);
  CHECK(widgets::number_text("-0.12") == QString::fromUtf8("−0.12"));
}

TEST_CASE("a moment is read by the clock of this machine") {
  CHECK(widgets::day_and_time(1795421400000) == "23 Nov 2026, 13:55");
}
