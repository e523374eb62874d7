#include "judge_float.h"

#include <algorithm>

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

TEST_CASE("A float as found advises no shim, whether the old one is measured or not") {
  for (const bool measured : {true, false}) {
    for (const auto& floats : {too_large, std::vector<std::string>{"0.05", "0.06", "0.05"}}) {
      Bench bench;
      bench.answer_up_to("upper-float-as-found");
      if (measured) {
        bench.enter("old-shim-upper", "thickness", "1.812", "micrometer");
      }
      bench.runs("upper-float-as-found", floats);
      CHECK(bench.advice("upper-float-as-found").conclusion == Conclusion::for_information);
      CHECK_FALSE(bench.advice("upper-float-as-found").shim);
    }
  }
}

TEST_CASE("Where the same parts go back, the shim taken out is the one fitted") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit").take(SayNotRequired{"large-gauge-fit", "the same pack goes back"});
  CHECK(bench.step("large-gauge-fit") == "not_required");
  bench.answer_up_to("lower-float").answer("lower-float");
  CHECK(judged(bench).engine_case.disc_float->fitted_shim == "1.60");
}

TEST_CASE("Where no shim is known every run is kept, and the advice says what is missing") {
  Bench bench;
  for (const std::string id : {"old-shim-lower", "large-gauge-fit"}) {
    bench.answer_up_to(id).take(Deviate{id, "the micrometer is away"});
  }
  bench.answer_up_to("lower-float").float_twice("lower-float", {"0.55", "0.54", "0.56"});
  CHECK(present_runs(bench.state, lower_float(bench))[2].size() == 2);
  CHECK(bench.step("lower-float") == "held");
  const Advised& advised = bench.advice("lower-float");
  CHECK(advised.conclusion == Conclusion::question);
  CHECK(advised.questions.empty());
  CHECK(advised.case_json.empty());
  CHECK(advised.reason.in_english().find("no shim is chosen for the large bearing") != std::string::npos);
  bench.enter("old-shim-lower", "thickness", "1.60", "micrometer").runs("lower-float", {"0.55", "0.54", "0.56"});
  CHECK(bench.conclusion("lower-float") == "keep");
  CHECK(bench.step("lower-float") == "accepted");
}

namespace {

/// The tray of the large bearing without that shim.
void take_out(Bench& bench, const std::string& shim) {
  auto tray = tray_of(bench.state, Side::lower, bench.context);
  tray.erase(std::remove_if(tray.begin(), tray.end(), [&](const TrayShim& each) { return each.id == shim; }),
             tray.end());
  bench.context.trays[Side::lower] = tray;
}

}  // namespace

TEST_CASE("A chosen or tried shim that left the tray since is still the one fitted, and its trials count") {
  Bench bench = at_lower_float();
  bench.enter("old-shim-lower", "thickness", "1.70", "micrometer");
  const auto before = judged(Bench(bench).answer("lower-float"));
  take_out(bench, "1.60");
  take_out(bench, "1.65");
  bench.answer("lower-float");
  CHECK(judged(bench).engine_case.disc_float->fitted_shim == "1.60");
  CHECK(judged(bench).engine_case.tray.size() == 18);
  CHECK(judged(bench).advised.case_json == before.advised.case_json);
  CHECK(bench.conclusion("lower-float") == "keep");
}

TEST_CASE("A shim of the same thickness stands for a chosen one that got another mark") {
  Bench bench = at_lower_float();
  auto tray = tray_of(bench.state, Side::lower, bench.context);
  for (TrayShim& each : tray) {
    each.id += "n";
  }
  bench.context.trays[Side::lower] = tray;
  bench.answer("lower-float");
  CHECK(judged(bench).engine_case.disc_float->fitted_shim == "1.60n");
  CHECK(judged(bench).engine_case.tray.size() == 18);
}

TEST_CASE("Advice to change to a shim that left the tray says so") {
  Bench bench = at_lower_float();
  bench.float_twice("lower-float", too_large);
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::seated_again}).float_twice("lower-float", too_large);
  const auto advised = *bench.advice("lower-float").shim;
  Advised gone = bench.advice("lower-float");
  say_where_gone(gone, tray_of(bench.state, Side::lower, bench.context));
  CHECK(gone.reason == bench.advice("lower-float").reason);
  take_out(bench, advised);
  say_where_gone(gone, tray_of(bench.state, Side::lower, bench.context));
  CHECK(gone.reason.in_english().find("not in the tray") != std::string::npos);
  CHECK(gone.reason.arguments == std::vector<std::string>{advised});
}

TEST_CASE("The trials of a side are those of its present round") {
  Bench bench = at_lower_float();
  auto tray = tray_of(bench.state, Side::lower, bench.context);
  CHECK(gauge_fit_case(bench.state, Side::lower, tray)->trials.size() == 2);
  bench.take(BeginAssembly{{Side::lower}, "too large"});
  CHECK(gauge_fit_case(bench.state, Side::lower, tray)->trials.empty());
  CHECK(gauge_fit_case(bench.state, Side::upper, tray)->trials.size() == 2);
  CHECK_FALSE(gauge_fit_case(Bench("D6-1.json").state, Side::lower, tray));
}

}  // namespace shimwright::job::test
