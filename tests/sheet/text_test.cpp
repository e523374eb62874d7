#include "shimwright/sheet/text.h"

#include <catch2/catch.hpp>

using shimwright::sheet::Text;

TEST_CASE("A text is given in the language asked for, else in English") {
  const Text text{{{"en", "Press on"}, {"de", "Aufpressen"}}};
  CHECK(text.in("de") == "Aufpressen");
  CHECK(text.in("en") == "Press on");
  CHECK(text.in("fr") == "Press on");
  CHECK(text.in("") == "Press on");
  CHECK(text.in_english() == "Press on");
}

TEST_CASE("A step without an instruction has an empty text in every language") {
  CHECK(Text().in("de").empty());
  CHECK(Text().in_english().empty());
}
