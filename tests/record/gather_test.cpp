#include "gather.h"

#include <catch2/catch.hpp>

#include "sample_job.h"
#include "shimwright/job/evolve.h"

using namespace shimwright;
using namespace shimwright::record_test;

TEST_CASE("job, sheets and people are named") {
  const auto record = record_of(finished_job());
  CHECK(record.workshop_name == "Hollow Lane Gearboxes");
  CHECK(record.job.number == "2041");
  CHECK(record.job.opened.initials == "MK");
  CHECK(record.job.sheet.name == "dry-pack-renewal");
  CHECK(record.job.spec.name == "D7");
  CHECK(record.job.spec.issue == 2);
  CHECK(record.demonstration());
  REQUIRE(record.job.closed);
  CHECK(record.job.closed->initials == "RT");
  REQUIRE(record.job.people.size() == 2);
  CHECK(record.job.people.front().second.name == "M. Kell");
  CHECK(record.entries == static_cast<std::int64_t>(finished_job().entries().size()));
}

TEST_CASE("the vehicle is shown with its personal texts, erased ones as such") {
  const Bench bench = open_job();
  auto names = sample_names();
  names.texts["text-plate"] = std::nullopt;
  names.texts.erase("text-complaint");
  const auto record = record::make_record(job::fold(shipped_sheets(), bench.entries()), names);
  CHECK(record.vehicle.key == "TESTVN009TA030417");
  REQUIRE(record.vehicle.odometer);
  CHECK(quantity::text_of(*record.vehicle.odometer) == "121400 km");
  REQUIRE(record.vehicle.plate);
  CHECK_FALSE(record.vehicle.plate->content);
  CHECK_FALSE(record.vehicle.complaint->content);
  REQUIRE(record.vehicle.customer_reference->content);
  CHECK(record.vehicle.customer_reference->content->text == "C-0382");
}

TEST_CASE("an unknown person is a question mark, not a blank") {
  Bench bench;
  bench.by("somebody else").add(opened());
  CHECK(record_of(bench).job.opened.initials == "?");
}

TEST_CASE("an unknown step keeps its id for a title") {
  Bench bench;
  bench.add(opened());
  bench.read("a-step-of-long-ago", {reading("depth", "1.5")});
  const auto record = record_of(bench);
  REQUIRE(record.readings.size() == 1);
  CHECK(record.readings.front().place.title == "a-step-of-long-ago");
  CHECK(record.readings.front().channel_title == "depth");
}

TEST_CASE("an open job says which step is next") {
  const auto record = record_of(open_job());
  CHECK_FALSE(record.job.closed);
  REQUIRE(record.job.next_step);
  CHECK(*record.job.next_step == "In which gears?");
}

TEST_CASE("a job is closed too where the checker's signature was left out with a reason") {
  Bench bench = open_job();
  const std::string last = shipped_sheets().job->stages.back().steps.back().id;
  bench.add(job::Deviated{bench.here(last), "one person in the workshop today"});
  const auto record = record_of(bench);
  REQUIRE(record.job.closed);
  CHECK(record.job.closed->entry == static_cast<std::int64_t>(bench.entries().size()));
}
