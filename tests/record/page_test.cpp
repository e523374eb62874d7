#include "shimwright/record/page.h"

#include <set>

#include <catch2/catch.hpp>

using namespace shimwright::record;

TEST_CASE("each ink is a colour of its own and text stands out from paper") {
  std::set<std::uint32_t> colours;
  const std::vector<Ink> inks = {Ink::text, Ink::soft,  Ink::edge,  Ink::hair,       Ink::band, Ink::pale,
                                 Ink::blue, Ink::brick, Ink::amber, Ink::amber_edge, Ink::guard};
  for (const Ink ink : inks) {
    colours.insert(rgb_of(ink));
  }
  CHECK(colours.size() == inks.size());
  CHECK(rgb_of(Ink::text) == 0x1F262B);
  CHECK(rgb_of(Ink::blue) == 0x15607C);
  CHECK(rgb_of(Ink::brick) == 0xA33C20);
}

TEST_CASE("type is large enough to read on paper") {
  for (const FontRole role : {FontRole::title, FontRole::heading, FontRole::result, FontRole::result_strong,
                              FontRole::vehicle, FontRole::body, FontRole::strong, FontRole::small}) {
    CHECK(style_of(role).size_mm >= 2.8);  // 8 points
  }
  CHECK(style_of(FontRole::strong).semibold);
  CHECK(style_of(FontRole::body).size_mm == style_of(FontRole::strong).size_mm);
}
