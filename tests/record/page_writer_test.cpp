#include "page_writer.h"

#include <catch2/catch.hpp>

#include "paper.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::FontRole;
using record::Ink;
using record::PageHead;
using record::PageWriter;
using record::PaperSize;

TEST_CASE("each page says whose it is and which of how many") {
  const FixedMeasure measure;
  PageWriter writer(PaperSize::a4, measure,
                    {"Hollow Lane Gearboxes", "4 Hollow Lane", "Clutch pack job record", "Job 7", ""});
  writer.new_page();
  const auto pages = writer.finish();
  REQUIRE(pages.size() == 2);
  CHECK(has({pages[0]}, "Job 7 · page 1 of 2"));
  CHECK(has({pages[1]}, "Job 7 · page 2 of 2"));
  CHECK(times(pages, "Hollow Lane Gearboxes") == 2);
  CHECK(times(pages, "Clutch pack job record") == 2);
  CHECK(pages[0].width_mm == 210);
  CHECK(pages[0].height_mm == 297);
}

TEST_CASE("Letter paper has its own size") {
  const FixedMeasure measure;
  const auto pages = PageWriter(PaperSize::letter, measure, {}).finish();
  CHECK(pages[0].width_mm == Approx(215.9));
  CHECK(pages[0].height_mm == Approx(279.4));
}

TEST_CASE("the mark lies across every page, below all else, and stands in the head") {
  const FixedMeasure measure;
  PageWriter writer(PaperSize::a4, measure, {"w", "a", "t", "Job 7", "DEMONSTRATION VALUES"});
  writer.new_page();
  for (const auto& page : writer.finish()) {
    const auto* mark = std::get_if<record::TextRun>(&page.elements.front());
    REQUIRE(mark != nullptr);
    CHECK(mark->text == "DEMONSTRATION VALUES");
    CHECK(mark->ink == Ink::pale);
    CHECK(mark->turned_deg > 0);
    CHECK(has({page}, "DEMONSTRATION VALUES · Job 7 · page"));
  }
}

TEST_CASE("a name too long for the head is shortened, not written over the title") {
  const FixedMeasure measure;
  PageHead head{std::string(60, 'w') + " " + std::string(60, 'w'), "", "Clutch pack job record", "Job 7", ""};
  const auto pages = PageWriter(PaperSize::a4, measure, head).finish();
  CHECK(broken_laws(pages).empty());
  CHECK(has(pages, " …"));
}

TEST_CASE("a logo stands left of the name on every page and takes room from it") {
  const FixedMeasure measure;
  PageHead head{std::string(60, 'w') + " " + std::string(60, 'w'), "4 Hollow Lane", "Clutch pack job record", "Job 7",
                ""};
  head.logo = "a picture";
  PageWriter writer(PaperSize::a4, measure, head);
  writer.new_page();
  const auto pages = writer.finish();
  CHECK(broken_laws(pages).empty());
  for (const auto& page : pages) {
    const auto logos = elements_of<record::Picture>({page});
    REQUIRE(logos.size() == 1);
    CHECK(logos[0].bytes == "a picture");
    for (const auto& run : elements_of<record::TextRun>({page})) {
      CHECK(run.x_mm >= logos[0].box.x_mm + logos[0].box.width_mm);
    }
  }
}

TEST_CASE("what does not fit goes to the next page") {
  const FixedMeasure measure;
  PageWriter writer(PaperSize::a4, measure, {});
  CHECK(writer.at_top());
  writer.need(10000);
  CHECK(writer.page_count() == 1);
  writer.piece(writer.room() - 5);
  writer.need(5);
  CHECK(writer.page_count() == 1);
  writer.need(5.1);
  CHECK(writer.page_count() == 2);
  writer.gap(9);
  CHECK(writer.at_top());
  writer.go_to_bottom(20);
  CHECK(writer.room() == Approx(20));
}

TEST_CASE("a long paragraph flows over pages without loss") {
  std::string text;
  for (int number = 1000; number < 5000; ++number) {
    text += std::to_string(number) + " ";
  }
  const auto pages = pages_of([&](PageWriter& writer) { writer.paragraph({{text, FontRole::body, Ink::text}}, 4.4); });
  CHECK(pages.size() > 1);
  CHECK(broken_laws(pages).empty());
  CHECK(has(pages, "1000 1001"));
  CHECK(has(pages, "4998 4999"));
}

TEST_CASE("a heading keeps what it heads with it") {
  const auto pages = pages_of([](PageWriter& writer) {
    writer.piece(writer.room() - 12);
    writer.heading("Shims, mm", 10);
  });
  REQUIRE(pages.size() == 2);
  CHECK(has({pages[1]}, "Shims, mm"));
}

TEST_CASE("closer rows have half the white between them") {
  const FixedMeasure measure;
  for (const auto& [spacing, gap] : {std::pair(record::Spacing::usual, 2.0), std::pair(record::Spacing::tight, 1.0)}) {
    PageWriter writer(PaperSize::a4, measure, {}, spacing);
    writer.piece(5);
    const double before = writer.y();
    writer.gap(2);
    CHECK(writer.y() - before == Approx(gap));
    CHECK(writer.spaced(2) == Approx(gap));
  }
}

TEST_CASE("a heading that is to begin a page does, once and only that one") {
  const FixedMeasure measure;
  PageWriter writer(PaperSize::a4, measure, {});
  writer.begin_page_at_heading(1);
  for (const char* title : {"first", "second", "third"}) {
    writer.heading(title, 10);
    writer.piece(10);
  }
  CHECK(writer.heading_count() == 3);
  const auto pages = writer.finish();
  REQUIRE(pages.size() == 2);
  CHECK(has({pages[0]}, "first"));
  CHECK(has({pages[1]}, "second"));
  CHECK(has({pages[1]}, "third"));
}
