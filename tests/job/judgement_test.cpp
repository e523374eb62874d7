#include "shimwright/job/judgement.h"

#include <cmath>

#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

Judgement judged(const Bench& bench, const std::string& step) {
  const auto result = judge(bench.state, *bench.state.sheets.job->find(step), bench.context);
  if (!result || !*result) {
    FAIL("no judgement of " + step);
  }
  return **result;
}

bool nothing_to_judge(const Bench& bench, const std::string& step) {
  const auto result = judge(bench.state, *bench.state.sheets.job->find(step), bench.context);
  return result && !*result;
}

}  // namespace

TEST_CASE("Before the first trial the prior of the upper side is used, the lower has none") {
  const Bench bench;
  const auto lower = judged(bench, "large-gauge-fit");
  const auto upper = judged(bench, "small-gauge-fit");
  CHECK_FALSE(lower.engine_case.gauge_fit->prior);
  REQUIRE(upper.engine_case.gauge_fit->prior);
  CHECK(upper.engine_case.gauge_fit->prior->mean_mm == Approx(1.74));
  CHECK(upper.advised.conclusion == Conclusion::try_shim);
  // The trays are the same, so only the prior can make them differ.
  CHECK(upper.engine_case.tray == lower.engine_case.tray);
  CHECK(upper.answer.gauge_fit->seat->mean_mm == Approx(1.74).margin(0.03));
  CHECK(lower.answer.gauge_fit->seat->mean_mm == Approx(1.74).margin(0.06));
  CHECK(upper.answer.gauge_fit->seat->expected_trials_left < lower.answer.gauge_fit->seat->expected_trials_left);
  CHECK(upper.advised.answer_json != lower.advised.answer_json);
}

TEST_CASE("What was advised first is kept with the first trial") {
  Bench bench;
  bench.answer_up_to("small-gauge-fit");
  const auto first = judged(bench, "small-gauge-fit").advised;
  bench.try_shim("small-gauge-fit", "1.75", Fit::snug);
  const auto entries = bench.state.live("small-gauge-fit");
  REQUIRE(entries.size() == 3);
  CHECK(std::get<Advised>(entries[0]->body) == first);
  CHECK(std::holds_alternative<ShimTried>(entries[1]->body));
  CHECK(std::get<Advised>(entries[2]->body).case_json == judged(bench, "small-gauge-fit").advised.case_json);
  bench.try_shim("small-gauge-fit", "1.80", Fit::tight);
  CHECK(bench.state.live("small-gauge-fit").size() == 5);
}

TEST_CASE("Trials that contradict each other hold the step") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  bench.try_shim("large-gauge-fit", "1.60", Fit::tight).try_shim("large-gauge-fit", "1.80", Fit::loose);
  CHECK(bench.conclusion("large-gauge-fit") == "contradiction");
  CHECK(bench.step("large-gauge-fit") == "held");
  bench.take(Withdraw{bench.seq_of("large-gauge-fit", "shim_tried"), "wrong shim in hand"});
  CHECK(bench.conclusion("large-gauge-fit") == "try_shim");
}

TEST_CASE("A tray that ends too soon") {
  Bench thick;
  thick.answer_up_to("large-gauge-fit").try_shim("large-gauge-fit", "1.30", Fit::tight);
  CHECK(thick.conclusion("large-gauge-fit") == "tray_too_thick");
  CHECK(thick.step("large-gauge-fit") == "held");
  Bench thin;
  thin.answer_up_to("large-gauge-fit").try_shim("large-gauge-fit", "2.15", Fit::loose);
  CHECK(thin.conclusion("large-gauge-fit") == "tray_too_thin");
}

TEST_CASE("The tray is as it lies there today, else as the spec sheet has it") {
  Bench bench;
  CHECK(tray_of(bench.state, Side::lower, bench.context).size() == 18);
  CHECK(tray_of(bench.state, Side::lower, bench.context).front().id == "1.30");
  bench.context.trays[Side::lower] = {{"1.60", quantity::micrometres(1603), 0.002, 4}};
  CHECK(tray_of(bench.state, Side::lower, bench.context).front().thickness == quantity::micrometres(1603));
  bench.context.trays[Side::lower] = {};
  CHECK(tray_of(bench.state, Side::lower, bench.context).size() == 18);
}

TEST_CASE("Depths are judged with constants and stamp; the latest counts") {
  Bench bench("D6-1.json");
  CHECK(nothing_to_judge(bench, "large-depth"));
  CHECK(nothing_to_judge(bench, "large-gauge-fit"));
  bench.answer_up_to("large-depth");
  const auto depths = [](const std::string& one, const std::string& other) {
    return EnterDepths{"large-depth", {one, other}, "2.90", "+0.02", "depth_gauge"};
  };
  bench.take(depths("5.05", "5.25"));
  CHECK(bench.conclusion("large-depth") == "tilted");
  CHECK(bench.step("large-depth") == "held");
  bench.take(depths("5.05", "5.07"));
  CHECK(judged(bench, "large-depth").answer.depth->required_mm.value_or(0) == Approx(1.83));
  CHECK(bench.step("large-depth") == "in_work");
  bench.take(depths("2.05", "2.05"));
  CHECK(bench.conclusion("large-depth") == "impossible");
  bench.take(depths("7.05", "7.05"));
  CHECK(bench.conclusion("large-depth") == "outside");
}

TEST_CASE("A step of another kind is not judged") {
  const Bench bench;
  CHECK(nothing_to_judge(bench, "dust-away"));
  CHECK(nothing_to_judge(bench, "large-temperature"));
}

TEST_CASE("Advice says which engine gave it, on what, of which assembly") {
  Bench bench;
  bench.answer_up_to("large-shim-measured");
  const auto& advised = bench.advice("large-gauge-fit");
  CHECK_FALSE(advised.engine.empty());
  CHECK(advised.at == StepRef{"large-gauge-fit", 1});
  CHECK(advised.case_json.find("\"trials\"") != std::string::npos);
  CHECK(advised.answer_json.find("settled") != std::string::npos);
}

}  // namespace shimwright::job::test

namespace shimwright::job::test {

TEST_CASE("A dial's own repeatability is judged with in place of the sheet's, and is kept with the run") {
  const auto uncertainty_with = [](std::optional<std::int64_t> repeatability) {
    Bench bench;
    bench.context.instruments.front().repeatability = repeatability;
    bench.answer_up_to("lower-float");
    bench.float_twice("lower-float", {"0.50", "0.50", "0.50"});
    const auto* run = latest<FloatRun>(bench.state, "lower-float");
    REQUIRE(run != nullptr);
    CHECK(run->instrument->repeatability == repeatability);
    return *bench.advice("lower-float").expanded_u;
  };
  const std::int64_t by_sheet = uncertainty_with(std::nullopt);
  CHECK(uncertainty_with(8000) == by_sheet);  // the sheets shipped say 0.008 mm
  CHECK(uncertainty_with(40000) > by_sheet);
  CHECK(uncertainty_with(1000) < by_sheet);
}

TEST_CASE("Trials are believed as finely as the coarsest hand that made them") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  const double by_sheet = bench.state.sheets.spec->side(Side::lower).gauge_fit->feel_u_mm;
  const auto feel = [&bench] {
    auto tray = tray_of(bench.state, Side::lower, bench.context);
    const auto judged = judge(bench.state, *bench.state.sheets.job->find("large-gauge-fit"), bench.context);
    return (*judged)->engine_case.gauge_fit->feel_u_mm;
  };
  CHECK(feel() == by_sheet);
  bench.context.feel_nm = 4000;
  bench.try_shim("large-gauge-fit", "1.60", Fit::snug);
  CHECK(feel() == Approx(0.004));
  bench.context.feel_nm.reset();
  bench.try_shim("large-gauge-fit", "1.65", Fit::tight);
  CHECK(feel() == by_sheet);
  bench.context.feel_nm = 25000;
  bench.try_shim("large-gauge-fit", "1.65", Fit::tight);
  CHECK(feel() == Approx(0.025));
}

TEST_CASE("A depth is never known better than the gauge that was tested allows") {
  const auto u_with = [](std::optional<std::int64_t> repeatability) {
    Bench bench("D6-1.json");
    for (Instrument& each : bench.context.instruments) {
      each.repeatability = repeatability;
    }
    bench.answer_up_to("large-depth");
    bench.take(EnterDepths{"large-depth", {"5.05", "5.07"}, "2.90", "+0.02", "depth_gauge"});
    const auto judged = judge(bench.state, *bench.state.sheets.job->find("large-depth"), bench.context);
    return (*judged)->engine_case.depth->u_reading_mm;
  };
  CHECK(u_with(std::nullopt) == Approx(0.01));
  CHECK(u_with(1000) == Approx(0.01));
  CHECK(u_with(30000) == Approx(std::sqrt(1e-4 / 12.0 + 1e-4 / 3.0 + 9e-4)));
}

}  // namespace shimwright::job::test
