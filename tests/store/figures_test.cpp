#include "shimwright/store/figures.h"

#include <atomic>

#include <rapidcheck.h>

#include "no_scan.h"
#include "shimwright/store/exchange.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr Period always{0, std::int64_t{1} << 50};
constexpr std::int64_t hour_ms = std::int64_t{3600} * 1000;
constexpr std::int64_t day_ms = 24 * hour_ms;

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
  CHECK(figures.by_trials == std::map<int, FoundAfter>{{1, {1, {second.id()}}}, {2, {1, {first.id()}}}});
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
  const Figures over_path = got(figures_of(bench.path(), always, {}));
  CHECK(over_path.back == JobIds{second.id()});
  CHECK(over_path.back_by_time.empty());
}

TEST_CASE("however many jobs are read in one step, the figures are the same") {
  Workbench bench;
  JobIds ids;
  for (int each = 0; each < 7; ++each) {
    TestJob job(bench, std::to_string(20 + each), std::to_string(each),
                each % 2 == 0 ? "TESTVN009TA030417" : "TESTVN117TB118822");
    job.open();
    try_shim(job, 1, "1.95");
    choose(job, 1, each < 4 ? "1.95" : "1.90");
    ids.push_back(job.id());
  }
  // All opened in one moment, then some of them hours apart: a step may end between equals and between others.
  for (const std::int64_t apart_ms : {std::int64_t{0}, hour_ms}) {
    for (std::size_t each = 0; each < ids.size(); ++each) {
      went(bench.store().connection().execute(
          "UPDATE job SET opened_at_ms = opened_at_ms + ? WHERE id = ?",
          {number_value(static_cast<std::int64_t>(each / 2) * apart_ms), text_value(ids[each])}));
    }
    const Figures whole = got(figures_of(bench.store(), always, {}));
    CHECK(whole.jobs == ids);
    CHECK(whole.back.size() + whole.back_by_time.size() == 5);
    for (const std::int64_t at_a_time : {1, 2, 3, 6, 7, 8}) {
      INFO(at_a_time << " at a time, " << apart_ms << " ms apart");
      const Figures figures = got(figures_of(bench.store(), always, {}, {}, at_a_time));
      CHECK(figures.jobs == whole.jobs);
      CHECK(figures.by_shim == whole.by_shim);
      CHECK(figures.by_trials == whole.by_trials);
      CHECK(figures.back_by_time == whole.back_by_time);
      const auto steps = statements_of(bench.store().connection(), [&] {
        CHECK(got(figures_of(bench.store(), always, {}, {}, at_a_time)).jobs.size() == ids.size());
      });
      const auto pages = std::count_if(steps.begin(), steps.end(), [](const std::string& sql) {
        return sql.find("AS opening ON") != std::string::npos;
      });
      // One more finds that there are no more.
      CHECK(pages == 1 + (static_cast<std::int64_t>(ids.size()) + at_a_time - 1) / at_a_time);
    }
  }
}

TEST_CASE("a job is listed once behind its trials, with each of its shims counted") {
  JobFacts both = facts("both", 1);
  both.trials = {{{job::Side::lower, 1}, 1}, {{job::Side::upper, 1}, 1}};
  const Figures figures = of({both});
  CHECK(figures.by_trials == std::map<int, FoundAfter>{{1, {2, {"both"}}}});
  CHECK(figures.shims_found == 2);
}

TEST_CASE("a shim that came off again, or was doubted by another trial, was not left in the vehicle") {
  Workbench bench;
  TestJob off(bench, "10", "1");
  off.open();
  choose(off, 1, "1.95");
  off.add(job::AssemblyBegun{2, {job::Side::lower}, "Float off"});
  TestJob doubted(bench, "11", "2", "TESTVN117TB118822");
  doubted.open();
  choose(doubted, 1, "1.95");
  try_shim(doubted, 1, "1.90");
  TestJob other_side(bench, "12", "3", "TESTVN117TB118822");
  other_side.open();
  choose(other_side, 1, "1.95");
  other_side.add(job::AssemblyBegun{2, {job::Side::upper}, "Float off"});
  const Figures figures = got(figures_of(bench.store(), always, {}));
  CHECK(figures.by_shim == std::map<ShimName, JobIds>{{{"D7", job::Side::lower, "1.95"}, {other_side.id()}}});
}

TEST_CASE("a job taken in from elsewhere is listed by itself and is no visit before one of ours") {
  Workbench elsewhere;
  TestJob theirs(elsewhere, "10", "1");
  theirs.open();
  choose(theirs, 1, "1.95");
  const std::string file = elsewhere.file("job.jsonl").toStdString();
  got(export_job(elsewhere.path(), theirs.id(), file));
  Workbench bench;
  TestJob before(bench, "11", "2", "TESTVN117TB118822");
  before.open();
  got(import_job(bench.path(), file, by_mk()));
  TestJob ours(bench, "12", "3");
  ours.open();
  const Figures figures = got(figures_of(bench.store(), always, {}));
  CHECK(figures.jobs == JobIds{before.id(), ours.id()});
  CHECK(figures.elsewhere == JobIds{theirs.id()});
  CHECK(figures.by_shim.empty());
  CHECK(figures.back.empty());
  CHECK(figures.back_by_time.empty());
}

TEST_CASE("days are those of the calendar where the vehicle was, not spans of 24 hours") {
  JobFacts again = facts("again", 465, 50000);
  again.before = JobFacts::Visit{100 * day_ms + 10 * hour_ms, 0, 40'000'000};
  again.visit.opened_at_ms += 20 * hour_ms;
  CHECK(of({again}).back == JobIds{"again"});
  again.visit.offset_min = 5 * 60;
  CHECK(of({again}).back.empty());
}

TEST_CASE("back within distance and time: both borders belong to it, and an unknown distance is told apart") {
  const BackWithin within{20'000'000, 100};
  JobFacts near = facts("near", 200, 60000);
  near.before = JobFacts::Visit{100 * day_ms, 0, 40'000'000};
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
  before_midnight.visit.offset_min = 0;
  JobFacts after_midnight = before_midnight;
  after_midnight.visit.offset_min = 60;
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
