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

TEST_CASE("judged readings have limit, verdict, instrument, person and time") {
  const auto pages = written(record::write_readings, record_of(finished_job()));
  CHECK(has(pages, "9.5 N·m at most 12 within wrench 3, MK, 24 Nov 09:22"));
  CHECK(has(pages, "attempt 2 of 3 2 10.0 N·m at most 12 within"));
  CHECK(has(pages, "6.31 mm at most 7.00 within depth 1, MK"));
  CHECK(has(pages, "2 equal within RT"));
  CHECK(has(pages, "12.5 to 14.8"));
}

TEST_CASE("readings without a limit stand with the details") {
  const auto pages = written(record::write_further_readings, record_of(finished_job()));
  CHECK(has(pages, "Odometer 1 121400 km"));
  CHECK(has(pages, "-0.10 mm"));
  CHECK_FALSE(has(pages, "N·m"));
}

TEST_CASE("readings entered together and judged alike are one row") {
  Bench bench;
  bench.add(opened());
  const auto warm = [](const char* channel, const char* text) {
    return judged(reading(channel, text, Unit::degree_celsius), job::ReadingVerdict::within, "15", "30");
  };
  bench.read("lower-float-temperature", {warm("box", "21.5"), warm("gauge", "21.0")});
  const auto pages = written(record::write_readings, record_of(bench));
  CHECK(has(pages, "Gearbox, Dial gauge"));
  CHECK(has(pages, "21.5 °C, 21.0 °C"));
}

TEST_CASE("a reading entered again and an instrument overdue say so") {
  Bench bench;
  bench.add(opened());
  auto late = judged(reading("voltage", "12.9", Unit::volt), job::ReadingVerdict::within, "12.5", "14.8");
  late.instrument = instrument("meter 1");
  late.instrument->overdue = true;
  bench.read("supply-voltage", {late});
  bench.read("supply-voltage", {late});
  const auto pages = written(record::write_readings, record_of(bench));
  CHECK(times(pages, "entered again below") == 1);
  CHECK(times(pages, "meter 1 (calibration overdue)") == 2);
}

TEST_CASE("parts of several assemblies are one row with the sum") {
  const auto pages = written(record::write_parts, record_of(finished_job()));
  CHECK(has(pages, "Clutch pack 1 DP-7714 26-1188 MK, 23 Nov 11:11 1"));
  CHECK(has(pages, "Retaining ring, pack 1, 2 DP-7720"));
}

TEST_CASE("every attempt of the teach-in with values before and after") {
  const auto pages = written(record::write_teach_ins, record_of(long_job()));
  CHECK(has(pages, "not completed, P0A11, supply voltage fell"));
  CHECK(has(pages, "11.4 mm 10.2 mm 7.5 to 13.5 within"));
}

TEST_CASE("no readings, no table") {
  const record::Record record;
  for (const Section section :
       {record::write_readings, record::write_further_readings, record::write_parts, record::write_teach_ins}) {
    CHECK(written(section, record).front().rows.empty());
  }
}
