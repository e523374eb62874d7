#include "shimwright/metrology/uncertainty.h"

#include <cmath>

#include <catch2/catch.hpp>

using namespace shimwright::metrology;

namespace {

const Indicator hundredth_dial{0.010, 0.010, 0.008};

}  // namespace

TEST_CASE("a digital step counts as a rectangle, 0.29 of its width") {
  // JCGM 100:2008, F.2.2.1: u = 0.29 δx; two readings make a float, so √2 of it.
  CHECK(random_part_mm({0.010, 0.0, 0.0}) == Approx(0.29 * 0.010 * std::sqrt(2.0)).epsilon(0.01));
}

TEST_CASE("a maximum permissible error counts as a rectangle of that half width") {
  // JCGM 100:2008, 4.3.7: u² = a²/3.
  CHECK(systematic_part_mm(hundredth_dial) == Approx(0.010 / std::sqrt(3.0)));
}

TEST_CASE("more runs help the random part only") {
  CHECK(spot_uncertainty_mm(hundredth_dial, 1) == Approx(0.01067707825203131));
  CHECK(spot_uncertainty_mm(hundredth_dial, 2) == Approx(0.008582928793055822));
  CHECK(spot_uncertainty_mm(hundredth_dial, 1000000) == Approx(systematic_part_mm(hundredth_dial)).epsilon(1e-5));
  CHECK(mean_uncertainty_mm(hundredth_dial, {1, 1, 1}) == Approx(0.007760297817881877));
  CHECK(mean_uncertainty_mm(hundredth_dial, {2, 2, 2}) == Approx(0.00683942817622773));
}

TEST_CASE("spots with more runs weigh in with less") {
  const double random = random_part_mm(hundredth_dial);
  const double systematic = systematic_part_mm(hundredth_dial);
  const double wanted = std::sqrt(systematic * systematic + random * random * (1.0 + 0.5 + 1.0 / 3.0) / 9.0);
  CHECK(mean_uncertainty_mm(hundredth_dial, {1, 2, 3}) == Approx(wanted));
}

TEST_CASE("next to no uncertainty does not vanish") {
  CHECK(spot_uncertainty_mm({1e-200, 0.0, 0.0}, 1) > 0.0);
}
