#include "tray_steps.h"

#include <catch2/catch.hpp>

namespace shimwright::job::test {

namespace {

using quantity::micrometres;

const std::vector<TrayShim> uneven = {{"1.30", micrometres(1300), 0.003, {}},
                                      {"1.35", micrometres(1350), 0.003, {}},
                                      {"1.50", micrometres(1500), 0.003, {}}};

}  // namespace

TEST_CASE("A shim is found by its mark") {
  CHECK(shim_with_id(uneven, "1.35") == &uneven[1]);
  CHECK(shim_with_id(uneven, "1.3") == nullptr);
  CHECK(shim_with_id({}, "1.35") == nullptr);
}

TEST_CASE("A shim that left the tray is kept in it in order, under its mark or that of one as thick") {
  auto tray = uneven;
  CHECK(keep_in_tray(tray, uneven[1]) == "1.35");
  CHECK(tray.size() == 3);
  CHECK(keep_in_tray(tray, {"1.350", micrometres(1350), 0.002, {}}) == "1.35");
  CHECK(tray.size() == 3);
  CHECK(keep_in_tray(tray, {"1.40", micrometres(1400), 0.002, 5}) == "1.40");
  CHECK(keep_in_tray(tray, {"1.60", micrometres(1600), 0.002, {}}) == "1.60");
  REQUIRE(tray.size() == 5);
  CHECK(tray[2].id == "1.40");
  CHECK(tray[2].count == 0);
  CHECK(tray[4].id == "1.60");
}

TEST_CASE("The nearest shim, the thinner one where two are as near") {
  CHECK(nearest_shim(uneven, micrometres(1360)) == &uneven[1]);
  CHECK(nearest_shim(uneven, micrometres(1325)) == &uneven[0]);
  CHECK(nearest_shim(uneven, micrometres(9000)) == &uneven[2]);
  CHECK(nearest_shim({}, micrometres(1360)) == nullptr);
}

TEST_CASE("The step beside a shim is the smaller of its two") {
  CHECK(step_beside(uneven, micrometres(1350)) == micrometres(50));
  CHECK(step_beside(uneven, micrometres(1510)) == micrometres(150));
  CHECK_FALSE(step_beside({uneven.front()}, micrometres(1300)));
  CHECK_FALSE(step_beside({}, micrometres(1300)));
}

}  // namespace shimwright::job::test
