#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

EnterDepths depths(std::vector<std::string> readings, const std::string& stamp) {
  return {"large-depth", std::move(readings), "2.90", stamp, "depth_gauge"};
}

Bench at_large_depth() {
  Bench bench("D6-1.json");
  bench.answer_up_to("large-depth");
  return bench;
}

}  // namespace

TEST_CASE("A shim tried or chosen is one of the tray") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  CHECK(bench.refusal(TryShim{"large-gauge-fit", "1.62", Fit::snug}) == "unknown_shim");
  CHECK(bench.refusal(ChooseShim{"large-gauge-fit", "1.62", "made it"}) == "unknown_shim");
  CHECK(bench.refusal(ChooseShim{"dust-away", "1.60", ""}) == "wrong_kind");
  CHECK(bench.refusal(TryShim{"large-shim-measured", "1.60", Fit::snug}) == "hold_point");
  CHECK(bench.refusal(TryShim{"dust-away", "1.60", Fit::snug}) == "wrong_kind");
}

TEST_CASE("A shim that is not advised is taken with a reason") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  CHECK(bench.refusal(ChooseShim{"large-gauge-fit", "1.60", ""}) == "reason_missing");
  bench.try_shim("large-gauge-fit", "1.75", Fit::tight);
  const auto to_try = *bench.advice("large-gauge-fit").shim;
  CHECK(bench.refusal(ChooseShim{"large-gauge-fit", to_try, ""}) == "reason_missing");  // to try is not to fit
  bench.take(ChooseShim{"large-gauge-fit", "1.60", "the gauge broke; as the old one"});
  CHECK(latest<ShimChosen>(bench.state, "large-gauge-fit")->by == ChosenBy::person);
  CHECK(latest<ShimChosen>(bench.state, "large-gauge-fit")->chance_percent.has_value());
  CHECK(bench.step("large-gauge-fit") == "accepted");
}

TEST_CASE("A shim is chosen with the thickness the tray has today") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  bench.context.trays[Side::lower] = {{"1.60", quantity::micrometres(1603), 0.002, 1},
                                      {"1.65", quantity::micrometres(1652), 0.002, 1}};
  bench.answer("large-gauge-fit");
  const auto* chosen = latest<ShimChosen>(bench.state, "large-gauge-fit");
  CHECK(chosen->thickness == quantity::micrometres(1603));
  CHECK(chosen->u_mm == Approx(0.002));
}

TEST_CASE("A trial keeps the shim as it was, and counts once that shim has left the tray") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit").try_shim("large-gauge-fit", "1.75", Fit::tight);
  const auto* tried = latest<ShimTried>(bench.state, "large-gauge-fit");
  CHECK(tried->thickness == quantity::micrometres(1750));
  CHECK(tried->u_nm == 3000);
  Bench all_there = bench;
  auto tray = std::vector<TrayShim>();
  for (const sheet::SpecShim& each : bench.state.sheets.spec->side(Side::lower).tray) {
    if (each.id != "1.75") {
      tray.push_back({each.id, each.thickness, each.u_mm, 1});
    }
  }
  bench.context.trays[Side::lower] = tray;
  CHECK(bench.refusal(TryShim{"large-gauge-fit", "1.75", Fit::tight}) == "unknown_shim");
  for (Bench* each : {&bench, &all_there}) {
    each->try_shim("large-gauge-fit", "1.65", Fit::tight).try_shim("large-gauge-fit", "1.60", Fit::snug);
  }
  CHECK(bench.advice("large-gauge-fit").case_json == all_there.advice("large-gauge-fit").case_json);
  CHECK(bench.conclusion("large-gauge-fit") == "fit_shim");
  bench.take(ChooseShim{"large-gauge-fit", "1.60", ""});
  CHECK(latest<ShimChosen>(bench.state, "large-gauge-fit")->chance_percent.has_value());
}

TEST_CASE("A trial of before thickness was kept stands on the spec sheet's") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit").try_shim("large-gauge-fit", "1.75", Fit::tight);
  auto entries = bench.state.entries;
  auto& old =
      std::get<ShimTried>(entries.at(static_cast<std::size_t>(bench.seq_of("large-gauge-fit", "shim_tried")) - 1).body);
  old.thickness.reset();
  old.u_nm.reset();
  bench.state = fold(bench.state.sheets, entries);
  bench.context.trays[Side::lower] = {{"1.60", quantity::micrometres(1600), 0.003, 1},
                                      {"1.65", quantity::micrometres(1650), 0.003, 1}};
  bench.try_shim("large-gauge-fit", "1.65", Fit::tight);
  CHECK(bench.advice("large-gauge-fit").case_json.find("1.75") != std::string::npos);
}

TEST_CASE("The one shim that fits, and has left the tray, is named with what to do") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit").try_shim("large-gauge-fit", "1.60", Fit::snug);
  bench.context.trays[Side::lower] = {{"1.55", quantity::micrometres(1550), 0.003, 1},
                                      {"1.65", quantity::micrometres(1650), 0.003, 1}};
  bench.try_shim("large-gauge-fit", "1.65", Fit::tight);
  CHECK(bench.advice("large-gauge-fit").shim == "1.60");
  CHECK(bench.advice("large-gauge-fit").reason.in_english().find("not in the tray") != std::string::npos);
  bench.take(ChooseShim{"large-gauge-fit", "1.55", "1.60 ran out"});
  CHECK(bench.step("large-gauge-fit") == "accepted");
}

TEST_CASE("A depth is judged though a shim of the spec sheet's ranges has left the tray") {
  Bench bench = at_large_depth();
  auto tray = std::vector<TrayShim>();
  for (const sheet::SpecShim& each : bench.state.sheets.spec->side(Side::lower).tray) {
    if (each.id != "1.80") {
      tray.push_back({each.id, each.thickness, each.u_mm, 1});
    }
  }
  bench.context.trays[Side::lower] = tray;
  CHECK(bench.refusal(depths({"5.05", "5.05"}, "+0.02")).empty());
  bench.take(depths({"4.80", "4.80"}, "0"));
  CHECK(bench.advice("large-depth").at.step == "large-depth");
}

TEST_CASE("An advice on the float that was measured away does not choose the shim") {
  Bench bench;
  bench.answer_up_to("lower-float").float_twice("lower-float", too_large);
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::seated_again}).float_twice("lower-float", too_large);
  CHECK(bench.conclusion("lower-float") == "change_shim");
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::seated_again}).answer("lower-float");
  bench.take(BeginAssembly{{Side::lower}, "a lever has to be renewed"}).answer_up_to("large-gauge-fit");
  CHECK(bench.refusal(ChooseShim{"large-gauge-fit", "2.00", ""}) == "reason_missing");
}

TEST_CASE("Depths at every place, a reference, a stamp and an instrument") {
  const Bench bench = at_large_depth();
  CHECK(bench.refusal(depths({"5.05"}, "+0.02")) == "depth_missing");
  CHECK(bench.refusal(depths({"5.05", "5.05"}, " ")) == "stamp_missing");
  CHECK(bench.refusal(depths({"5.05", "5.05"}, "0.02")) == "sign_missing");
  CHECK(bench.error(depths({"5.05", "5.05"}, "0.02"))->place == "large-depth/stamp");
  CHECK(bench.error(depths({"5.05", "five"}, "+0.02"))->place == "large-depth/readings/2");
  EnterDepths odd = depths({"5.05", "5.05"}, "0");
  CHECK(bench.refusal(odd).empty());
  odd.instrument = "micrometer";
  CHECK(bench.refusal(odd) == "wrong_instrument");
  odd.reference = "";
  CHECK(bench.error(odd)->place == "large-depth/reference");
}

TEST_CASE("A stamp of nought is a value and is kept") {
  Bench bench = at_large_depth();
  bench.take(depths({"5.05", "5.05", "5.06"}, "0,00"));
  const auto* read = latest<DepthsRead>(bench.state, "large-depth");
  CHECK(read->stamp == typed("0.00"));
  CHECK(read->readings.size() == 3);
  CHECK(read->instrument->id == "depth_gauge");
}

TEST_CASE("Depths are not asked where the shim is found by gauge") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  CHECK(bench.refusal(depths({"5.05", "5.05"}, "+0.02")) == "not_asked");
}

TEST_CASE("Depths read again open the choice of the shim again") {
  Bench bench = at_large_depth();
  bench.answer("large-depth").take(depths({"5.20", "5.20"}, "+0.02"));
  CHECK(bench.step("large-depth") == "in_work");
  CHECK(bench.state.shims.empty());
  CHECK(bench.refusal(ChooseShim{"large-depth", "1.80", ""}) == "reason_missing");
  bench.take(ChooseShim{"large-depth", "1.95", ""});
  CHECK(bench.step("large-depth") == "accepted");
}

}  // namespace shimwright::job::test
