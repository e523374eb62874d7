#include "shimwright/record/comparison.h"

#include <algorithm>

#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::ComparedRow;

namespace {

const ComparedRow* row_named(const std::vector<ComparedRow>& rows, const std::string& name) {
  const auto found =
      std::find_if(rows.begin(), rows.end(), [&](const ComparedRow& each) { return each.name.in_english() == name; });
  return found == rows.end() ? nullptr : &*found;
}

Bench with_odometer_reading(const char* text) {
  Bench bench;
  bench.add(opened());
  bench.read("odometer", {reading("distance", text, Unit::kilometre)});
  return bench;
}

std::vector<Bench> samples() {
  return {finished_job(), open_job(), long_job(), with_odometer_reading("121400"), Bench()};
}

}  // namespace

TEST_CASE("a job is like itself") {
  for (const Bench& each : samples()) {
    const auto record = record_of(each);
    for (const ComparedRow& row : record::compare(record, record)) {
      INFO(row.name.in_english());
      CHECK_FALSE(row.differs);
      CHECK(row.first == row.second);
    }
  }
}

TEST_CASE("compared the other way round the same rows stand there with their sides changed") {
  for (const Bench& one : samples()) {
    for (const Bench& other : samples()) {
      const auto there = record::compare(record_of(one), record_of(other));
      const auto back = record::compare(record_of(other), record_of(one));
      REQUIRE(there.size() == back.size());
      for (const ComparedRow& row : there) {
        const ComparedRow mirrored{row.name, row.second, row.first, row.differs};
        INFO(row.name.in_english());
        CHECK(std::find(back.begin(), back.end(), mirrored) != back.end());
        CHECK((row.first || row.second));
      }
    }
  }
}

TEST_CASE("numbers are the same by their value, not by their digits") {
  const auto rows =
      record::compare(record_of(with_odometer_reading("121400")), record_of(with_odometer_reading("121400.0 km")));
  CHECK(std::none_of(rows.begin(), rows.end(), [](const ComparedRow& each) { return each.differs; }));
}

TEST_CASE("what differs is marked, and what only one of them has too") {
  const auto rows = record::compare(record_of(finished_job()), record_of(open_job()));
  const ComparedRow* mean = row_named(rows, "Float, lower disc, mean");
  REQUIRE(mean != nullptr);
  CHECK(mean->differs);
  REQUIRE(mean->first);
  CHECK_FALSE(mean->second);
  const ComparedRow* spec = row_named(rows, "Spec sheet");
  REQUIRE(spec != nullptr);
  CHECK_FALSE(spec->differs);
}

TEST_CASE("of a float the last series of the last assembly is compared, spot by spot") {
  const auto rows = record::compare(record_of(finished_job()), record_of(Bench()));
  for (const char* name : {"Float, lower disc, spot 1", "Float, lower disc, spot 2", "Float, lower disc, spot 3"}) {
    INFO(name);
    const ComparedRow* row = row_named(rows, name);
    REQUIRE(row != nullptr);
    CHECK(row->first->verdict == job::ReadingVerdict::within);
  }
  REQUIRE(row_named(rows, "Float as found, lower disc, mean") != nullptr);
  CHECK(row_named(rows, "Float as found, lower disc, mean")->first->text.in_english() == "0.596 mm");
}

TEST_CASE("the same digits with another verdict differ: the limits were others") {
  Bench one;
  one.add(opened());
  Bench other = one;
  const auto torque = reading("torque", "13.5", Unit::newton_metre);
  one.peak("draw-off-peak", 1, judged(torque, job::ReadingVerdict::within, std::nullopt, "30"), std::nullopt);
  other.peak("draw-off-peak", 1, judged(torque, job::ReadingVerdict::too_large, std::nullopt, "12"), std::nullopt);
  const auto rows = record::compare(record_of(one), record_of(other));
  CHECK(std::count_if(rows.begin(), rows.end(), [](const ComparedRow& each) { return each.differs; }) == 1);
}
