#include "required_length.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

TEST_CASE("the required length is the mean less the reference and all that is added") {
  DepthCase depth = required_um({3120, 3100});
  depth.reference = um(2470);
  depth.constants = {{"block", um(25000)}, {"nominal depth", um(-24120)}};
  depth.stamp = um(-250);
  CHECK(RequiredLength(depth).millimetres() == Approx(1.52));
  depth.stamp_used = true;
  CHECK(RequiredLength(depth).millimetres() == Approx(1.27));
}

TEST_CASE("a third of a micrometre is neither lost nor rounded") {
  const RequiredLength third(required_um({1000, 1000, 1001}));
  CHECK((third.compare(2000) > 0));
  CHECK((third.compare(2001) < 0));
  const RequiredLength exact(required_um({1000, 1001}));
  CHECK((exact.compare(2001) == 0));
  CHECK(exact.distance_um(2001) == 0.0);
  CHECK(exact.distance_um(2000) == 0.5);
  const RequiredLength below(required_um({-1000, -1000, -1001}));
  CHECK((below.compare(-2000) < 0));
  CHECK((below.compare(-2001) > 0));
  CHECK(below.distance_um(-2000) == Approx(1.0 / 3.0));
}

TEST_CASE("comparing is the same as with whole numbers of a part") {
  CHECK(rc::check("against a sum over a common denominator", [] {
    const auto readings =
        *rc::gen::nonEmpty(rc::gen::container<std::vector<std::int64_t>>(rc::gen::inRange<std::int64_t>(-5000, 5000)));
    DepthCase depth = required_um(readings);
    depth.reference = um(*rc::gen::inRange<std::int64_t>(-5000, 5000));
    const auto doubled = *rc::gen::inRange<std::int64_t>(-9000, 9000);
    std::int64_t scaled = 0;
    for (const auto reading : readings) {
      scaled += 2 * (reading - depth.reference.count()) - doubled;
    }
    const RequiredLength required(depth);
    RC_ASSERT((required.compare(doubled) < 0) == (scaled < 0));
    RC_ASSERT((required.compare(doubled) > 0) == (scaled > 0));
    const double distance = std::abs(static_cast<double>(scaled)) / (2.0 * static_cast<double>(readings.size()));
    RC_ASSERT(std::abs(required.distance_um(doubled) - distance) < 1e-9);
  }));
}
