#include <algorithm>

#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::WhyNotMeasured;

namespace {

const record::NotMeasured* line_at(const record::Record& record, const std::string& step) {
  const auto found = std::find_if(record.not_measured.begin(), record.not_measured.end(),
                                  [&](const record::NotMeasured& each) { return each.place.step == step; });
  return found == record.not_measured.end() ? nullptr : &*found;
}

}  // namespace

TEST_CASE("what was not measured is listed with its reason") {
  const auto record = record_of(long_job());
  const auto* found = line_at(record, "upper-float-as-found");
  REQUIRE(found != nullptr);
  CHECK(found->why == WhyNotMeasured::not_required);
  CHECK(found->reason == "the hub ring was already broken");
  CHECK(found->stamp->initials == "MK");
  const auto* oil = line_at(record, "gear-oil");
  REQUIRE(oil != nullptr);
  CHECK(oil->why == WhyNotMeasured::deviation);
  CHECK(oil->stamp);
}

TEST_CASE("what was measured is not listed") {
  const auto record = record_of(finished_job());
  for (const char* step : {"lower-float", "upper-float", "press-peak", "large-gauge-fit", "odometer", "road-test"}) {
    INFO(step);
    CHECK(line_at(record, step) == nullptr);
  }
}

TEST_CASE("the way the spec sheet does not use is not missed") {
  CHECK(line_at(record_of(open_job()), "large-depth") == nullptr);
}

TEST_CASE("a step measured in part names the part that is missing") {
  Bench bench;
  bench.add(opened());
  bench.read("road-test", {reading("distance", "16", Unit::kilometre)});
  const auto record = record_of(bench);
  const auto* line = line_at(record, "road-test");
  REQUIRE(line != nullptr);
  CHECK(line->place.title == "Road test: Gearbox oil at the end");
}

TEST_CASE("what was measured before the pack came off is to be measured again") {
  Bench bench = finished_job();
  CHECK(line_at(record_of(bench), "lower-float") == nullptr);
  bench.begin_assembly({Side::lower}, "noise");
  REQUIRE(line_at(record_of(bench), "lower-float") != nullptr);
  CHECK(line_at(record_of(bench), "lower-float")->why == WhyNotMeasured::not_done);
}
