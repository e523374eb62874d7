#include "shimwright/shim/tilt.h"

#include <catch2/catch.hpp>

using namespace shimwright::shim;

TEST_CASE("a tilt has a direction only beyond what its least certain spot is uncertain by") {
  FloatJudgement judged;
  judged.high_at_deg = 20.0;
  judged.tilt_mm = 0.032;
  judged.u_spot_mm = {0.01, 0.016, 0.01};
  CHECK(tilt_has_direction(judged));
  judged.u_spot_mm[1] = 0.0164;
  CHECK_FALSE(tilt_has_direction(judged));
  judged.u_spot_mm.clear();
  CHECK(tilt_has_direction(judged));
  judged.high_at_deg.reset();
  CHECK_FALSE(tilt_has_direction(judged));
}
