#include "seat_model.h"

#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

void check_widened(const SeatModel& model, std::size_t region, double from_um, double to_um) {
  INFO("region " << region);
  CHECK(model.widened_region(region).from_um == Approx(from_um));
  CHECK(model.widened_region(region).to_um == Approx(to_um));
}

}  // namespace

TEST_CASE("regions meet end to end over the whole grid") {
  const Tray tray = even_tray(3, 1200, 100);
  const SeatModel model = seat_model(tray, flat_case(40));
  CHECK(model.region_count() == 5);
  CHECK(model.region_from_um(0) == 1160);
  CHECK(model.region_to_um(0) == 1200);
  CHECK(model.region_from_um(3) == 1400);
  CHECK(model.region_to_um(3) == 1440);
  CHECK(model.region_from_um(4) == 1440);
  CHECK(model.region_to_um(4) == 1480);
  CHECK(model.u_um[0] == Approx(std::sqrt(109.0)));
}

TEST_CASE("a region is tried with its own shim, the outer ones with the nearest") {
  const Tray tray = even_tray(3, 1200, 100);
  const SeatModel model = seat_model(tray, flat_case(40));
  CHECK(model.shim_of_region(0) == 0);
  CHECK(model.shim_of_region(1) == 0);
  CHECK(model.shim_of_region(3) == 2);
  CHECK(model.shim_of_region(4) == 2);
}

TEST_CASE("a region is widened by 2u where the steps are wide") {
  const Tray tray = even_tray(3, 1200, 1000, 0.0001);
  const SeatModel model = seat_model(tray, flat_case(1000, 0.010));
  const double twice_u = 2.0 * model.u_um[0];
  check_widened(model, 0, 200.0, 1200.0 + twice_u);
  check_widened(model, 1, 1200.0 - twice_u, 2200.0 + twice_u);
  check_widened(model, 2, 2200.0 - twice_u, 3200.0 + twice_u);
  check_widened(model, 3, 3200.0 - twice_u, 4200.0 + twice_u);
  check_widened(model, 4, 4200.0 - twice_u, 5200.0);
}

TEST_CASE("a region is widened by a quarter of the step at each end where the feel is coarse") {
  const Tray tray{{"a", um(1000), 0.003}, {"b", um(1100), 0.003}, {"c", um(1300), 0.003}};
  const SeatModel model = seat_model(tray, flat_case(80, 0.5));
  check_widened(model, 0, 920.0, 1025.0);
  check_widened(model, 1, 975.0, 1125.0);
  check_widened(model, 2, 1075.0, 1350.0);
  check_widened(model, 3, 1250.0, 1400.0);
  check_widened(model, 4, 1360.0, 1460.0);
}

TEST_CASE("a tray of one is widened by a quarter of the band") {
  const Tray tray = even_tray(1, 1000, 1);
  const SeatModel model = seat_model(tray, flat_case(80, 0.5));
  check_widened(model, 0, 920.0, 1020.0);
  check_widened(model, 1, 980.0, 1100.0);
  check_widened(model, 2, 1060.0, 1160.0);
}
