#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;

TEST_CASE("readings have limit, verdict and instrument; those of shims stand with the shims") {
  const auto record = record_of(finished_job());
  for (const auto& line : record.readings) {
    CHECK(line.place.step.find("shim") == std::string::npos);
  }
  REQUIRE(record.readings.size() >= 8);
  CHECK(quantity::text_of(record.readings.front().number) == "121400 km");
  const auto& depth = record.readings[4];
  CHECK(depth.channel_title == "Bearing face to shaft end");
  CHECK(depth.only_channel);
  CHECK(depth.instrument->name == "depth 1");
  CHECK(*depth.limit->most == 7000);
}

TEST_CASE("a reading that must equal another names it") {
  const auto record = record_of(finished_job());
  bool found = false;
  for (const auto& line : record.readings) {
    if (line.place.step == "plugs-out") {
      found = true;
      REQUIRE(line.must_equal);
      CHECK(*line.must_equal == "Plug the breathers and count the plugs");
    }
  }
  CHECK(found);
}

TEST_CASE("a reading entered again leaves the earlier one on record") {
  Bench bench;
  bench.add(opened());
  bench.read("odometer", {reading("distance", "12140", Unit::kilometre)});
  bench.read("odometer", {reading("distance", "121400", Unit::kilometre)});
  const auto record = record_of(bench);
  REQUIRE(record.readings.size() == 2);
  CHECK(record.readings[0].entered_again);
  CHECK_FALSE(record.readings[1].entered_again);
}

TEST_CASE("every attempt of a peak and of a teach-in stays") {
  const auto record = record_of(long_job());
  REQUIRE(record.peaks.size() == 5);
  CHECK(record.peaks[1].attempt == 1);
  CHECK(record.peaks[2].attempt == 2);
  CHECK(*record.peaks[2].most_attempts == 3);
  REQUIRE(record.teach_ins.size() == 3);
  CHECK_FALSE(record.teach_ins[0].completed);
  CHECK(record.teach_ins[0].code == "P0A11");
  CHECK(record.teach_ins[1].values.front().channel_title == "Touch point");
  CHECK(quantity::text_of(*record.teach_ins[1].values.front().before) == "11.4 mm");
}

TEST_CASE("parts and values worked to carry the titles of the spec sheet") {
  const auto record = record_of(finished_job());
  REQUIRE(record.parts.size() == 4);
  CHECK(record.parts[0].title == "Clutch pack");
  CHECK(record.parts[0].batch == "26-1188");
  CHECK(record.parts[3].place.assembly == 2);
  CHECK_FALSE(record.work_values.empty());
}
