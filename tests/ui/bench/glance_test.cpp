#include "glance.h"

#include <algorithm>

#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;
using widgets::StageLook;

namespace {

bench::Glance glance_now(test::UiBench& bench) {
  const auto jobs = bench.store().open_jobs();
  REQUIRE(jobs);
  REQUIRE(jobs->size() == 1);
  return bench::glance_at(jobs->front(), bench.workbench().state(), bench.workbench().now());
}

long count_of(const bench::Glance& glance, StageLook look) {
  return std::count(glance.stages.begin(), glance.stages.end(), look);
}

}  // namespace

TEST_CASE("a card names job, vehicle, unit, stage and the next step") {
  test::UiBench bench;
  const std::string job = bench.go_to("engine-held");
  const bench::Glance glance = glance_now(bench);
  CHECK(glance.job == job);
  CHECK(glance.number == "2041");
  CHECK(glance.vehicle == "VIN ends 30417");
  CHECK(glance.unit == "unit D7");
  CHECK(glance.stage == "Remove, make safe");
  CHECK(glance.next == "Engine held from above or below");
  CHECK_FALSE(glance.bad);
  CHECK(glance.stages.size() == bench.workbench().state().sheets.job->stages.size());
  CHECK(count_of(glance, StageLook::done) == 1);
  CHECK(glance.stages.at(1) == StageLook::here);
}

TEST_CASE("work that went on past an answer that is not in order still comes back to it") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  const bench::Glance glance = glance_now(bench);
  CHECK(glance.bad);
  CHECK(glance.stage == "Strip and inspect");
  CHECK(glance.next == "Engagement bearings and support bearing: not in order");
  CHECK(glance.stages.at(2) == StageLook::held);
  CHECK(glance.stages.at(3) == StageLook::done);
}

TEST_CASE("a float that is off is held, in words and in its stage") {
  test::UiBench bench;
  bench.go_to("");
  const auto job = bench.store().load(bench.workbench().job_id());
  REQUIRE(job);
  // The script's first assembly ends with a float that is off: the job as it was after that advice.
  job::JobState state = job::begin(bench.workbench().state().sheets);
  bool held = false;
  for (const job::Entry& entry : job->entries) {
    state = job::evolve(std::move(state), entry);
    const auto* advised = std::get_if<job::Advised>(&entry.body);
    if (advised != nullptr && std::holds_alternative<job::Held>(state.step("lower-float"))) {
      held = true;
      break;
    }
  }
  REQUIRE(held);
  const bench::Glance glance = bench::glance_at({}, state, bench.workbench().now());
  CHECK(glance.bad);
  CHECK(glance.stage == "Float, lower disc");
  CHECK(glance.next == "Float of the lower disc: " + bench::held_words(state, *state.next_step()));
  CHECK(count_of(glance, StageLook::held) == 1);
}

TEST_CASE("a parked job says what it waits for, until when and for how long") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  REQUIRE(bench.workbench().send(job::Park{"levers and pivot", "2026-11-26"}));
  CHECK(glance_now(bench).next == "waits for: levers and pivot, due 26 Nov 2026 · parked today");
  CHECK(count_of(glance_now(bench), StageLook::waiting) == 1);
  bench.move_clock(24 * 60);
  CHECK(glance_now(bench).next.endsWith("parked for 1 day"));
  CHECK_FALSE(glance_now(bench).bad);
  bench.move_clock(4 * 24 * 60);
  CHECK(glance_now(bench).next == "waits for: levers and pivot, was due 26 Nov 2026 · parked for 5 days");
  CHECK(glance_now(bench).bad);
}

TEST_CASE("what holds a step is said in the words of its kind") {
  test::UiBench bench;
  bench.go_to("engine-held");
  REQUIRE(bench.workbench().send(job::CheckStep{"engine-held", false, "no support at hand"}));
  const job::JobState& state = bench.workbench().state();
  const sheet::Step* step = state.sheets.job->find("engine-held");
  REQUIRE(step != nullptr);
  CHECK(bench::held_words(state, *step) == "not in order");
}

TEST_CASE("a job that cannot be read says so on its card") {
  store::JobSummary summary;
  summary.number = "2041";
  const bench::Glance glance = bench::glance_without_state(summary, Error{"damaged", "", {"It is damaged.", {}}});
  CHECK(glance.number == "2041");
  CHECK(glance.next == "It is damaged.");
  CHECK(glance.bad);
  CHECK(glance.stages.empty());
}

TEST_CASE("a card goes behind those that are as urgent, before those that are less") {
  using bench::Urgency;
  CHECK(bench::place_among({}, Urgency::off) == 0);
  const std::vector<Urgency> cards{Urgency::off, Urgency::open, Urgency::open, Urgency::parked};
  CHECK(bench::place_among(cards, Urgency::off) == 1);
  CHECK(bench::place_among(cards, Urgency::open) == 3);
  CHECK(bench::place_among(cards, Urgency::parked) == 4);
}

TEST_CASE("a job that waits is not urgent, though what it waits for is overdue") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  CHECK(glance_now(bench).urgency == bench::Urgency::off);  // not in order
  REQUIRE(bench.workbench().send(job::Park{"levers and pivot", "2026-11-20"}));
  CHECK(glance_now(bench).bad);
  CHECK(glance_now(bench).urgency == bench::Urgency::parked);
}
