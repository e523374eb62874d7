#include "spec_sections.h"

#include <catch2/catch.hpp>

#include "shimwright/store/registers.h"
#include "ui_bench.h"
#include "workshop_texts.h"

using namespace shimwright;
using test::shown_in;

TEST_CASE("the values of a spec sheet stand with unit and source, and the sizes of its trays") {
  test::UiBench bench;
  widgets::Scroll page;
  const auto issue = bench.store().registers().spec_sheet(bench.spec_hash());
  REQUIRE(issue);
  workshop::add_spec_values(page, *sheet::read_spec_sheet(issue->json));
  const QString shown = shown_in(page);
  for (const char* text : {"0.25 to 0.85", "at most 12", "N·m", "8 N·m, then 90°", "DP-7714", "at every assembly",
                           "Sizes of the tray “large D7”", "1.650"}) {
    INFO(text);
    CHECK(shown.contains(QString::fromUtf8(text)));
  }
}
