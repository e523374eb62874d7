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
  CHECK(has(pages, "Odometer 121400 km"));
  CHECK(has(pages, "−0.10 mm"));
  CHECK_FALSE(has(pages, "N·m"));
}

TEST_CASE("a stamped deviation keeps its sign and its digits, with a true minus; nought has none") {
  for (const auto& [entered, printed] : std::vector<std::pair<std::string, std::string>>{
           {"+0.12", "+0.12 mm"}, {"-0.12", "−0.12 mm"}, {"0.00", "0.00 mm"}, {"0.0", "0.0 mm"}, {"+0", "0 mm"}}) {
    INFO(entered);
    Bench bench;
    bench.add(opened());
    bench.read("stamp-upper", {reading("stamp", entered)});
    const auto pages = written(record::write_further_readings, record_of(bench));
    CHECK(has(pages, " " + printed + " "));
    CHECK_FALSE(has(pages, "+0 "));
    CHECK_FALSE(has(pages, "-0"));
  }
}

TEST_CASE("readings without a sign of their own get no plus, and a true minus") {
  Bench bench;
  bench.add(opened());
  bench.read("old-shim-lower", {reading("thickness", "1.62")});
  bench.read("teach-in-temperature",
             {judged(reading("oil", "-5", Unit::degree_celsius), job::ReadingVerdict::too_small, "-30", "90")});
  const auto pages = written(record::write_readings, record_of(bench));
  CHECK(has(pages, "−5 °C −30 to 90"));
  CHECK_FALSE(has(all_pages(record_of(bench)), "+1.62"));
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
  CHECK(has(pages, "Clutch pack DP-7714 26-1188 MK, 23 Nov 11:11 1"));
  CHECK(has(pages, "Retaining ring, pack 1, 2 DP-7720"));
}

TEST_CASE("what is asked once in a job has no assembly, whenever it was answered") {
  Bench bench;
  bench.add(opened());
  bench.begin_assembly({}, "ring proud");
  bench.read("odometer", {reading("distance", "900", Unit::kilometre)});
  bench.read("plugs-out", {judged(reading("plugs", "2", Unit::piece), job::ReadingVerdict::within, "2", "2")});
  bench.part("housing-bolts-new", "housing-bolts", "DP-7750", 4);
  bench.read("locks-out", {judged(reading("locks", "1", Unit::piece), job::ReadingVerdict::within, "1", "1")});
  bench.check("bearing-wear", false, "blue");
  bench.add(job::Deviated{bench.here("bearing-wear"), "goes with the pack"});
  const auto record = record_of(bench);
  CHECK(has(written(record::write_further_readings, record), "Odometer 900 km"));
  CHECK(has(written(record::write_parts, record), "Housing bolts, one-time DP-7750"));
  const auto judged_pages = written(record::write_readings, record);
  CHECK(has(judged_pages, "Plugs taken out 2 equal"));
  CHECK(has(judged_pages, "Transport locks taken out 2 1 equal"));
  CHECK_FALSE(has(written(record::write_deviations, record), "assembly"));
  CHECK_FALSE(has(written(record::write_answers, record), "assembly"));
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
