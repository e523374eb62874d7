#include "tray_words.h"

#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

workshop::ShimLine line() {
  workshop::ShimLine made;
  made.counted = {"1.65", quantity::Length(1652), 0.002, 5};
  made.left = 4;
  return made;
}

}  // namespace

TEST_CASE("a shim is said with its thickness, its count and what may be wanted of it") {
  workshop::ShimLine shim = line();
  CHECK(workshop::shim_words(shim) == QString::fromUtf8("measured 1.652 ± 0.004 mm (95 %) · 4 in the tray"));
  shim.stock.counted_at_ms = 1795421400000;
  shim.stock.reorder_at = 2;
  shim.wanted = 0.72;
  CHECK(workshop::shim_words(shim).contains("4 left of 5 counted"));
  CHECK(workshop::shim_words(shim).contains("order at 2"));
  CHECK(workshop::shim_words(shim).contains("open jobs may want 0.7"));
  CHECK(workshop::mark_of(shim) == widgets::Mark::none);
  shim.left = 2;
  CHECK(workshop::shim_words(shim).contains("order now: 2 or fewer"));
  CHECK(workshop::mark_of(shim) == widgets::Mark::held);
  shim.stock.reorder_at.reset();
  shim.left = 0;
  CHECK(workshop::mark_of(shim) == widgets::Mark::on_limit);
  shim.left.reset();
  CHECK(workshop::shim_words(shim).contains("not counted"));
}

TEST_CASE("the day of a count is the day where it was counted") {
  workshop::ShimLine shim = line();
  shim.stock.counted_at_ms = 1795464000000;  // 20:00 UTC: where the tests run it is the next day
  CHECK(workshop::shim_words(shim).contains(QString::fromUtf8("counted 24\u00a0Nov\u00a02026")));
}

TEST_CASE("an uncertainty is never said smaller than it is") {
  workshop::ShimLine shim = line();
  shim.counted.u_mm = 0.0001;
  CHECK(workshop::shim_words(shim).contains(QString::fromUtf8("± 0.001 mm")));
  shim.counted.u_mm = 0.00105;
  CHECK(workshop::shim_words(shim).contains(QString::fromUtf8("± 0.003 mm")));
}

TEST_CASE("what open jobs may want is said with what is not known yet") {
  CHECK(workshop::demand_words({}).startsWith("No open job"));
  CHECK(workshop::demand_words({{}, 3, 1}).contains("3"));
  CHECK(workshop::demand_words({{}, 3, 1}).contains("no hint yet at its size: 1."));
}
