#include "taken_back.h"

#include "no_scan.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

job::PartsFitted fitted(const std::string& batch) {
  return {{"pack-ring-new", 1}, {job::PartFitted{"pack-ring", "D7-R-118", 1, batch}}};
}

std::int64_t last_entry(const TestJob& job) {
  return job.state().entries.back().seq;
}

/// What is found of one job by a text.
Found one_found(Store& store, const std::string& text) {
  const FoundJobs found = got(store.search(text));
  REQUIRE(found.size() == 1);
  return found.jobs.front();
}

}  // namespace

TEST_CASE("a batch and a serial that were taken back are found as taken back, and the right ones as they are") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  job.add(fitted("B-5577"));
  CHECK_FALSE(one_found(bench.store(), "B5577").taken_back);
  job.add(job::Withdrawn{last_entry(job), "Wrong box"});
  job.add(fitted("B-6688"));
  job.add(job::Written{{"new-pack-serial", 1}, "P7-558213", {}});
  job.add(job::Withdrawn{last_entry(job), "Serial of the old pack"});
  CHECK(one_found(bench.store(), "B5577").taken_back);
  CHECK_FALSE(one_found(bench.store(), "B6688").taken_back);
  CHECK(one_found(bench.store(), "558213").taken_back);
  CHECK_FALSE(one_found(bench.store(), "20260147").taken_back);
  // A slip in what is sought changes nothing in that.
  CHECK(one_found(bench.store(), "B5578").taken_back);
  CHECK_FALSE(one_found(bench.store(), "B5578").exact);
  // Nothing in the index follows from it, so it is the same after everything was made anew.
  CHECK(got(check(bench.store())).in_order());
}

TEST_CASE("what another entry still holds, or one of two that match, counts") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  job.add(fitted("B-5577"));
  job.add(job::Withdrawn{last_entry(job), "Wrong box"});
  job.add(fitted("B-5579"));
  const Found both = one_found(bench.store(), "B557");
  CHECK_FALSE(both.taken_back);
  CHECK(both.term == "B5579");
  job.add(fitted("b 5577"));
  CHECK_FALSE(one_found(bench.store(), "B5577").taken_back);
}

TEST_CASE("a term counts by its own job: taken back in one, it stands in another") {
  Workbench bench;
  TestJob first(bench, "10", "2026-0147");
  TestJob second(bench, "11", "2026-0152");
  for (TestJob* each : {&first, &second}) {
    each->open();
    each->add(fitted("B-5577"));
  }
  first.add(job::Withdrawn{last_entry(first), "Wrong box"});
  const FoundJobs found = got(bench.store().search("B5577"));
  REQUIRE(found.size() == 2);
  for (const Found& each : found.jobs) {
    CHECK(each.taken_back == (each.job.number == "2026-0147"));
  }
}

TEST_CASE("to ask whether terms were taken back reads no table through, and nothing where none is asked for") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  job.add(fitted("B-5577"));
  job.add(job::Withdrawn{last_entry(job), "Wrong box"});
  Connection& connection = bench.store().connection();
  const auto statements = statements_of(connection, [&] {
    CHECK(got(taken_back(connection, {{job.id(), "batch", "B5577"}, {job.id(), "batch", "B1"}})).size() == 1);
  });
  CHECK(statements.size() == 2);
  for (const std::string& sql : statements) {
    INFO(sql);
    for (const std::string& scan : scans_of(connection, sql)) {
      CHECK(scan.find("SCAN wanted VIRTUAL TABLE") == 0);
    }
  }
  CHECK(statements_of(connection, [&] { CHECK(got(taken_back(connection, {})).empty()); }).empty());
}

}  // namespace shimwright::store
