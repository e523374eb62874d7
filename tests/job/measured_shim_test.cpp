#include "shimwright/job/measured_shim.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

namespace shimwright::job {

namespace {

Instrument micrometer(std::int64_t resolution, std::int64_t permissible_error,
                      std::optional<std::int64_t> repeatability = std::nullopt) {
  Instrument made;
  made.kind = sheet::InstrumentKind::micrometer;
  made.resolution = resolution;
  made.permissible_error = permissible_error;
  made.repeatability = repeatability;
  return made;
}

MicrometerReading reading(std::int64_t micrometres, const Instrument& with = micrometer(1, 2)) {
  return {{micrometres, 3, quantity::Unit::millimetre}, with};
}

}  // namespace

TEST_CASE("Several readings give a mean in whole micrometres and its uncertainty") {
  const auto shim = measured_shim({reading(1651), reading(1653), reading(1652), reading(1653)});
  REQUIRE(shim);
  CHECK(shim->thickness == quantity::Length(1652));
  CHECK(shim->mean_mm == Approx(1.65225));
  CHECK(*shim->deviation_mm == Approx(0.000957).epsilon(1e-3));
  // Readings, resolution, permissible error, and the mean rounded to a whole micrometre.
  CHECK(shim->u_mm == Approx(std::sqrt(0.9167e-6 / 4 + 1e-6 / 12 + 4e-6 / 3 + 1e-6 / 12)).epsilon(1e-3));
  CHECK(shim->readings == 4);
}

TEST_CASE("Without a reading there is no thickness, with one there is what its micrometer allows") {
  CHECK_FALSE(measured_shim({}));
  const auto one = measured_shim({reading(1650, micrometer(1, 2, 1500))});
  REQUIRE(one);
  CHECK(one->thickness == quantity::Length(1650));
  CHECK(one->u_mm == Approx(std::sqrt(2.25e-6 + 1e-6 / 12 + 4e-6 / 3)));
}

TEST_CASE("The coarsest micrometer speaks for all") {
  const double fine = measured_shim({reading(1650), reading(1650)})->u_mm;
  const double mixed = measured_shim({reading(1650), reading(1650, micrometer(10, 10))})->u_mm;
  const double coarse = measured_shim({reading(1650, micrometer(10, 10)), reading(1650, micrometer(10, 10))})->u_mm;
  CHECK(mixed == Approx(coarse));
  CHECK(fine < mixed);
}

TEST_CASE("The thickness lies between the readings whatever their order, and a further one that agrees costs nothing") {
  CHECK(rc::check([] {
    std::vector<MicrometerReading> readings;
    const int count = *rc::gen::inRange(1, 12);
    for (int each = 0; each < count; ++each) {
      readings.push_back(reading(*rc::gen::inRange(1500, 1900)));
    }
    const auto [least, most] =
        std::minmax_element(readings.begin(), readings.end(),
                            [](const auto& one, const auto& two) { return one.number.base < two.number.base; });
    const auto shim = measured_shim(readings);
    RC_ASSERT(shim.has_value());
    RC_ASSERT(shim->thickness.count() >= least->number.base);
    RC_ASSERT(shim->thickness.count() <= most->number.base);
    RC_ASSERT(shim->u_mm > 0.0);
    auto reversed = readings;
    std::reverse(reversed.begin(), reversed.end());
    RC_ASSERT(measured_shim(reversed)->thickness == shim->thickness);
  }));
}

}  // namespace shimwright::job
