#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

using Section = void (*)(record::PageWriter&, const record::Record&);

std::vector<record::Page> written(Section section, const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { section(writer, record); });
}

}  // namespace

TEST_CASE("hold points, choices and findings are printed, the rest is counted") {
  const auto pages = written(record::write_answers, record_of(finished_job()));
  CHECK(has(pages, "yes, by telephone"));
  CHECK(has(pages, "not in order: Support bearing of the outer shaft"));
  CHECK(has(pages, "2 other steps done or in order."));
  CHECK_FALSE(has(pages, "Read the complaint back"));
}

TEST_CASE("the course of a job is told in the order of its entries") {
  const auto pages = written(record::write_course, record_of(long_job()));
  const std::string text = text_of(pages);
  CHECK(has(pages, "pack off again, assembly 2 begun, to change: large bearing's shim; “float too large"));
  CHECK(has(pages, "parked, waits for new hub ring, due 2026-11-30"));
  CHECK(has(pages, "taken up; asked again: Both bearings seated, square and free"));
  CHECK(has(pages, "handed over to RT: “ring is on the tray”"));
  CHECK(has(pages, "Confirmed as it stands: “millimetres, as read”"));
  CHECK(text.find("assembly 2 begun") < text.find("parked"));
}

TEST_CASE("a clock set back is told") {
  auto record = record_of(open_job());
  record.clock_went_back = {5, 9};
  CHECK(has(written(record::write_course, record), "The clock had been set back before entry 5, 9;"));
}

TEST_CASE("what was taken back is told with its digits") {
  const auto pages = written(record::write_taken_back, record_of(long_job()));
  CHECK(has(pages, "Spot 1: rest 0.04 mm, lifted 0.777 mm (entered by MK"));
  CHECK(has(pages, "“read off the wrong dial”"));
}

TEST_CASE("photos and values worked to") {
  CHECK(has(written(record::write_photos, record_of(long_job())), "“faces”, MK, 24 Nov"));
  CHECK(has(written(record::write_work_values, record_of(long_job())), "8 N·m, then 90°"));
}

TEST_CASE("nothing happened, nothing written") {
  const record::Record record;
  for (const Section section : {record::write_answers, record::write_course, record::write_taken_back,
                                record::write_photos, record::write_work_values}) {
    CHECK(written(section, record).front().rows.empty());
  }
}
