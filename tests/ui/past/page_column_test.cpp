#include "page_column.h"

#include <QScrollArea>
#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/widgets/child.h"

using namespace shimwright;

namespace {

std::vector<record::Page> blank_pages(int count) {
  record::Page page;
  page.width_mm = 210;
  page.height_mm = 297;
  page.elements.emplace_back(record::Rectangle{{10, 10, 50, 50}, record::Ink::blue, std::nullopt});
  return std::vector<record::Page>(static_cast<std::size_t>(count), page);
}

}  // namespace

TEST_CASE("of many pages only those that are seen are drawn") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  QScrollArea area;
  area.setWidgetResizable(true);
  auto* column = widgets::child_of<past::PageColumn>(&area);
  area.setWidget(column);
  area.resize(700, 500);
  column->set_pages(blank_pages(9), *fonts);
  column->set_dots_per_mm(2);
  const QImage image = area.grab().toImage();
  CHECK(column->pages_painted() == 1);
  const QPoint inside = column->place_of(0).topLeft() + QPoint(60, 60);
  CHECK(image.pixelColor(inside) == QColor::fromRgb(record::rgb_of(record::Ink::blue)));
}

TEST_CASE("pages lie one below the other and are found by their height") {
  const auto fonts = print::load_fonts();
  REQUIRE(fonts);
  past::PageColumn column;
  column.set_pages(blank_pages(3), *fonts);
  CHECK(column.widest_mm() == 210);
  CHECK(column.place_of(1).top() > column.place_of(0).bottom());
  CHECK(column.page_at(0) == 0);
  CHECK(column.page_at(column.place_of(1).center().y()) == 1);
  CHECK(column.page_at(1000000) == 2);
  column.clear();
  CHECK(column.height() == 0);
}
