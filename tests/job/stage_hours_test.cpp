#include "shimwright/job/stage_hours.h"

#include <catch2/catch.hpp>
#include <utility>
#include <vector>

#include "bench.h"

namespace shimwright::job::test {

TEST_CASE("Time belongs to the step whose entry ends it, and none is counted while a job lies or nobody writes") {
  JobState state = Bench().state;
  state.entries.clear();
  const std::vector<std::pair<std::int64_t, EntryBody>> entries{{0, Noted{}},
                                                                {10, Done{{"dust-away", 1}}},
                                                                {25, Done{{"degreased", 1}}},
                                                                {30, Parked{"parts", std::nullopt}},
                                                                {90, Checked{{"large-bearing-seated", 1}, true, {}}},
                                                                {500, Checked{{"small-bearing-seated", 1}, true, {}}},
                                                                {490, Done{{"degreased", 1}}}};
  for (const auto& [minute, body] : entries) {
    state.entries.push_back({state.next_seq(), {minute * 60000, 0, false}, "someone", body});
  }
  const auto hours = stage_hours(state);
  REQUIRE(hours.size() == 1);
  CHECK(hours[0].stage == "renew");
  CHECK(hours[0].minutes == 25);
}

TEST_CASE("Stages come in the order of the sheet, those without time are left out") {
  JobState state = Bench().state;
  state.entries.clear();
  for (const auto& [minute, step] : std::vector<std::pair<std::int64_t, const char*>>{
           {0, "dust-away"}, {7, "dust-away"}, {10, "complaint-when"}}) {
    state.entries.push_back({state.next_seq(), {minute * 60000, 0, false}, "someone", Done{{step, 1}}});
  }
  const auto hours = stage_hours(state);
  REQUIRE(hours.size() == 2);
  CHECK(hours[0].stage == "receive");
  CHECK(hours[0].minutes == 3);
  CHECK(hours[1].stage == "renew");
  CHECK(hours[1].minutes == 7);
}

}  // namespace shimwright::job::test
