#include "sorted_tray.h"

#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

TEST_CASE("a tray in any order is seen thin to thick") {
  const Tray tray{{"b", um(1400), 0.003}, {"c", um(1600), 0.003}, {"a", um(1200), 0.003}};
  const auto sorted = thin_to_thick(tray);
  REQUIRE(sorted.size() == 3);
  CHECK(sorted[0]->id == "a");
  CHECK(sorted[1]->id == "b");
  CHECK(sorted[2]->id == "c");
  CHECK(index_of(sorted, "c") == 2);
}
