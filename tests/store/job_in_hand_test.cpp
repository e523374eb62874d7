#include "shimwright/store/job_in_hand.h"

#include "connection.h"
#include "shimwright/store/ids.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* job_id = "01930000-0000-7000-8000-000000001000";

job::OpenJob open_job() {
  IdSource ids;
  job::OpenJob command;
  command.number = "2026-0147";
  command.vehicle_typed = "TESTVN009TA030417";
  command.chassis_reason = "Demonstration vehicle";
  command.plate = ids.private_text("HL-MK 412", monday_ms);
  command.odometer = "148210";
  return command;
}

JobInHand opened(Workbench& bench) {
  JobInHand job = got(JobInHand::begin(bench.store(), job_id, bench.sheet(), bench.spec()));
  const job::Context context = got(job.context(by_mk(), "TESTVN009TA030417"));
  CHECK(got(job.execute(open_job(), context)).size() == 1);
  return job;
}

}  // namespace

TEST_CASE("a job in hand is what the store holds, command by command") {
  Workbench bench;
  JobInHand job = opened(bench);
  const job::Context context = got(job.context(by_mk(5)));
  const auto followed = got(job.execute(job::CheckStep{"complaint-read-back", true, ""}, context));
  REQUIRE(followed.size() == 1);
  CHECK(followed[0].seq == 2);
  CHECK(followed[0].person == mk);
  CHECK(followed[0].moment == by_mk(5).moment);

  const JobInHand again = got(JobInHand::load(bench.store(), job_id));
  CHECK(again.id() == job_id);
  CHECK(again.state().entries == job.state().entries);
  CHECK(again.state().steps == job.state().steps);
  CHECK(got(bench.store().load(job_id)).private_texts.begin()->second == std::optional<std::string>("HL-MK 412"));
}

TEST_CASE("what is refused changes nothing, in hand or in the store") {
  Workbench bench;
  JobInHand job = opened(bench);
  const job::Context context = got(job.context(by_mk(5)));
  CHECK_FALSE(job.execute(job::CheckStep{"no-such-step", true, ""}, context));
  CHECK(job.state().entries.size() == 1);
  CHECK(got(bench.store().load(job_id)).entries.size() == 1);
}

TEST_CASE("what could not be stored is not shown as done") {
  Workbench bench;
  JobInHand job = opened(bench);
  JobInHand behind = got(JobInHand::load(bench.store(), job_id));
  const job::JobState before = behind.state();
  const job::Context context = got(job.context(by_mk(5)));
  static_cast<void>(got(job.execute(job::Note{std::nullopt, "first"}, context)));
  CHECK(code_of(behind.execute(job::CheckStep{"complaint-read-back", true, ""}, context)) == "lost_race");
  CHECK(behind.state().entries == before.entries);
  CHECK(behind.state().steps == before.steps);
  CHECK(behind.state().sheets.job == before.sheets.job);
}

TEST_CASE("a job begins only on sheets of the store, and loads only where it is") {
  Workbench bench;
  CHECK(code_of(JobInHand::begin(bench.store(), job_id, bench.spec(), bench.spec())) == "unknown_sheet");
  CHECK(code_of(JobInHand::begin(bench.store(), job_id, bench.sheet(), "none")) == "unknown_sheet");
  CHECK(code_of(JobInHand::load(bench.store(), job_id)) == "unknown_job");
}

}  // namespace shimwright::store
