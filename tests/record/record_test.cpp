#include "shimwright/record/record.h"

#include <catch2/catch.hpp>

#include "sample_job.h"
#include "shimwright/job/evolve.h"

using namespace shimwright;
using namespace shimwright::record_test;

TEST_CASE("a job that was never opened gives a record that says so") {
  const auto record = record::make_record(job::JobState(), sample_names());
  REQUIRE(record.result.size() == 1);
  CHECK(record.result.front().in_english() == "This job was never opened.");
  CHECK(record.entries == 0);
  CHECK_FALSE(record.demonstration());
}

TEST_CASE("a job without names of its people still gives a record") {
  const auto record = record::make_record(job::fold(shipped_sheets(), long_job().entries()), {});
  CHECK(record.job.opened.initials == "?");
  CHECK_FALSE(record.vehicle.plate->content);
}

TEST_CASE("every length of a job gives a record") {
  const auto entries = long_job().entries();
  for (std::size_t count = 0; count <= entries.size(); ++count) {
    const std::vector<job::Entry> first(entries.begin(), entries.begin() + static_cast<std::ptrdiff_t>(count));
    const auto record = record::make_record(job::fold(shipped_sheets(), first), sample_names());
    CHECK(record.entries == static_cast<std::int64_t>(count));
    CHECK_FALSE(record.result.empty());
  }
}

TEST_CASE("a clock that went back is on record") {
  auto entries = open_job().entries();
  entries[4].moment.clock_went_back = true;
  const auto record = record::make_record(job::fold(shipped_sheets(), entries), sample_names());
  CHECK(record.clock_went_back == std::vector<std::int64_t>{5});
}
