#include "shimwright/shim/advise.h"

#include <rapidcheck.h>
#include <algorithm>
#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

AdviseAnswer advised(const AdviseCase& advise_case) {
  const auto read = checked(advise_case);
  REQUIRE(read);
  return advise(*read);
}

}  // namespace

TEST_CASE("each section is answered where it is asked, the cross-check with both fit and float") {
  const auto all = advised(full_case());
  CHECK(all.gauge_fit);
  CHECK(all.depth);
  CHECK(all.disc_float);
  CHECK(all.cross_check);
  AdviseCase part = full_case();
  part.disc_float.reset();
  const auto fit_and_depth = advised(part);
  CHECK(fit_and_depth.gauge_fit);
  CHECK_FALSE(fit_and_depth.disc_float);
  CHECK_FALSE(fit_and_depth.cross_check);
  part = full_case();
  part.gauge_fit.reset();
  CHECK_FALSE(advised(part).cross_check);
}

TEST_CASE("sections do not disturb each other") {
  const auto all = advised(full_case());
  AdviseCase alone = full_case();
  alone.gauge_fit.reset();
  alone.disc_float.reset();
  CHECK(write_answer({{}, all.depth, {}, {}}) == write_answer(advised(alone)));
}

TEST_CASE("the same case gets the same answer, digit for digit") {
  CHECK(write_answer(advised(full_case())) == write_answer(advised(full_case())));
}

TEST_CASE("the order of the tray does not matter to any section, nor to the cross-check") {
  CHECK(rc::check("the answer to a shuffled tray", [] {
    AdviseCase plain = full_case();
    const std::string fitted = plain.disc_float->fitted_shim;
    const auto draw = [] { return *rc::gen::inRange<std::int64_t>(-100, 1500); };
    plain.disc_float = three_spots(draw(), draw(), draw());
    plain.disc_float->fitted_shim = fitted;
    if (*rc::gen::arbitrary<bool>()) {
      plain.disc_float = measured_twice(*plain.disc_float);
    }
    if (*rc::gen::arbitrary<bool>()) {
      plain.disc_float->sensitivity.reset();
    }
    AdviseCase turned = plain;
    std::reverse(turned.tray.begin(), turned.tray.end());
    std::rotate(turned.tray.begin(),
                turned.tray.begin() + *rc::gen::inRange<std::ptrdiff_t>(0, std::ssize(turned.tray)), turned.tray.end());
    RC_ASSERT(write_answer(advise(*checked(plain))) == write_answer(advise(*checked(turned))));
  }));
}

TEST_CASE("the engine has a version") {
  CHECK_FALSE(engine_version().empty());
}
