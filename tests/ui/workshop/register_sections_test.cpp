#include "register_sections.h"

#include <catch2/catch.hpp>

#include "workshop_texts.h"

using namespace shimwright;
using test::shown_in;

TEST_CASE("a page is filled, its heading marked where the values are for demonstration, and emptied again") {
  widgets::Scroll page;
  workshop::add_heading(page, "K9, issue 1");
  CHECK_FALSE(shown_in(page).contains("demonstration values"));
  workshop::add_heading(page, "D7, issue 2", true);
  workshop::add_text(page, "Used by 212 jobs.");
  workshop::end_page(page);
  const QString shown = shown_in(page);
  for (const char* text : {"K9, issue 1", "D7, issue 2", "demonstration values", "Used by 212 jobs."}) {
    CHECK(shown.contains(text));
  }
  workshop::clear(page);
  CHECK(shown_in(page).trimmed().isEmpty());
}
