#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;

TEST_CASE("old and new shims with every trial in order") {
  const auto record = record_of(finished_job());
  const auto pages = pages_of([&](record::PageWriter& writer) { record::write_shims(writer, record); });
  CHECK(has(pages, "Large 1 1.75 tight, 1.55 loose, 1.60 snug 1.60 1.601 1.702"));
  CHECK(has(pages, "2 1.95 snug, 2.00 tight 1.95 1.952"));
  CHECK(has(pages, "Small 1, 2 1.80 tight, 1.75 snug 1.75 1.751 1.799"));
}

TEST_CASE("a shim not measured says so") {
  const auto record = record_of(open_job());
  const auto pages = pages_of([&](record::PageWriter& writer) { record::write_shims(writer, record); });
  CHECK(has(pages, "Large 1 1.75 tight none chosen not measured 1.702"));
  CHECK(has(pages, "Small not measured not measured 1.799"));
}

TEST_CASE("raw depths, stamp and reason stand in the details") {
  Bench bench = open_job();
  bench.add(job::DepthsRead{bench.here("large-depth"),
                            Side::lower,
                            {typed("12.48"), typed("12.51")},
                            typed("3.02"),
                            typed("-0.10"),
                            instrument("depth 1")});
  bench.add(job::ShimChosen{bench.here("large-depth"),
                            Side::lower,
                            "1.65",
                            quantity::micrometres(1651),
                            0.003,
                            job::ChosenBy::person,
                            std::nullopt,
                            "1.60 is out of stock",
                            {}});
  const auto record = record_of(bench);
  const auto pages = pages_of([&](record::PageWriter& writer) { record::write_shim_details(writer, record); });
  CHECK(has(pages, "depths 12.48 mm, 12.51 mm; reference 3.02 mm; stamp on the pack −0.10 mm; depth 1, MK"));
  CHECK(has(pages, "shim 1.65, in the tray 1.651 mm, chosen by hand"));
  CHECK(has(pages, "Reason: “1.60 is out of stock”."));
}

TEST_CASE("nothing to tell, nothing written") {
  const record::Record record;
  const auto pages = pages_of([&](record::PageWriter& writer) {
    record::write_shims(writer, record);
    record::write_shim_details(writer, record);
  });
  CHECK(pages.front().rows.empty());
}
