#include "shimwright/store/figures.h"

#include <atomic>

#include <rapidcheck.h>

#include "no_scan.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr Period always{0, std::int64_t{1} << 50};
constexpr std::int64_t day_ms = std::int64_t{24} * 3600 * 1000;

void choose(TestJob& job, int assembly, const std::string& shim) {
  job::ShimChosen chosen;
  chosen.at = {"large-gauge-fit", assembly};
  chosen.shim = shim;
  chosen.thickness = quantity::Length(1900);
  chosen.u_mm = 0.0025;
  job.add(chosen);
}

void try_shim(TestJob& job, int assembly, const std::string& shim) {
  job.add(job::ShimTried{{"large-gauge-fit", assembly}, job::Side::lower, shim, job::Fit::snug});
}

JobFacts facts(const std::string& id, std::int64_t day, std::optional<std::int64_t> odometer_km = std::nullopt) {
  JobFacts job;
  job.id = id;
  job.gearbox = "D7";
  job.visit.opened_at_ms = day * day_ms;
  job.visit.odometer_m = odometer_km ? std::optional(*odometer_km * 1000) : std::nullopt;
  return job;
}

Figures of(const std::vector<JobFacts>& jobs, const BackWithin& within = {}) {
  Figures figures;
  for (const JobFacts& each : jobs) {
    take(figures, each, within);
  }
  return figures;
}

}  // namespace

TEST_CASE("figures of a store without jobs are empty") {
  Workbench bench;
  const Figures figures = got(figures_of(bench.store(), always, {}));
  CHECK(figures.jobs.empty());
  CHECK(figures.by_month.empty());
}

TEST_CASE("trials, shims and second assemblies are counted, and each figure is the list of its jobs") {
  Workbench bench;
  TestJob first(bench, "10", "1", "TESTVN009TA030417");
  first.open();
  try_shim(first, 1, "1.95");
  try_shim(first, 1, "1.90");
  choose(first, 1, "1.90");
  first.add(job::AssemblyBegun{2, {job::Side::lower}, "Float off"});
  choose(first, 2, "1.85");
  TestJob second(bench, "11", "2", "TESTVN117TB118822");
  second.open();
  try_shim(second, 1, "1.85");
  choose(second, 1, "1.85");
  TestJob bare(bench, "12", "3", "TESTVN117TB118823");
  bare.open();

  const Figures figures = got(figures_of(bench.store(), always, {}));
  CHECK(figures.jobs == JobIds{first.id(), second.id(), bare.id()});
  CHECK(figures.with_shim == JobIds{first.id(), second.id()});
  CHECK(figures.again == JobIds{first.id()});
  CHECK(figures.by_trials == std::map<int, JobIds>{{1, {second.id()}}, {2, {first.id()}}});
  CHECK(figures.trials == 3);
  CHECK(figures.shims_found == 2);
  const ShimName left{"D7", job::Side::lower, "1.85"};
  CHECK(figures.by_shim == std::map<ShimName, JobIds>{{left, {first.id(), second.id()}}});
  CHECK(figures.by_month == std::map<Month, JobIds>{{{2026, 11}, figures.jobs}});
}

TEST_CASE("what was withdrawn counts no longer") {
  Workbench bench;
  TestJob job(bench, "10", "1");
  job.open();
  try_shim(job, 1, "1.95");
  try_shim(job, 1, "1.90");
  job.add(job::Withdrawn{job.last().seq, "slipped"});
  choose(job, 1, "1.95");
  choose(job, 1, "1.90");
  job.add(job::Withdrawn{job.last().seq, "slipped"});
  const Figures figures = got(figures_of(bench.store(), always, {}));
  CHECK(figures.trials == 1);
  CHECK(figures.by_shim.count({"D7", job::Side::lower, "1.95"}) == 1);
  CHECK(figures.by_shim.size() == 1);
}

TEST_CASE("only jobs opened in the period are read, its first moment with it and its last without") {
  Workbench bench;
  TestJob job(bench, "10", "1");
  job.open();
  const std::int64_t at = job.state().entries.front().moment.at_ms;
  CHECK(got(figures_of(bench.store(), {at, at + 1}, {})).jobs.size() == 1);
  CHECK(got(figures_of(bench.store(), {at - 1, at}, {})).jobs.empty());
  CHECK(got(figures_of(bench.store(), {at + 1, at + 2}, {})).jobs.empty());
  CHECK(got(jobs_of_period(bench.store(), {at, at + 1})) == JobIds{job.id()});
  CHECK(got(jobs_of_period(bench.store(), {at - 1, at})).empty());
}

TEST_CASE("a vehicle that is back is known by the job before it, in or out of the period") {
  Workbench bench;
  TestJob first(bench, "10", "1", "TESTVN009TA030417");
  TestJob second(bench, "11", "2", "TESTVN009TA030417");
  TestJob other(bench, "12", "3", "TESTVN117TB118822");
  first.open();
  second.open();
  other.open();
  CHECK(got(figures_of(bench.store(), always, {})).back == JobIds{second.id()});
  // More jobs than are read in one step change nothing.
  const Figures over_path = got(figures_of(bench.path(), always, {}));
  CHECK(over_path.back == JobIds{second.id()});
  CHECK(over_path.back_by_time.empty());
}

TEST_CASE("back within distance and time: both borders belong to it, and an unknown distance is told apart") {
  const BackWithin within{20'000'000, 100 * day_ms};
  JobFacts near = facts("near", 200, 60000);
  near.before = JobFacts::Visit{100 * day_ms, 40'000'000};
  JobFacts far = facts("far", 200, 60001);
  far.before = near.before;
  JobFacts late = facts("late", 201, 50000);
  late.before = near.before;
  JobFacts no_odometer = facts("no-odometer", 150);
  no_odometer.before = near.before;
  JobFacts lower = facts("lower", 150, 100);
  lower.before = near.before;
  const Figures figures = of({near, far, late, no_odometer, lower, facts("new", 150, 1)}, within);
  CHECK(figures.back == JobIds{"near"});
  CHECK(figures.back_by_time == JobIds{"no-odometer", "lower"});
}

TEST_CASE("every job is in exactly one month, by the clock of the place it was opened at") {
  JobFacts before_midnight = facts("a", 0);
  before_midnight.visit.opened_at_ms = 1793487600000;  // 2026-10-31T23:00Z
  before_midnight.offset_min = 0;
  JobFacts after_midnight = before_midnight;
  after_midnight.offset_min = 60;
  const Figures figures = of({before_midnight, after_midnight});
  CHECK(figures.by_month.size() == 2);
  CHECK(figures.by_month.count({2026, 10}) == 1);
  CHECK(figures.by_month.count({2026, 11}) == 1);
  rc::check([] {
    Figures all;
    const auto days = *rc::gen::container<std::vector<std::int64_t>>(rc::gen::inRange<std::int64_t>(0, 30000));
    for (const std::int64_t day : days) {
      take(all, facts(std::to_string(day), day), {});
    }
    std::size_t counted = 0;
    for (const auto& [month, jobs] : all.by_month) {
      RC_ASSERT(month.month >= 1U && month.month <= 12U);
      counted += jobs.size();
    }
    RC_ASSERT(counted == days.size());
  });
}

TEST_CASE("reading the figures tells how far it is and can be stopped") {
  Workbench bench;
  TestJob job(bench, "10", "1");
  job.open();
  std::int64_t told = 0;
  BackupWatch watch;
  watch.progress = [&told](std::int64_t done, std::int64_t of_all) {
    CHECK(done <= of_all);
    told = done;
  };
  CHECK(got(figures_of(bench.store(), always, {}, watch)).jobs.size() == 1);
  CHECK(told == 1);
  const std::atomic<bool> stop = true;
  watch.stop = &stop;
  CHECK(code_of(figures_of(bench.store(), always, {}, watch)) == "stopped");
}

TEST_CASE("no statement of the figures reads a table through") {
  Workbench bench;
  TestJob job(bench, "10", "1");
  job.open();
  Connection& connection = bench.store().connection();
  const auto statements = statements_of(connection, [&] {
    CHECK(got(figures_of(bench.store(), always, {})).jobs.size() == 1);
    CHECK(got(jobs_of_period(bench.store(), always)).size() == 1);
  });
  CHECK(statements.size() >= 5);
  for (const std::string& sql : statements) {
    INFO(sql);
    const auto scans = scans_of(connection, sql);
    CHECK(scans == std::vector<std::string>());
  }
}

}  // namespace shimwright::store
