#include <catch2/catch.hpp>

#include "gather.h"
#include "sample_job.h"
#include "shimwright/job/evolve.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::string told(const job::EntryBody& body) {
  const auto state = job::fold(shipped_sheets(), {});
  const auto names = sample_names();
  job::Entry entry;
  entry.body = body;
  std::string all;
  for (const Message& message : record::what_was_entered(record::source_of(state, names), entry)) {
    all += (all.empty() ? "" : "; ") + message.in_english();
  }
  return all;
}

}  // namespace

TEST_CASE("each kind of entry is told with its digits as typed") {
  CHECK(told(job::Read{{"press-peak", 1}, {reading("torque", "9,50", Unit::newton_metre)}, {}}) ==
        "Highest torque of this pressing 9.50 N·m");
  CHECK(told(job::ShimTried{{"large-gauge-fit", 1}, Side::lower, "1.75", job::Fit::tight}) == "Shim 1.75 tight");
  CHECK(told(job::DepthsRead{
            {"large-depth", 1}, Side::lower, {typed("12.4"), typed("12.51")}, typed("3"), typed("-0.10"), {}}) ==
        "Depths 12.4 mm, 12.51 mm, reference 3 mm; Stamp −0.10 mm");
  CHECK(told(job::Read{{"stamp-lower", 1}, {reading("stamp", "+0.12")}, {}}) ==
        "Stamped deviation, lower disc +0.12 mm");
  job::FloatRun run;
  run.rest = typed("0");
  run.lifted = typed("0.620");
  run.zero_after = typed("0.01");
  CHECK(told(run) == "Spot 1: rest 0 mm, lifted 0.620 mm; Zero after 0.01 mm");
  CHECK(told(job::PartsFitted{{"new-pack", 1}, {{"clutch-pack", "DP-1", 2, "b"}}}) ==
        "clutch-pack, number DP-1, quantity 2 b");
  CHECK(told(job::Checked{{"hub-index", 1}, false, "no mark"}) == "Not in order: no mark");
  CHECK(told(job::HandedOver{"person-rt", ""}) == "Handed over to RT");
}

TEST_CASE("a teach-in tells values before and after") {
  job::TeachInTried tried;
  tried.at = {"teach-in-lower", 1};
  tried.values = {{"touch-point", typed("11.4"), reading("touch-point", "10.2")}};
  CHECK(told(tried) == "Teach-in, attempt 1; Touch point before 11.4 mm; Touch point after 10.2 mm");
}

TEST_CASE("no kind of entry is told as nothing") {
  const job::StepRef at{"hub-index", 1};
  const std::vector<job::EntryBody> bodies = {job::Opened(),
                                              job::Done{at},
                                              job::Checked{at, true, ""},
                                              job::Chosen{at, "dry", true},
                                              job::PeakRead(),
                                              job::PhotoTaken(),
                                              job::Written{at, "words", {}},
                                              job::SeriesBegun(),
                                              job::Confirmed(),
                                              job::ShimChosen(),
                                              job::Signed{at},
                                              job::Deviated{at, "r"},
                                              job::NotRequired{at, "r"},
                                              job::Withdrawn{1, "r"},
                                              job::Noted{{}, "n"},
                                              job::Parked{"ring", {}},
                                              job::TakenUp(),
                                              job::AssemblyBegun()};
  for (const auto& body : bodies) {
    INFO(job::kind_of(body));
    CHECK_FALSE(told(body).empty());
  }
}
