#include "shimwright/record/vehicle_life.h"

#include <cmath>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "sample_job.h"
#include "shimwright/job/evolve.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::FloatInLife;
using record::JobInLife;

namespace {

FloatInLife disc_float(bool as_found, std::int64_t mean_um, std::optional<std::int64_t> u_um, Side side = Side::lower) {
  FloatInLife made;
  made.side = side;
  made.as_found = as_found;
  made.mean_um = mean_um;
  made.expanded_u_um = u_um;
  return made;
}

JobInLife fitting(const std::string& pack, std::int64_t final_um, std::optional<std::int64_t> u_um = 20) {
  JobInLife line;
  line.number = "1102";
  line.new_pack = pack;
  line.closed = true;
  line.odometer = quantity::TypedNumber{41020000, 0, Unit::kilometre};
  line.floats = {disc_float(false, final_um, u_um)};
  return line;
}

JobInLife finding(const std::string& pack, std::int64_t found_um, std::optional<std::int64_t> u_um = 20) {
  JobInLife line;
  line.number = "1588";
  line.old_pack = pack;
  line.odometer = quantity::TypedNumber{88150000, 0, Unit::kilometre};
  line.floats = {disc_float(true, found_um, u_um)};
  return line;
}

bool contains(const Message& message, const std::string& part) {
  return message.in_english().find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("a pack that was fitted and found again tells its wear in plain sentences") {
  const auto wear = record::wear_of_packs({fitting("P7-1", 620), finding("P7-1", 710)});
  REQUIRE(wear.size() == 1);
  CHECK(wear.front().facts.in_english() ==
        "Pack P7-1, lower disc: 0.62 mm final in job 1102, 0.71 mm as found in job 1588 after 47130 km.");
  CHECK(wear.front().conclusion.in_english() == "That is 0.09 mm more, ± 0.029 mm (95 %).");
}

TEST_CASE("nothing is said of another pack, of one without a serial, of an open job, of a float that is missing") {
  CHECK(record::wear_of_packs({fitting("P7-1", 620), finding("P7-2", 710)}).empty());
  JobInLife no_serial = finding("P7-1", 710);
  no_serial.old_pack.reset();
  CHECK(record::wear_of_packs({fitting("P7-1", 620), no_serial}).empty());
  JobInLife open = fitting("P7-1", 620);
  open.closed = false;
  CHECK(record::wear_of_packs({open, finding("P7-1", 710)}).empty());
  JobInLife not_found = finding("P7-1", 710);
  not_found.floats = {disc_float(true, 710, 20, Side::upper)};
  CHECK(record::wear_of_packs({fitting("P7-1", 620), not_found}).empty());
  // Found before it was fitted: the order of time counts.
  CHECK(record::wear_of_packs({finding("P7-1", 710), fitting("P7-1", 620)}).empty());
}

TEST_CASE("a pack left for two jobs is compared with the job that fitted it") {
  JobInLife between = finding("P7-1", 650);
  between.number = "1300";
  between.closed = true;
  const auto wear = record::wear_of_packs({fitting("P7-1", 620), between, finding("P7-1", 710)});
  REQUIRE(wear.size() == 2);
  CHECK(contains(wear[1].facts, "job 1102"));
  CHECK(contains(wear[1].facts, "job 1588"));
}

TEST_CASE("a job between that changed the shim is the one a later float is compared with, or nothing is said") {
  JobInLife between = finding("P7-1", 650);
  between.number = "1300";
  between.closed = true;
  between.shims[Side::lower] = "1.95";
  CHECK(record::wear_of_packs({fitting("P7-1", 620), between, finding("P7-1", 710)}).size() == 1);
  between.floats.push_back(disc_float(false, 600, 20));
  const auto wear = record::wear_of_packs({fitting("P7-1", 620), between, finding("P7-1", 710)});
  REQUIRE(wear.size() == 2);
  CHECK(contains(wear[1].facts, "Pack P7-1, lower disc: 0.60 mm final in job 1300"));
  between.shims = {{Side::upper, "1.95"}};
  between.floats.pop_back();
  CHECK(
      contains(record::wear_of_packs({fitting("P7-1", 620), between, finding("P7-1", 710)}).back().facts, "job 1102"));
}

TEST_CASE("a serial is the same however it was written") {
  CHECK(record::wear_of_packs({fitting("LK-22017", 620), finding("lk 22017", 710)}).size() == 1);
  CHECK(record::wear_of_packs({fitting("LK-22017", 620), finding("LK-22018", 710)}).empty());
}

TEST_CASE("no distance is said where one odometer is missing or stands lower") {
  JobInLife lower = finding("P7-1", 710);
  lower.odometer = quantity::TypedNumber{1000, 0, Unit::kilometre};
  JobInLife missing = finding("P7-1", 710);
  missing.odometer.reset();
  for (const JobInLife& each : {lower, missing}) {
    CHECK(contains(record::wear_of_packs({fitting("P7-1", 620), each}).front().facts, "not known"));
  }
}

TEST_CASE("less than was left is told with what to look at, and no difference without uncertainties") {
  const auto less = record::wear_of_packs({fitting("P7-1", 720), finding("P7-1", 610)});
  CHECK(contains(less.front().conclusion, "less"));
  CHECK(contains(less.front().conclusion, "serial"));
  const auto unknown = record::wear_of_packs({fitting("P7-1", 620, std::nullopt), finding("P7-1", 900)});
  CHECK(contains(unknown.front().conclusion, "nothing is said"));
}

TEST_CASE("more or less is said exactly where the difference is beyond the uncertainty of both") {
  rc::check([] {
    const auto then = *rc::gen::inRange<std::int64_t>(0, 1500);
    const auto now = *rc::gen::inRange<std::int64_t>(0, 1500);
    const auto u_then = *rc::gen::inRange<std::int64_t>(0, 200);
    const auto u_now = *rc::gen::inRange<std::int64_t>(0, 200);
    const auto wear = record::wear_of_packs({fitting("P", then, u_then), finding("P", now, u_now)});
    RC_ASSERT(wear.size() == 1);
    const double u = std::sqrt(static_cast<double>(u_then * u_then + u_now * u_now));
    const bool beyond = std::abs(static_cast<double>(now - then)) > u;
    RC_ASSERT(contains(wear.front().conclusion, "mm more") == (beyond && now > then));
    RC_ASSERT(contains(wear.front().conclusion, "mm less") == (beyond && now < then));
    RC_ASSERT(contains(wear.front().conclusion, "cannot be told apart") == !beyond);
  });
}

TEST_CASE("a job as a line of its vehicle's life is what its record says") {
  const JobInLife line = record::job_in_life(job::fold(shipped_sheets(), finished_job().entries()));
  CHECK(line.number == record_of(finished_job()).job.number);
  CHECK(line.closed == record_of(finished_job()).job.closed.has_value());
  CHECK_FALSE(line.sealed);
  REQUIRE(line.float_of(Side::lower, true) != nullptr);
  CHECK(line.float_of(Side::lower, true)->mean_um == 596);
  CHECK(line.float_of(Side::upper, true) == nullptr);
  REQUIRE(line.float_of(Side::lower, false) != nullptr);
  CHECK(line.float_of(Side::lower, false)->least == quantity::micrometres(250));
  CHECK(line.float_of(Side::lower, false)->most == quantity::micrometres(850));
  CHECK(line.shims.at(Side::lower) == "1.95");
  CHECK(record::job_in_life(job::fold(shipped_sheets(), {})).number.empty());
}

TEST_CASE("the serials of the pack found and of the pack fitted are those written at their steps") {
  Bench bench;
  bench.add(opened());
  bench.add(job::Written{bench.here("old-pack-serial"), "P7-1", {}});
  bench.add(job::Written{bench.here("new-pack-serial"), "P7-2", {}});
  const JobInLife line = record::job_in_life(job::fold(shipped_sheets(), bench.entries()));
  CHECK(line.old_pack == "P7-1");
  CHECK(line.new_pack == "P7-2");
}
