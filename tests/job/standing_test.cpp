#include "shimwright/job/standing.h"

#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

const sheet::Step& step_named(const Bench& bench, const std::string& id) {
  return *bench.state.sheets.job->find(id);
}

}  // namespace

TEST_CASE("Trials taken back do not count, and advice names a shim only once the trials have settled") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  const sheet::Step& step = step_named(bench, "large-gauge-fit");
  CHECK(present_trials(bench.state, step).empty());
  CHECK_FALSE(advises(standing_advice(bench.state, step), "1.60"));
  bench.try_shim("large-gauge-fit", "1.75", Fit::loose);
  bench.take(Withdraw{bench.seq_of("large-gauge-fit", "shim_tried"), "key slipped"});
  CHECK(present_trials(bench.state, step).empty());
  bench.try_shim("large-gauge-fit", "1.65", Fit::tight).try_shim("large-gauge-fit", "1.55", Fit::loose);
  bench.try_shim("large-gauge-fit", "1.60", Fit::snug);
  CHECK(present_trials(bench.state, step).size() == 3);
  CHECK(advises(standing_advice(bench.state, step), "1.60"));
  CHECK_FALSE(advises(standing_advice(bench.state, step), "1.65"));
}

TEST_CASE("The parts still missing are those nobody said were renewed since the step was last asked") {
  Bench bench(sheets_with_three_parts());
  bench.take(open_command()).answer_up_to("new-pack");
  const sheet::Step& step = step_named(bench, "new-pack");
  using Parts = std::vector<std::string>;
  CHECK(parts_to_renew(bench.state, step) == Parts{"clutch-pack", "lever-set", "guide-bolts"});
  bench.take(FitParts{"new-pack", {{"lever-set", "", 1, ""}}});
  CHECK(parts_to_renew(bench.state, step) == Parts{"clutch-pack", "guide-bolts"});
  bench.take(Withdraw{bench.last_seq(), "wrong box"});
  CHECK(parts_to_renew(bench.state, step).size() == 3);
  CHECK(parts_to_renew(bench.state, step_named(bench, "dust-away")).empty());
  Bench again;
  again.answer_up_to("hub-ring-seated");
  const sheet::Step& ring = step_named(again, "pack-ring-new");
  CHECK(parts_to_renew(again.state, ring).empty());
  again.take(BeginAssembly{{}, "ring not home"});
  CHECK(parts_to_renew(again.state, ring) == Parts{"pack-ring"});
  again.answer_up_to("pack-ring-new").answer("pack-ring-new");
  again.state.steps["pack-ring-new"] = Unproven{again.last_seq()};
  CHECK(parts_to_renew(again.state, ring) == Parts{"pack-ring"});
}

TEST_CASE("The float of the assembly before advises the shim where nothing was tried anew") {
  Bench bench;
  bench.answer_up_to("lower-float");
  bench.float_twice("lower-float", too_large);
  CHECK(advice_before_series(bench.state, step_named(bench, "lower-float")) == nullptr);
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::seated_again});
  const Advised* before = advice_before_series(bench.state, step_named(bench, "lower-float"));
  REQUIRE(before != nullptr);
  CHECK(before->spot_floats.size() == 3);
  bench.float_twice("lower-float", too_large);
  const auto wanted = bench.advice("lower-float").shim;
  REQUIRE(wanted);
  bench.take(BeginAssembly{{Side::lower}, "too large twice"});
  const sheet::Step& step = step_named(bench, "large-gauge-fit");
  CHECK(present_trials(bench.state, step).empty());
  CHECK(advises(standing_advice(bench.state, step), *wanted));
}

TEST_CASE("The depths that count are those read last") {
  Bench bench("D6-1.json");
  bench.answer_up_to("large-depth");
  const sheet::Step& step = step_named(bench, "large-depth");
  CHECK(present_depths(bench.state, step) == nullptr);
  bench.take(EnterDepths{"large-depth", {"5.16", "5.12"}, "2.90", "-0.12", "depth_gauge"});
  bench.take(EnterDepths{"large-depth", {"5.10", "5.12"}, "2.90", "-0.12", "depth_gauge"});
  REQUIRE(present_depths(bench.state, step) != nullptr);
  CHECK(present_depths(bench.state, step)->readings.front().base == 5100);
}

TEST_CASE("What was answered before a step was asked again does not count") {
  Bench bench;
  bench.answer_up_to("hub-in");
  const sheet::Step& laid = step_named(bench, "large-shim-laid");
  const sheet::Step& clean = step_named(bench, "dust-away");
  CHECK(present_entries(bench.state, laid).size() == 1);
  bench.take(BeginAssembly{{Side::lower}, "too large"});
  CHECK(present_entries(bench.state, laid).empty());
  CHECK(present_entries(bench.state, clean).size() == 1);
}

TEST_CASE("Runs are missing until each spot has as many as the spec sheet asks for, and again in a new series") {
  Bench bench;
  bench.answer_up_to("lower-float");
  const sheet::Step& step = step_named(bench, "lower-float");
  CHECK(runs_missing(bench.state, step));
  bench.runs("lower-float", too_large);
  CHECK(runs_missing(bench.state, step));
  bench.runs("lower-float", too_large);
  CHECK_FALSE(runs_missing(bench.state, step));
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::seated_again});
  CHECK(runs_missing(bench.state, step));
  CHECK_FALSE(runs_missing(bench.state, step_named(bench, "dust-away")));
}

}  // namespace shimwright::job::test
