#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::vector<record::Page> floats(const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { record::write_floats(writer, record); });
}

std::vector<record::Page> every_run(const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { record::write_float_runs(writer, record); });
}

}  // namespace

TEST_CASE("each series has its floats, spread, uncertainty and verdict") {
  const auto pages = floats(record_of(finished_job()));
  CHECK(has(pages, "Float, mm: limits 0.25 to 0.85, spread at most 0.15"));
  CHECK(has(pages, "Lower as found 0.60 0.61 0.58 0.03 0.02 for information dial 2, MK, 23 Nov 11:02"));
  CHECK(has(pages, "0.93, 0.93 0.90, 0.91 0.96, 0.96 0.055 0.02 too large dial 2, MK"));
  CHECK(has(pages, "0.47, 0.47 0.50, 0.49 0.46, 0.46 0.035 0.02 within dial 2, RT"));
  CHECK(has(pages, "seated again"));
}

TEST_CASE("a spot without a run is not measured, and nothing is judged") {
  Bench bench;
  bench.add(opened());
  bench.runs("lower-float", Side::lower, {"0.56", "0.58"});
  const auto pages = floats(record_of(bench));
  CHECK(has(pages, "0.56 0.58 not measured not judged"));
}

TEST_CASE("spots that were not measured again stay as before") {
  Bench bench;
  bench.add(opened());
  bench.runs("lower-float", Side::lower, {"0.56", "0.58", "0.70"});
  bench.add(job::SeriesBegun{bench.here("lower-float"), 2, {1}, job::SeriesReason::measure_again});
  bench.runs("lower-float", Side::lower, {"0.57"}, 2);
  const auto pages = floats(record_of(bench));
  CHECK(has(pages, "measured again"));
  CHECK(has(pages, "0.57 as before as before"));
}

TEST_CASE("every run stands as it was entered") {
  Bench bench = finished_job();
  job::FloatRun run;
  run.at = bench.here("lower-float");
  run.rest = typed("0.040");
  run.lifted = typed("0.777");
  bench.add(run);
  const auto pages = every_run(record_of(bench));
  CHECK(has(pages, "0.040\u00A0to\u00A00.777\u00A0(not\u00A0looked\u00A0at)"));
  CHECK(times(pages, "\u00A0to\u00A0") == 25);
}

TEST_CASE("limits of the two discs are told apart where they differ") {
  auto record = record_of(finished_job());
  record.floats.back().limits.most = quantity::micrometres(900);
  CHECK(has(floats(record), "lower limits 0.25 to 0.85, spread at most 0.15; upper limits 0.25 to 0.90"));
}

TEST_CASE("five spots have five columns") {
  Bench bench;
  bench.add(opened());
  bench.runs("lower-float", Side::lower, {"0.56", "0.58", "0.70", "0.61", "0.60"});
  const auto pages = floats(record_of(bench));
  CHECK(has(pages, "Spot 5"));
  CHECK(broken_laws(pages).empty());
}
