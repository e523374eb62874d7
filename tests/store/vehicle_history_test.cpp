#include "shimwright/store/vehicle_history.h"

#include "no_scan.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* vehicle = "TESTVN009TA030417";

std::vector<std::string> numbers_of(const VehicleHistory& history) {
  std::vector<std::string> numbers;
  for (const JobOfVehicle& each : history.jobs) {
    numbers.push_back(each.life.number);
  }
  return numbers;
}

}  // namespace

TEST_CASE("a vehicle's jobs are there, the latest first, and no other's") {
  Workbench bench;
  TestJob first(bench, "10", "1102", vehicle);
  TestJob second(bench, "11", "1588", vehicle);
  TestJob other(bench, "12", "1600", "TESTVN117TB118822");
  first.open();
  second.open();
  other.open();
  assemble(first, 1, 1650, 620);
  const VehicleHistory history = got(vehicle_history(bench.store(), vehicle));
  CHECK(numbers_of(history) == std::vector<std::string>{"1588", "1102"});
  CHECK(history.older == 0);
  CHECK(history.jobs.back().life.shims.at(job::Side::lower) == "1650");
  CHECK(history.jobs.back().summary.id == first.id());
  const VehicleHistory latest = got(vehicle_history(bench.store(), vehicle, 1));
  CHECK(numbers_of(latest) == std::vector<std::string>{"1588"});
  CHECK(latest.older == 1);
  CHECK(got(vehicle_history(bench.store(), "NOBODY")).jobs.empty());
}

TEST_CASE("each job has the limits of the sheet it was opened on") {
  Workbench bench;
  TestJob job(bench, "10", "1102", vehicle);
  job.open();
  job::FloatRun run;
  run.at = {"lower-float", 1};
  run.rest = quantity::TypedNumber{0, 2, quantity::Unit::millimetre};
  run.lifted = quantity::TypedNumber{620, 2, quantity::Unit::millimetre};
  job.add(run);
  job::Advised advised;
  advised.at = run.at;
  advised.engine = "1";
  advised.conclusion = job::Conclusion::keep;
  advised.mean = 620;
  advised.expanded_u = 30;
  advised.spot_floats = {620};
  advised.spot_verdicts = {job::ReadingVerdict::within};
  job.add(advised);
  const VehicleHistory history = got(vehicle_history(bench.store(), vehicle));
  const auto* final_float = history.jobs.front().life.float_of(job::Side::lower, false);
  REQUIRE(final_float != nullptr);
  CHECK(final_float->mean_um == 620);
  CHECK(final_float->expanded_u_um == 30);
  CHECK(final_float->least == job.state().sheets.spec->side(job::Side::lower).disc_float.least);
}

TEST_CASE("over a path the history is the same, and reading it can be stopped") {
  Workbench bench;
  TestJob job(bench, "10", "1102", vehicle);
  job.open();
  std::atomic<bool> stop = false;
  const VehicleHistory history = got(vehicle_history(bench.path(), vehicle, 50, {&stop, {}}));
  CHECK(numbers_of(history) == std::vector<std::string>{"1102"});
  stop = true;
  CHECK(code_of(vehicle_history(bench.path(), vehicle, 50, {&stop, {}})) == "stopped");
}

TEST_CASE("however many jobs are named, the store is asked once") {
  Workbench bench;
  std::vector<std::string> ids;
  for (int each = 0; each < 6; ++each) {
    TestJob job(bench, std::to_string(20 + each), std::to_string(each), vehicle);
    job.open();
    ids.push_back(job.id());
  }
  const auto statements = statements_of(bench.store().connection(),
                                        [&] { CHECK(got(jobs_named(bench.store(), ids)).size() == ids.size()); });
  CHECK(statements.size() == 1);
}

TEST_CASE("jobs are named in the order they are asked for, and one that is gone is left out") {
  Workbench bench;
  TestJob first(bench, "10", "1102", vehicle);
  TestJob second(bench, "11", "1588", vehicle);
  first.open();
  second.open();
  const auto jobs = got(jobs_named(bench.store(), {second.id(), "gone", first.id()}));
  REQUIRE(jobs.size() == 2);
  CHECK(jobs.front().number == "1588");
  CHECK(jobs.back().plate == "HL-MK 412");
}

TEST_CASE("no statement of a vehicle's history reads a table through") {
  Workbench bench;
  TestJob job(bench, "10", "1102", vehicle);
  job.open();
  Connection& connection = bench.store().connection();
  const auto statements = statements_of(connection, [&] {
    CHECK(got(vehicle_history(bench.store(), vehicle)).jobs.size() == 1);
    CHECK(got(jobs_named(bench.store(), {job.id()})).size() == 1);
  });
  CHECK(statements.size() > 3);
  for (const std::string& sql : statements) {
    INFO(sql);
    for (const std::string& scan : scans_of(connection, sql)) {
      // What is asked for is handed over as a list of its own, and read through.
      CHECK(scan.find("SCAN wanted VIRTUAL TABLE") == 0);
    }
  }
}

}  // namespace shimwright::store
