#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::StopKind;

TEST_CASE("notes, stops and assemblies are told in order") {
  const auto record = record_of(long_job());
  CHECK(record.notes.size() == 3);
  CHECK(record.notes.front().place->title == "Float of the lower disc");
  REQUIRE(record.stops.size() == 3);
  CHECK(record.stops[0].kind == StopKind::parked);
  CHECK(record.stops[0].text == "new hub ring");
  CHECK(*record.stops[0].due == "2026-11-30");
  CHECK(record.stops[1].kind == StopKind::taken_up);
  CHECK(record.stops[1].unproven == std::vector<std::string>{"Both bearings seated, square and free"});
  CHECK(record.stops[2].kind == StopKind::handed_over);
  CHECK(*record.stops[2].to == "RT");
  REQUIRE(record.assemblies.size() == 3);
  CHECK(record.assemblies.front().assembly == 2);
  CHECK(record.assemblies.front().sides == std::vector<Side>{Side::lower});
}

TEST_CASE("what was taken back is listed with its digits and the reason") {
  const auto record = record_of(long_job());
  REQUIRE(record.taken_back.size() == 1);
  const auto& line = record.taken_back.front();
  CHECK(line.reason == "read off the wrong dial");
  CHECK(line.entered.entry + 1 == line.stamp.entry);
  REQUIRE(line.what.size() == 1);
  CHECK(line.what.front().in_english() == "Spot 1: rest 0.04 mm, lifted 0.777 mm");
}

TEST_CASE("taking back an entry that is not there is still on record") {
  Bench bench;
  bench.add(opened());
  bench.add(job::Withdrawn{99, "slip"});
  bench.add(job::Withdrawn{0, "slip"});
  const auto record = record_of(bench);
  REQUIRE(record.taken_back.size() == 2);
  CHECK(record.taken_back.front().what.empty());
}
