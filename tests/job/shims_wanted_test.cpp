#include "shimwright/job/shims_wanted.h"

#include <algorithm>
#include <numeric>

#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

SideWants wants(const Bench& bench, Side side) {
  const auto wanted = shims_wanted(bench.state, bench.context);
  const auto found = wanted.find(side);
  if (found == wanted.end()) {
    FAIL("nothing is wanted of that side");
  }
  return found->second;
}

bool wants_nothing(const Bench& bench, Side side) {
  return shims_wanted(bench.state, bench.context).count(side) == 0;
}

double sum_of(const SideWants& wants) {
  return std::accumulate(wants.chances.begin(), wants.chances.end(), 0.0,
                         [](double sum, const auto& each) { return sum + each.second; });
}

std::string likeliest(const SideWants& wants) {
  return std::max_element(wants.chances.begin(), wants.chances.end(),
                          [](const auto& one, const auto& other) { return one.second < other.second; })
      ->first;
}

}  // namespace

TEST_CASE("Before the first trial the prior says which shims may be wanted") {
  const Bench bench;
  const SideWants upper = wants(bench, Side::upper);
  CHECK_FALSE(upper.no_belief);
  CHECK(sum_of(upper) > 0.5);
  CHECK(sum_of(upper) < 1.0 + 1e-9);
  CHECK(upper.chances.size() == bench.state.sheets.spec->side(Side::upper).tray.size());
}

TEST_CASE("Trials narrow down what is wanted, and a shim that is laid wants nothing more") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  const double before = wants(bench, Side::lower).chances.at("1.60");
  bench.try_shim("large-gauge-fit", "1.65", Fit::tight).try_shim("large-gauge-fit", "1.60", Fit::snug);
  const SideWants after = wants(bench, Side::lower);
  CHECK(after.chances.at("1.60") > before);
  CHECK(likeliest(after) == "1.60");
  bench.take(ChooseShim{"large-gauge-fit", "1.60", ""});
  CHECK(wants_nothing(bench, Side::lower));
  CHECK_FALSE(wants_nothing(bench, Side::upper));
}

TEST_CASE("Without depths nothing is believed, with them it is the shim they name") {
  Bench bench("D6-1.json");
  CHECK(wants(bench, Side::lower).no_belief);
  CHECK(wants(bench, Side::lower).chances.empty());
  bench.answer_up_to("large-depth");
  bench.take(EnterDepths{"large-depth", {"5.05", "5.07"}, "2.90", "+0.02", "depth_gauge"});
  const SideWants read = wants(bench, Side::lower);
  CHECK_FALSE(read.no_belief);
  CHECK(sum_of(read) == Approx(1.0));
}

TEST_CASE("A float that asks for another shim wants that one, and a job that is done wants nothing") {
  Bench bench;
  bench.answer_up_to("lower-float");
  CHECK(wants_nothing(bench, Side::lower));
  bench.float_twice("lower-float", {"1.05", "1.05", "1.05"});
  REQUIRE(bench.conclusion("lower-float") == "seat_again");
  CHECK(wants_nothing(bench, Side::lower));
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::seated_again});
  bench.float_twice("lower-float", {"1.05", "1.05", "1.05"});
  REQUIRE(bench.conclusion("lower-float") == "change_shim");
  const SideWants changed = wants(bench, Side::lower);
  CHECK(sum_of(changed) == Approx(1.0));
  CHECK(changed.chances.count(*bench.advice("lower-float").shim) == 1);
  bench.state.closed = true;
  CHECK(shims_wanted(bench.state, bench.context).empty());
}

}  // namespace shimwright::job::test
