#include "judge_float.h"

#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

Bench at_lower_float() {
  Bench bench;
  bench.answer_up_to("lower-float");
  return bench;
}

const sheet::Step& lower_float(const Bench& bench) {
  return *bench.state.sheets.job->find("lower-float");
}

Judgement judged(const Bench& bench) {
  const auto result = judge_float(bench.state, lower_float(bench), bench.context);
  if (!result || !*result) {
    FAIL("no judgement");
  }
  return **result;
}

}  // namespace

TEST_CASE("A float is judged when every spot has a run") {
  Bench bench = at_lower_float();
  for (const int spot : {1, 3}) {
    bench.take(EnterFloatRun{"lower-float", spot, "0", "0.55", "", "dial_gauge"});
    CHECK(latest<Advised>(bench.state, "lower-float") == nullptr);
  }
  bench.take(EnterFloatRun{"lower-float", 2, "0,01", "0,56", "0.01", "dial_gauge"});
  CHECK(bench.conclusion("lower-float") == "measure_again");  // once at each spot, twice are asked for
  CHECK(bench.step("lower-float") == "held");
  bench.runs("lower-float", {"0.55", "0.55", "0.55"});
  CHECK(bench.conclusion("lower-float") == "keep");
  const Advised& advised = bench.advice("lower-float");
  CHECK(advised.mean == 550);
  CHECK(advised.spot_floats == std::vector<std::int64_t>{550, 550, 550});
  CHECK(advised.spot_verdicts == std::vector<ReadingVerdict>(3, ReadingVerdict::within));
  CHECK(advised.trials_agree == true);
  CHECK(advised.expanded_u.value_or(0) > 0);
}

TEST_CASE("Runs of a new series take the place of those before, spot by spot") {
  Bench bench = at_lower_float();
  bench.float_twice("lower-float", {"0.55", "0.75", "0.55"});
  CHECK(bench.conclusion("lower-float") == "seat_again");
  CHECK(bench.advice("lower-float").trials_agree != false);
  bench.take(BeginSeries{"lower-float", {2}, SeriesReason::measure_again});
  CHECK(present_series(bench.state, lower_float(bench), 2) == 2);
  CHECK(present_series(bench.state, lower_float(bench), 1) == 1);
  CHECK(present_runs(bench.state, lower_float(bench))[1].empty());
  CHECK(present_runs(bench.state, lower_float(bench))[0].size() == 2);
  bench.take(EnterFloatRun{"lower-float", 2, "0", "0.56", "", "dial_gauge"});
  bench.take(EnterFloatRun{"lower-float", 2, "0", "0.56", "", "dial_gauge"});
  CHECK(bench.conclusion("lower-float") == "keep");
}

TEST_CASE("Floats of both signs: zero was lost") {
  Bench bench = at_lower_float();
  bench.runs("lower-float", {"0.55", "-0.55", "0.55"});
  CHECK(bench.conclusion("lower-float") == "zero_again");
  CHECK(bench.step("lower-float") == "held");
  CHECK(bench.questions("lower-float").empty());
}

TEST_CASE("Pairs from other jobs and the coarsest dial speak in the case") {
  Bench bench = at_lower_float();
  bench.context.history[Side::lower] = {{quantity::micrometres(100), quantity::micrometres(-90), "HL-0900"}};
  bench.context.instruments.push_back({"coarse", "coarse dial", sheet::InstrumentKind::dial_gauge, 20, 15, {}, {}});
  bench.runs("lower-float", {"0.55", "0.54", "0.56"});
  bench.take(EnterFloatRun{"lower-float", 1, "0", "0.55", "", "coarse"});
  const auto judgement = judged(bench);
  const auto& disc_float = *judgement.engine_case.disc_float;
  CHECK(disc_float.history.size() == 1);
  CHECK(disc_float.resolution_mm == Approx(0.02));
  CHECK(disc_float.mpe_mm == Approx(0.015));
  CHECK(disc_float.fitted_shim == "1.60");
  CHECK(disc_float.sensitivity.has_value());
  CHECK(judgement.engine_case.gauge_fit->trials.size() == 2);
}

TEST_CASE("A float as found is for information: no sensitivity, no trials, the old shim") {
  Bench bench;
  bench.answer_up_to("upper-float-as-found");
  bench.enter("old-shim-upper", "thickness", "1.812", "micrometer").runs("upper-float-as-found", too_large);
  const auto judgement = judge_float(bench.state, *bench.state.sheets.job->find("upper-float-as-found"), bench.context);
  REQUIRE((judgement && *judgement));
  CHECK((*judgement)->engine_case.disc_float->fitted_shim == "1.80");
  CHECK_FALSE((*judgement)->engine_case.disc_float->sensitivity);
  CHECK_FALSE((*judgement)->engine_case.gauge_fit);
  CHECK((*judgement)->advised.conclusion == Conclusion::for_information);
  CHECK(bench.step("upper-float-as-found") == "accepted");
}

TEST_CASE("Where the same parts go back, the shim taken out is the one fitted") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit").take(SayNotRequired{"large-gauge-fit", "the same pack goes back"});
  CHECK(bench.step("large-gauge-fit") == "not_required");
  bench.answer_up_to("lower-float").answer("lower-float");
  CHECK(judged(bench).engine_case.disc_float->fitted_shim == "1.60");
}

TEST_CASE("Where no shim is known the refusal says so, and names the step once") {
  Bench bench;
  for (const std::string id : {"old-shim-lower", "large-gauge-fit"}) {
    bench.answer_up_to(id).take(Deviate{id, "the micrometer is away"});
  }
  bench.answer_up_to("lower-float");
  bench.take(EnterFloatRun{"lower-float", 1, "0", "0.55", "", "dial_gauge"});
  bench.take(EnterFloatRun{"lower-float", 2, "0", "0.55", "", "dial_gauge"});
  const auto refused = bench.error(EnterFloatRun{"lower-float", 3, "0", "0.55", "", "dial_gauge"});
  REQUIRE(refused);
  CHECK(refused->code == "no_shim_known");
  CHECK(refused->place == "lower-float");
}

TEST_CASE("A chosen shim that is sorted out of the tray since is still the one fitted") {
  Bench bench = at_lower_float();
  bench.enter("old-shim-lower", "thickness", "1.70", "micrometer");
  for (const TrayShim& each : tray_of(bench.state, Side::lower, bench.context)) {
    if (each.id != "1.60") {
      bench.context.trays[Side::lower].push_back(each);
    }
  }
  bench.state = fold(bench.state.sheets, [&] {
    auto entries = bench.state.entries;  // chosen without trials, which would name the missing shim too
    for (Entry& entry : entries) {
      if (std::holds_alternative<ShimTried>(entry.body)) {
        entry.body = Noted{};
      }
    }
    return entries;
  }());
  bench.answer("lower-float");
  CHECK(judged(bench).engine_case.disc_float->fitted_shim == "1.60");
  CHECK(judged(bench).engine_case.tray.size() == 18);
}

TEST_CASE("The trials of a side are those of its present round") {
  Bench bench = at_lower_float();
  CHECK(gauge_fit_case(bench.state, Side::lower)->trials.size() == 2);
  bench.take(BeginAssembly{{Side::lower}, "too large"});
  CHECK(gauge_fit_case(bench.state, Side::lower)->trials.empty());
  CHECK(gauge_fit_case(bench.state, Side::upper)->trials.size() == 2);
  CHECK_FALSE(gauge_fit_case(Bench("D6-1.json").state, Side::lower));
}

}  // namespace shimwright::job::test
