#include "shimwright/workshop/workshop_ways.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("the clock of this machine knows its offset") {
  CHECK(workshop::usual_workshop_ways().clock().offset_min == 5 * 60 + 45);
}
