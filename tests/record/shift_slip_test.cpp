#include "shimwright/record/shift_slip.h"

#include <algorithm>
#include <memory>

#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "shimwright/job/evolve.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

record::ShiftSlip slip_of(const Bench& bench) {
  return record::make_shift_slip(job::fold(shipped_sheets(), bench.entries()), sample_names());
}

}  // namespace

TEST_CASE("the slip of a job under way says what is next, what lies in the gearbox and who was last") {
  const record::ShiftSlip slip = slip_of(open_job());
  CHECK_FALSE(slip.closed);
  CHECK_FALSE(slip.next_step.empty());
  CHECK_FALSE(slip.next_stage.empty());
  CHECK_FALSE(slip.last.empty());
  CHECK(slip.sides.size() == 2);
  CHECK(slip.demonstration);
  const auto pages = record::lay_out_shift_slip(slip, FixedMeasure());
  CHECK(broken_laws(pages).empty());
  CHECK(has(pages, slip.next_step));
  CHECK(has(pages, "This slip is no record"));
  CHECK(has(pages, "DEMONSTRATION VALUES"));
  CHECK(pages.front().width_mm == Approx(148));
  CHECK(pages.front().height_mm == Approx(210));
}

TEST_CASE("the slip of a finished job sends nobody to the bench") {
  const record::ShiftSlip slip = slip_of(finished_job());
  CHECK(slip.closed);
  CHECK(slip.next_step.empty());
  CHECK(slip.parts_to_do.empty());
  CHECK_FALSE(slip.sides.front().shim.empty());
  CHECK(slip.sides.front().last_float.find(" mm, ") != std::string::npos);
}

TEST_CASE("of a step that was renewed in part the slip names what is still missing") {
  const job::Sheets shipped = shipped_sheets();
  sheet::JobSheet two_parts = *shipped.job;
  for (sheet::Stage& stage : two_parts.stages) {
    for (sheet::Step& step : stage.steps) {
      step.body = step.id == "pack-ring-new" ? sheet::PartStep{{"pack-ring", "hub-ring"}} : step.body;
    }
  }
  job::Sheets sheets = shipped;
  sheets.job = std::make_shared<const sheet::JobSheet>(two_parts);
  Bench bench = open_job();
  const auto rings = [&] {
    const auto lines = record::make_shift_slip(job::fold(sheets, bench.entries()), sample_names()).parts_to_do;
    return std::count_if(lines.begin(), lines.end(), [&](const std::string& line) {
      return line.find(sheets.spec->part("pack-ring")->number) != std::string::npos;
    });
  };
  REQUIRE(rings() == 1);
  bench.add(job::PartsFitted{{"pack-ring-new", 1}, {{"pack-ring", "N", 1, ""}}});
  CHECK(rings() == 0);
}

TEST_CASE("the slip of a sealed job does not send anybody to seal it") {
  Bench bench = finished_job();
  const auto finished = record::lay_out_shift_slip(slip_of(bench), FixedMeasure());
  CHECK(has(finished, "but to seal the record"));
  bench.add(job::Sealed{std::string(64, 'a'), {"person-mk", "person-rt"}});
  const auto pages = record::lay_out_shift_slip(slip_of(bench), FixedMeasure());
  CHECK(has(pages, "Finished and sealed"));
  CHECK_FALSE(has(pages, "to seal the record"));
}

TEST_CASE("a parked job says on its slip what it waits for") {
  record::ShiftSlip slip = slip_of(open_job());
  slip.waits_for = "a retaining ring";
  slip.due = "2026-12-01";
  slip.look_again = {"Bearings seated"};
  slip.to_decide = {"The float is too large."};
  slip.notes = {"ring is on the way, MK", "box two"};
  const auto pages = record::lay_out_shift_slip(slip, FixedMeasure());
  CHECK(has(pages, "a retaining ring"));
  CHECK(has(pages, "2026-12-01"));
  CHECK(has(pages, "Bearings seated"));
  CHECK(has(pages, "The float is too large."));
  CHECK(has(pages, "box two"));
}

TEST_CASE("a slip with more than a page holds goes on without cutting a line") {
  record::ShiftSlip slip = slip_of(open_job());
  slip.notes.assign(60, "a note that is long enough to be broken once at least on paper of this small width, MK");
  const auto pages = record::lay_out_shift_slip(slip, FixedMeasure());
  CHECK(pages.size() > 1);
  CHECK(broken_laws(pages).empty());
  CHECK(times(pages, "a note that") == 60);
}

TEST_CASE("a job that was never opened gives a slip all the same") {
  const record::ShiftSlip slip = record::make_shift_slip({}, {});
  CHECK(broken_laws(record::lay_out_shift_slip(slip, FixedMeasure())).empty());
}
