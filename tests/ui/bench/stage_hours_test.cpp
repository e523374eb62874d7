#include "stage_hours.h"

#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

namespace {

job::JobState with_entries(const job::JobState& from, const std::vector<std::pair<std::int64_t, job::EntryBody>>& entries) {
  job::JobState state = from;
  state.entries.clear();
  for (const auto& [minute, body] : entries) {
    state.entries.push_back({state.next_seq(), {minute * 60000, 0, false}, "someone", body});
  }
  return state;
}

}  // namespace

TEST_CASE("time belongs to the step whose entry ends it, and none is counted while a job lies") {
  test::UiBench rig;
  rig.go_to("large-gauge-fit");
  const auto state = with_entries(rig.workbench().state(), {{0, job::Noted{}},
                                                            {10, job::Done{{"dust-away", 1}}},
                                                            {25, job::Done{{"degreased", 1}}},
                                                            {30, job::Parked{"parts", std::nullopt}},
                                                            {90, job::Checked{{"large-bearing-seated", 1}, true, {}}},
                                                            {500, job::Checked{{"small-bearing-seated", 1}, true, {}}},
                                                            {490, job::Done{{"degreased", 1}}}});
  const auto hours = bench::stage_hours(state);
  REQUIRE(hours.size() == 1);
  CHECK(hours[0].stage == "renew");
  CHECK(hours[0].minutes == 25);
}

TEST_CASE("a whole job tells hours in the order of its stages") {
  test::UiBench rig;
  rig.go_to("");
  const auto hours = bench::stage_hours(rig.workbench().state());
  CHECK(hours.size() >= 8);
  for (const auto& each : hours) {
    CHECK(each.minutes > 0);
  }
  CHECK(hours.front().stage == "receive");
}
