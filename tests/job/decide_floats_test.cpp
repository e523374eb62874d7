#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

EnterFloatRun run(int spot, const std::string& lifted, const std::string& zero_after = "") {
  return {"lower-float", spot, "0.00", lifted, zero_after, "dial_gauge"};
}

Bench at_lower_float() {
  Bench bench;
  bench.answer_up_to("lower-float");
  return bench;
}

}  // namespace

TEST_CASE("A run is at one of the spots") {
  const Bench bench = at_lower_float();
  CHECK(bench.refusal(run(0, "0.55")) == "unknown_spot");
  CHECK(bench.refusal(run(4, "0.55")) == "unknown_spot");
  CHECK(bench.refusal(run(3, "0.55")).empty());
}

TEST_CASE("A float as found is refused where the method has none, and left out with a reason") {
  Bench bench("D6-1.json");
  bench.answer_up_to("upper-float-as-found");
  const EnterFloatRun run{"upper-float-as-found", 1, "0.00", "0.55", "", "dial_gauge"};
  const auto refused = bench.error(run);
  REQUIRE(refused);
  CHECK(refused->code == "as_found_not_allowed");
  CHECK(refused->place == "upper-float-as-found");
  CHECK(refused->message.in_english().find("not measured, because") != std::string::npos);
  bench.take(SayNotRequired{"upper-float-as-found", "the method has none"});
  CHECK(bench.step("upper-float-as-found") == "not_required");
  EnterFloatRun lower = run;
  lower.step = "lower-float-as-found";
  CHECK(bench.refusal(lower).empty());
  bench.answer_up_to("upper-float");
  lower.step = "upper-float";
  CHECK(bench.refusal(lower).empty());  // on the new pack the same disc is measured
}

TEST_CASE("Zero comes back within a division, or the run is discarded") {
  const Bench bench = at_lower_float();
  CHECK(bench.refusal(run(1, "0.55", "0.01")).empty());
  CHECK(bench.refusal(run(1, "0.55", "-0.01")).empty());
  CHECK(bench.refusal(run(1, "0.55", "0.011")) == "zero_lost");
  CHECK(bench.error(run(1, "0.55", "0.02"))->place == "lower-float/spot 1");
}

TEST_CASE("What cannot be read is refused at its field") {
  const Bench bench = at_lower_float();
  CHECK(bench.error(run(2, ""))->place == "lower-float/spot 2/lifted");
  CHECK(bench.error(run(2, "0.55", "x"))->place == "lower-float/spot 2/zero after");
  EnterFloatRun odd = run(2, "0.55");
  odd.rest = "0.0.0";
  CHECK(bench.error(odd)->place == "lower-float/spot 2/rest");
  odd = run(2, "0.55");
  odd.instrument = "";
  CHECK(bench.refusal(odd) == "unknown_instrument");
  CHECK(bench.error(odd)->place == "lower-float/spot 2/instrument");
}

TEST_CASE("A run keeps what was read, with side, series and dial") {
  Bench bench = at_lower_float();
  bench.take(EnterFloatRun{"lower-float", 2, "0,10", "0,65", "0,10", "dial_gauge"});
  const auto* kept = latest<FloatRun>(bench.state, "lower-float");
  REQUIRE(kept != nullptr);
  CHECK(kept->side == Side::lower);
  CHECK_FALSE(kept->as_found);
  CHECK(kept->spot == 2);
  CHECK(kept->series == 1);
  CHECK(kept->rest.base == 100);
  CHECK(kept->lifted.base == 650);
  CHECK(kept->zero_after == typed("0.10"));
  CHECK(kept->instrument->resolution == 10);
}

TEST_CASE("A new series begins where something was measured") {
  Bench bench = at_lower_float();
  CHECK(bench.refusal(BeginSeries{"lower-float", {}, SeriesReason::measure_again}) == "nothing_measured");
  bench.take(run(1, "0.55"));
  CHECK(bench.refusal(BeginSeries{"lower-float", {4}, SeriesReason::measure_again}) == "unknown_spot");
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::measure_again});
  CHECK(latest<SeriesBegun>(bench.state, "lower-float")->spots == std::vector<int>{1, 2, 3});
  CHECK(bench.refusal(BeginSeries{"lower-float", {}, SeriesReason::measure_again}) == "nothing_measured");
  bench.take(run(1, "0.56")).take(BeginSeries{"lower-float", {1}, SeriesReason::seated_again});
  CHECK(latest<SeriesBegun>(bench.state, "lower-float")->series == 3);
  bench.take(run(1, "0.57")).take(run(2, "0.55"));
  CHECK(latest<FloatRun>(bench.state, "lower-float")->series == 2);  // spot 2 was not begun anew the second time
  CHECK(bench.state.live("lower-float").size() == 6);                // every run stays
}

TEST_CASE("A float step takes runs, other steps do not") {
  Bench bench = at_lower_float();
  CHECK(bench.refusal(EnterFloatRun{"dust-away", 1, "0", "0.5", "", "dial_gauge"}) == "wrong_kind");
  CHECK(bench.refusal(BeginSeries{"dust-away", {}, SeriesReason::measure_again}) == "wrong_kind");
}

TEST_CASE("Trials and float that disagree are seated again first, then believed") {
  Bench bench = at_lower_float();
  bench.float_twice("lower-float", too_large);
  CHECK(bench.conclusion("lower-float") == "seat_again");
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::measure_again}).float_twice("lower-float", too_large);
  CHECK(bench.conclusion("lower-float") == "seat_again");  // measuring again is not seating again
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::seated_again}).float_twice("lower-float", too_large);
  CHECK(bench.conclusion("lower-float") == "change_shim");
}

}  // namespace shimwright::job::test
