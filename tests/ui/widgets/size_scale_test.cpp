#include "shimwright/widgets/size_scale.h"

#include <catch2/catch.hpp>

#include "painted.h"

using namespace shimwright;
using widgets::SizeCell;
using widgets::SizeScale;

namespace {

std::vector<SizeCell> five_sizes() {
  return {{"1.80", 1.875}, {"1.95", 2.025}, {"2.10", 2.175, true}, {"2.25", 2.325}, {"2.40", std::nullopt}};
}

}  // namespace

TEST_CASE("the pointer stands in the wanted cell, as far between its borders as the wanted thickness") {
  SizeScale scale;
  scale.resize(420, 96);
  scale.set_cells(five_sizes(), 2.1);
  CHECK(scale.pointer_x().value_or(0) == Approx(210));
  scale.set_cells(five_sizes(), 2.175);
  CHECK(scale.pointer_x().value_or(0) == Approx(247));
  scale.set_cells(five_sizes(), 9.0);
  CHECK(scale.pointer_x().value_or(0) == Approx(395));
  scale.set_cells(five_sizes(), 0.1);
  CHECK(scale.pointer_x().value_or(0) == Approx(25));
  scale.set_cells(five_sizes(), std::nullopt);
  CHECK_FALSE(scale.pointer_x().has_value());
}

TEST_CASE("at most seven sizes are drawn, those around the wanted one") {
  std::vector<SizeCell> cells;
  for (int at = 130; at <= 215; at += 5) {
    cells.push_back({std::to_string(at), at / 100.0 + 0.025, false, false});
  }
  SizeScale scale;
  scale.set_cells(cells, 1.66);
  CHECK(scale.shown() == std::vector<std::string>{"150", "155", "160", "165", "170", "175", "180"});
  scale.set_cells(cells, 0.5);
  CHECK(scale.shown().front() == "130");
  scale.set_cells(cells, 5.0);
  CHECK(scale.shown().size() == 7);
  CHECK(scale.shown().back() == "215");
}

TEST_CASE("the chosen size is blue, two on an edge are amber, and all is said in words") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    SizeScale scale;
    test::painted(scale, {280, 96});
    auto cells = five_sizes();
    scale.set_cells(cells, 2.12);
    for (const int width : {280, 420, 900}) {
      CHECK(test::count_of(test::painted(scale, {width, 96}), colours.blue) > 800);
    }
    CHECK(scale.accessibleDescription() == "2.10 chosen; wanted 2.120 mm");
    cells[2].chosen = false;
    cells[2].candidate = true;
    cells[3].candidate = true;
    scale.set_cells(cells, 2.17);
    CHECK(test::count_of(test::painted(scale, {420, 96}), colours.amber) > 2000);
    CHECK(scale.accessibleDescription() == "2.10 possible; 2.25 possible; wanted 2.170 mm");
  });
}
