#include "earlier_jobs.h"

#include <catch2/catch.hpp>

#include "shimwright/store/figures.h"
#include "ui_bench.h"

using namespace shimwright;

namespace {

quantity::TypedNumber kilometres(std::int64_t count) {
  return {count * 1000, 0, quantity::Unit::kilometre};
}

bench::EarlierJobs renewed_at(std::int64_t count) {
  bench::EarlierJob job;
  job.number = "1790";
  job.odometer = kilometres(count);
  job.pack_renewed = true;
  return {{job}, 0};
}

}  // namespace

TEST_CASE("what a finished job left in the vehicle is read from its entries") {
  test::UiBench bench("01-smooth-day");
  bench.go_to("");
  const auto earlier = bench::read_earlier_jobs(bench.store(), "TESTVN006MA021188", 3);
  REQUIRE(earlier);
  REQUIRE(earlier->latest.size() == 1);
  CHECK(earlier->more == 0);
  const bench::EarlierJob& job = earlier->latest.front();
  CHECK(job.pack_renewed);
  CHECK(job.gearbox == "D7");
  CHECK(job.gearbox_serial == "7-003905");
  CHECK(job.build_date == "2021-06-14");
  CHECK(job.plate == "DEMO 188");
  CHECK(bench::heading_of(job) == "Job 2040 · 20 Nov 2026 · 98640 km · pack renewed");
  const QString details = bench::details_of(job);
  CHECK(details.startsWith("shims large "));
  CHECK(details.contains("final float lower 0."));
  CHECK(details.contains(", upper 0."));

  bench::EarlierJob open = job;
  open.standing = store::JobStanding::open;
  CHECK_FALSE(bench::details_of(open).contains("final"));
  CHECK(bench::details_of(open).contains("float lower 0."));
}

TEST_CASE("a vehicle nobody knows has no earlier jobs, and one known often has only the latest read") {
  test::UiBench bench("01-smooth-day");
  bench.go_to("engine-held");
  const auto none = bench::read_earlier_jobs(bench.store(), "TESTVN009TA030417", 3);
  REQUIRE(none);
  CHECK(none->latest.empty());
  const auto cut = bench::read_earlier_jobs(bench.store(), "TESTVN006MA021188", 0);
  REQUIRE(cut);
  CHECK(cut->more == 1);
  const auto open = bench::read_earlier_jobs(bench.store(), "TESTVN006MA021188", 1);
  REQUIRE(open);
  CHECK_FALSE(open->latest.front().pack_renewed);
  CHECK(bench::heading_of(open->latest.front()).endsWith("still open"));
  const auto notices = bench::notices_of(*open, std::nullopt);
  REQUIRE(notices.size() == 1);
  CHECK(notices.front().heading == "Job 2040 of this vehicle is not finished.");
}

TEST_CASE("a second pack soon after the first is questioned, later not") {
  const auto soon = bench::notices_of(renewed_at(81950), kilometres(88300));
  REQUIRE(soon.size() == 1);
  CHECK(soon.front().heading == "Second pack in 6350 km.");
  CHECK(bench::notices_of(renewed_at(81950), kilometres(81950 + store::BackWithin().distance_m / 1000)).empty());
  CHECK(bench::notices_of(renewed_at(81950), std::nullopt).empty());
}

TEST_CASE("an odometer below the earlier one is questioned") {
  const auto below = bench::notices_of(renewed_at(81950), kilometres(8830));
  REQUIRE(below.size() == 1);
  CHECK(below.front().heading == "The odometer stands lower than before.");
  CHECK(below.front().text.contains("Job 1790 noted 81950 km."));
}
