#include "shimwright/print/page_by_page.h"

#include <QBuffer>
#include <QMarginsF>
#include <QPdfWriter>

#include <catch2/catch.hpp>

#include "sample_job.h"
#include "shimwright/print/page_painter.h"
#include "shimwright/record/layout.h"

using namespace shimwright;

TEST_CASE("pages are drawn one at a time, and no more than there are") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  const print::FontMeasure measure(*fonts);
  const auto pages = record::lay_out(record_test::record_of(record_test::long_job()), record::PaperSize::a4, measure);
  QBuffer buffer;
  REQUIRE(buffer.open(QIODevice::WriteOnly));
  QPdfWriter writer(&buffer);
  print::PageByPage drawing(writer, pages, *fonts);
  REQUIRE(drawing.count() == static_cast<int>(pages.size()));
  for (int page = 1; page <= drawing.count(); ++page) {
    REQUIRE(drawing.draw_next());
    CHECK(drawing.drawn() == page);
  }
  CHECK(drawing.finish());
  CHECK_FALSE(drawing.finish());
  CHECK(buffer.data().startsWith("%PDF"));
}
