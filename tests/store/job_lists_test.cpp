#include "job_lists.h"

#include "exchange.h"

namespace shimwright::store {

using namespace test;

namespace {

std::vector<std::string> ids(const Result<std::vector<JobSummary>>& list) {
  std::vector<std::string> found;
  for (const JobSummary& each : got(list)) {
    found.push_back(each.id);
  }
  return found;
}

using Ids = std::vector<std::string>;

}  // namespace

TEST_CASE("lists of jobs are in order and hold what they should") {
  Workbench bench;
  TestJob first(bench, "10", "2026-0147");
  TestJob second(bench, "11", "2026-0152", "TESTVN117TB118822");
  TestJob third(bench, "12", "2026-0147");
  for (TestJob* job : {&first, &second, &third}) {
    job->open();
  }
  first.add(job::Noted{{}, "a later entry"});
  CHECK(ids(bench.store().jobs()) == Ids{third.id(), second.id(), first.id()});
  CHECK(got(bench.store().job_count()) == 3);
  CHECK(ids(bench.store().jobs(2)) == Ids{third.id(), second.id()});
  CHECK(ids(bench.store().open_jobs()) == Ids{first.id(), third.id(), second.id()});
  CHECK(ids(bench.store().open_jobs(2)) == Ids{first.id(), third.id()});
  CHECK(got(bench.store().open_job_count()) == 3);
  CHECK(ids(bench.store().jobs_of_vehicle("TESTVN009TA030417")) == Ids{third.id(), first.id()});
  CHECK(ids(bench.store().jobs_of_vehicle("TESTVN")) == Ids{});
  CHECK(ids(bench.store().jobs_numbered("2026-0147")) == Ids{third.id(), first.id()});
}

TEST_CASE("a closed job is among past jobs and not among open ones") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  job::JobState closed = job.state();
  closed.entries.push_back({2, by_mk(2).moment, mk, job::Noted{{}, "closed"}});
  closed.closed = true;
  went(bench.store().append(job.id(), {closed.entries.back()}, {}, closed));
  CHECK(got(bench.store().open_jobs()).empty());
  REQUIRE(got(bench.store().jobs()).size() == 1);
  CHECK(got(bench.store().jobs()).front().standing == JobStanding::closed);
}

TEST_CASE("the next job number is one more than the highest that is a number") {
  Workbench bench;
  CHECK(got(bench.store().next_job_number()) == "1");
  TestJob first(bench, "10", "2041");
  TestJob second(bench, "11", "998");
  TestJob third(bench, "12", "2026-0147");
  TestJob fourth(bench, "13", "9999999999999999999");
  TestJob fifth(bench, "14", "-3000");
  for (TestJob* job : {&first, &second, &third, &fourth, &fifth}) {
    job->open();
  }
  CHECK(got(bench.store().next_job_number()) == "2042");
}

TEST_CASE("a number from elsewhere moves none of ours, and no number is given twice") {
  Workbench from;
  Workbench to;
  TestJob huge(from, "20", "999999999999999999");
  TestJob next(from, "21", "42", "TESTVN0020A000123");
  TestJob ours(to, "22", "41", "TESTVN0020A000999");
  for (TestJob* job : {&huge, &next, &ours}) {
    job->open();
  }
  for (const TestJob* job : {&huge, &next}) {
    static_cast<void>(imported(to, exported(from, job->id())));
  }
  CHECK(got(to.store().next_job_number()) == "43");
  CHECK(got(from.store().next_job_number()) == "1000000000000000000");
  TestJob largest(from, "23", "1000000000000000000", "TESTVN0020A000777");
  largest.open();
  CHECK(got(from.store().next_job_number()) == "1000000000000000001");
}

TEST_CASE("each standing has its name") {
  CHECK(name_of(JobStanding::open) == "open");
  CHECK(name_of(JobStanding::parked) == "parked");
  CHECK(name_of(JobStanding::closed) == "closed");
}

}  // namespace shimwright::store
