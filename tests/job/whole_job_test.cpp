#include <catch2/catch.hpp>

#include "bench.h"

/// Whole jobs from intake to signature.
namespace shimwright::job::test {

namespace {

void wrong_first_shim(Bench& bench) {
  bench.answer_up_to("large-gauge-fit");
  bench.try_shim("large-gauge-fit", "1.75", Fit::tight)
      .try_shim("large-gauge-fit", "1.55", Fit::loose)
      .try_shim("large-gauge-fit", "1.60", Fit::snug);
  CHECK(bench.conclusion("large-gauge-fit") == "fit_shim");
  CHECK(bench.advice("large-gauge-fit").shim == "1.60");
  bench.take(ChooseShim{"large-gauge-fit", "1.60", ""});
  CHECK(bench.step("large-gauge-fit") == "accepted");
  const auto* chosen = latest<ShimChosen>(bench.state, "large-gauge-fit");
  CHECK(chosen->by == ChosenBy::trials);
  CHECK(chosen->chance_percent.value_or(0) > 50);
}

void float_says_change(Bench& bench) {
  bench.answer_up_to("lower-float").float_twice("lower-float", too_large);
  CHECK(bench.conclusion("lower-float") == "seat_again");
  CHECK(bench.advice("lower-float").trials_agree == false);
  CHECK(bench.step("lower-float") == "held");
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::seated_again});
  CHECK(bench.step("lower-float") == "in_work");
  bench.float_twice("lower-float", too_large);
  CHECK(bench.conclusion("lower-float") == "change_shim");
  CHECK(bench.advice("lower-float").shim == "2.00");
  CHECK(bench.advice("lower-float").mean == 930);
  CHECK(bench.step("lower-float") == "held");
}

void check_asked_again(const Bench& bench) {
  CHECK(bench.state.assembly == 2);
  for (const sheet::Step* step : bench.state.sheets.job->steps()) {
    INFO(step->id);
    const bool again = step->again == sheet::Again::strip || step->again == sheet::Again::assembly ||
                       (step->again == sheet::Again::side && step->side == Side::lower);
    if (again && step->only_for != sheet::Method::depth) {
      CHECK(bench.step(step->id) == "open");
    }
  }
  CHECK(bench.step("small-gauge-fit") == "accepted");
  CHECK(bench.step("small-shim-measured") == "accepted");
  CHECK(bench.step("dust-away") == "accepted");
  CHECK(bench.state.shims == std::map<Side, std::string>{{Side::upper, "1.75"}});
}

}  // namespace

TEST_CASE("A D7 with a wrong first shim: seat again, change, assemble again, sign") {
  Bench bench;
  wrong_first_shim(bench);
  float_says_change(bench);
  const auto before = bench.state.entries;
  bench.take(BeginAssembly{{Side::lower}, "the lower float stays too large"});
  check_asked_again(bench);

  bench.answer_up_to("large-gauge-fit");
  bench.try_shim("large-gauge-fit", "1.95", Fit::snug).try_shim("large-gauge-fit", "2.00", Fit::tight);
  CHECK(bench.advice("large-gauge-fit").shim == "1.95");
  bench.take(ChooseShim{"large-gauge-fit", "1.95", ""});
  CHECK(bench.questions("large-gauge-fit") == std::vector<std::string>{"far_from_old_shim"});
  bench.take(Confirm{"large-gauge-fit", "far_from_old_shim", "the lever was renewed"});
  bench.shim[Side::lower] = "1.95";
  bench.answer_up_to("lower-float").float_twice("lower-float", {"0.58", "0.55", "0.61"});
  CHECK(bench.conclusion("lower-float") == "keep");
  CHECK(bench.advice("lower-float").trials_agree == true);
  CHECK(latest<PeakRead>(bench.state, "press-peak")->attempt == 2);

  bench.answer_up_to("sign-technician").answer("sign-technician");
  CHECK_FALSE(bench.state.closed);
  bench.answer("sign-checker");
  CHECK(bench.state.closed);
  CHECK(bench.state.next_step() == nullptr);
  REQUIRE(bench.state.entries.size() > before.size());
  CHECK(std::equal(before.begin(), before.end(), bench.state.entries.begin()));
  CHECK(same_but_trace(bench.state, fold(bench.state.sheets, bench.state.entries)));
}

TEST_CASE("The float's advice stands where the shim is taken without new trials") {
  Bench bench;
  wrong_first_shim(bench);
  float_says_change(bench);
  bench.take(BeginAssembly{{Side::lower}, "the lower float stays too large"}).answer_up_to("large-gauge-fit");
  CHECK(bench.refusal(ChooseShim{"large-gauge-fit", "1.90", ""}) == "reason_missing");
  bench.take(ChooseShim{"large-gauge-fit", "2.00", ""});
  CHECK(latest<ShimChosen>(bench.state, "large-gauge-fit")->by == ChosenBy::float_reading);
}

TEST_CASE("A D6 by depth, with the stamp of the new pack") {
  Bench bench("D6-1.json");
  CHECK(bench.step("large-gauge-fit") == "not_asked");
  bench.answer_up_to("large-depth");
  bench.take(EnterDepths{"large-depth", {"5.05", "5,07"}, "2.90", "+0.02", "depth_gauge"});
  CHECK(bench.conclusion("large-depth") == "fit_shim");
  CHECK(bench.advice("large-depth").shim == "1.80");
  CHECK(bench.step("large-depth") == "in_work");
  bench.take(ChooseShim{"large-depth", "1.80", ""});
  CHECK(latest<ShimChosen>(bench.state, "large-depth")->by == ChosenBy::depth);
  bench.answer_up_to("sign-checker").answer("sign-checker");
  CHECK(bench.state.closed);
}

TEST_CASE("A depth on the border wants one of the two shims, or a reason for a third") {
  Bench bench("D6-1.json");
  bench.answer_up_to("small-depth");
  bench.take(EnterDepths{"small-depth", {"4.755", "4.755"}, "2.90", "+0.02", "depth_gauge"});
  CHECK(bench.conclusion("small-depth") == "edge");
  CHECK(bench.advice("small-depth").candidates == std::vector<std::string>{"1.80", "1.95"});
  CHECK(bench.refusal(ChooseShim{"small-depth", "1.65", ""}) == "reason_missing");
  CHECK(bench.refusal(ChooseShim{"small-depth", "1.80", ""}).empty());
  Bench other = bench;
  bench.take(ChooseShim{"small-depth", "1.95", ""});
  CHECK(latest<ShimChosen>(bench.state, "small-depth")->by == ChosenBy::depth);
  other.take(ChooseShim{"small-depth", "1.65", "the lever is new"});
  CHECK(latest<ShimChosen>(other.state, "small-depth")->by == ChosenBy::person);
  CHECK(other.step("small-depth") == "accepted");
}

}  // namespace shimwright::job::test
