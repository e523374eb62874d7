#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::vector<record::Page> deviations(const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { record::write_deviations(writer, record); });
}

std::vector<record::Page> not_measured(const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { record::write_not_measured(writer, record); });
}

}  // namespace

TEST_CASE("a deviation says what, who, when and why") {
  const auto pages = deviations(record_of(finished_job()));
  CHECK(has(pages,
            "Support bearing of the outer shaft, wear on its limit): accepted by RT, 23 Nov 11:10, "
            "“to be renewed at the next service, customer told”."));
}

TEST_CASE("a step left out is told as left out") {
  const auto pages = deviations(record_of(long_job()));
  CHECK(has(pages, "Fill in the gear oil: left out by MK"));
}

TEST_CASE("a step left out says in which assembly, unless it is asked once") {
  Bench bench;
  bench.add(opened());
  bench.begin_assembly({}, "ring proud");
  bench.add(job::Deviated{bench.here("shafts-turned"), "turned by the flywheel"});
  bench.add(job::Deviated{bench.here("gear-oil"), "no measuring jug"});
  const auto pages = deviations(record_of(bench));
  CHECK(has(pages, "Turn each shaft by hand, assembly 2: left out by MK"));
  CHECK(has(pages, "Fill in the gear oil: left out by MK"));
}

TEST_CASE("trials against float is told") {
  const auto pages = deviations(record_of(finished_job()));
  CHECK(has(pages, "Lower disc, assembly 1, series 1: trials and float did not agree (MK, 24 Nov 10:56)."));
}

TEST_CASE("what was not measured says not measured and why") {
  const auto pages = not_measured(record_of(finished_job()));
  CHECK(has(pages, "Float of the upper disc as found: not measured, not required: “the hub ring was already broken”"));
  CHECK(has(pages, "No reason given: Keep the learned clutch values;"));
  CHECK(has(not_measured(record_of(open_job())), "So far: "));
}

TEST_CASE("a record without deviations has no such section") {
  record::Record record;
  CHECK(deviations(record).front().rows.empty());
  CHECK(not_measured(record).front().rows.empty());
}
