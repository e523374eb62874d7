#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;

TEST_CASE("runs of different series and assemblies never mix") {
  const auto record = record_of(finished_job());
  REQUIRE(record.floats.size() == 5);
  CHECK(record.floats[0].as_found);
  const auto& first = record.floats[1];
  REQUIRE(first.spots.size() == 3);
  CHECK(first.spots[1].runs.size() == 2);
  CHECK(quantity::digits_of(first.spots[1].runs[1].lifted) == "0.91");
  CHECK(first.spots[1].runs[1].value == quantity::micrometres(910));
  CHECK(record.floats[2].series == 2);
  CHECK(record.floats[2].reason == job::SeriesReason::seated_again);
  CHECK(record.floats[2].spots[0].runs.size() == 1);
}

TEST_CASE("a judgement is what was said, its spread the largest spot less the smallest") {
  const auto record = record_of(finished_job());
  const auto& judged = record.floats[1].judged;
  REQUIRE(judged);
  CHECK(*judged->spread == 55);
  CHECK(*judged->expanded_u == 20);
  CHECK(judged->conclusion == job::Conclusion::seat_again);
  CHECK(*judged->trials_agree == false);
  CHECK(record.floats[1].limits.least == quantity::micrometres(250));
  CHECK(record.floats[1].limits.guard_factor == Approx(1.645));
}

TEST_CASE("the last word on each disc is of the present assembly") {
  const auto record = record_of(finished_job());
  for (std::size_t at = 0; at < record.floats.size(); ++at) {
    INFO(at);
    CHECK(record.floats[at].latest == (at >= 3));
  }
  Bench again = finished_job();
  again.begin_assembly({Side::lower}, "noise");
  for (const auto& series : record_of(again).floats) {
    CHECK_FALSE(series.latest);
  }
}

TEST_CASE("a judgement falls with a run it stood on") {
  Bench bench;
  bench.add(opened());
  bench.runs("lower-float", Side::lower, {"0.56", "0.58", "0.61"});
  bench.advise_float("lower-float", Side::lower, job::Conclusion::keep, {560, 580, 610}, job::ReadingVerdict::within);
  REQUIRE(record_of(bench).floats.front().judged);
  bench.add(job::Withdrawn{3, "slipped"});
  auto record = record_of(bench);
  REQUIRE(record.floats.size() == 1);
  CHECK_FALSE(record.floats.front().judged);
  CHECK(record.floats.front().spots.size() == 2);
  bench.runs("lower-float", Side::lower, {"0.57"});
  bench.advise_float("lower-float", Side::lower, job::Conclusion::keep, {565, 580, 610}, job::ReadingVerdict::within);
  record = record_of(bench);
  CHECK(record.floats.front().judged);
}

TEST_CASE("the float of a run has the digits of the finer of its readings") {
  Bench bench;
  bench.add(opened());
  job::FloatRun run;
  run.at = bench.here("lower-float");
  run.rest = typed("0.1");
  run.lifted = typed("0.655");
  bench.add(run);
  run.rest = typed("0");
  run.lifted = typed("0.022 in");
  bench.add(run);
  const auto record = record_of(bench);
  const auto& runs = record.floats.front().spots.front().runs;
  CHECK(runs[0].value == quantity::micrometres(555));
  CHECK(runs[0].decimals == 3);
  CHECK(runs[1].value == quantity::micrometres(559));
  CHECK(runs[1].decimals == 3);
}

TEST_CASE("a disagreement stays on record once per series") {
  Bench bench = finished_job();
  const auto record = record_of(bench);
  REQUIRE(record.disagreements.size() == 1);
  CHECK(record.disagreements.front().side == Side::lower);
  CHECK(record.disagreements.front().assembly == 1);
  CHECK(record.disagreements.front().series == 1);
}
