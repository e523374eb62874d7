#include "job_row.h"

#include "connection.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("a job's line in the lists follows its entries") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  JobSummary summary = got(bench.store().open_jobs()).front();
  CHECK(summary.id == job.id());
  CHECK(summary.number == "2026-0147");
  CHECK(summary.vehicle_key == "TESTVN009TA030417");
  CHECK(summary.gearbox == "D7");
  CHECK(summary.plate == std::optional<std::string>("HL-MK 412"));
  CHECK(summary.standing == JobStanding::open);
  CHECK(summary.stage == "receive");
  CHECK(summary.next_step == "complaint-read-back");
  CHECK(summary.at_bench == mk);
  CHECK(summary.last_seq == 1);

  job.add(job::Checked{{"complaint-read-back", 1}, true, ""});
  job.add(job::Parked{"rings from the supplier", "2026-11-30"});
  summary = got(bench.store().open_jobs()).front();
  CHECK(summary.standing == JobStanding::parked);
  CHECK(summary.next_step == "complaint-when");
  CHECK(summary.waits_for == "rings from the supplier");
  CHECK(summary.due == std::optional<std::string>("2026-11-30"));
  CHECK(summary.last_seq == 3);
  CHECK(summary.last_at_ms == job.last().moment.at_ms);

  job.add(job::TakenUp{});
  job.add(job::HandedOver{rt, ""});
  job.add(job::AssemblyBegun{2, {job::Side::lower}, "Float off"});
  summary = got(bench.store().open_jobs()).front();
  CHECK(summary.standing == JobStanding::open);
  CHECK(summary.waits_for.empty());
  CHECK_FALSE(summary.due);
  CHECK(summary.at_bench == rt);
  CHECK(summary.assembly == 2);
}

TEST_CASE("the serial of the pack fitted last is kept with the job") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  job.add(job::Written{{"old-pack-serial", 1}, "P7-0001", {}});
  CHECK(job_row(job.id(), job.state()).back() == Value());
  job.add(job::Written{{"new-pack-serial", 1}, "P7-558213", {}});
  CHECK(job_row(job.id(), job.state()).back() == text_value("P7-558213"));
  CHECK(got(bench.store().connection().value("SELECT pack_serial FROM job")) == text_value("P7-558213"));
}

}  // namespace shimwright::store
