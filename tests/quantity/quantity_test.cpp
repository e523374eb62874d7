#include "shimwright/quantity/quantity.h"

#include <catch2/catch.hpp>

using shimwright::quantity::in_millimetres;
using shimwright::quantity::Length;
using shimwright::quantity::micrometres;
using shimwright::quantity::Temperature;

TEST_CASE("quantities of one kind add, subtract, turn and compare") {
  CHECK(micrometres(930) + micrometres(20) == micrometres(950));
  CHECK(micrometres(930) - micrometres(950) == micrometres(-20));
  CHECK(-micrometres(930) == micrometres(-930));
  CHECK(micrometres(930) < micrometres(931));
  Length length = micrometres(1);
  length += micrometres(2);
  length -= micrometres(5);
  CHECK(length.count() == -2);
}

TEST_CASE("a quantity begins at zero base units") {
  CHECK(Temperature().count() == 0);
}

TEST_CASE("a length gives millimetres for the statistics") {
  CHECK(in_millimetres(micrometres(-930)) == Approx(-0.93).epsilon(1e-15));
}
