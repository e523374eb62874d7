#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

TEST_CASE("Which states let the job go on") {
  CHECK(passed(Accepted{3}));
  CHECK(passed(DeviationTaken{3}));
  CHECK(passed(SaidNotRequired{3}));
  CHECK(passed(NotAsked{}));
  CHECK_FALSE(passed(Open{}));
  CHECK_FALSE(passed(InWork{}));
  CHECK_FALSE(passed(Held{3, {}, true}));
  CHECK_FALSE(passed(Unproven{3}));
}

TEST_CASE("States have names") {
  const std::vector<std::pair<StepState, std::string>> names = {{Open{}, "open"},
                                                                {InWork{}, "in_work"},
                                                                {Accepted{1}, "accepted"},
                                                                {Held{1, {}, true}, "held"},
                                                                {DeviationTaken{1}, "deviation"},
                                                                {SaidNotRequired{1}, "not_required"},
                                                                {Unproven{1}, "unproven"},
                                                                {NotAsked{}, "not_asked"}};
  CHECK(names.size() == std::variant_size_v<StepState>);
  for (const auto& [state, name] : names) {
    CHECK(name_of(state) == name);
  }
}

TEST_CASE("A step that is not on the sheet is open") {
  const Bench bench;
  CHECK(std::holds_alternative<Open>(bench.state.step("no-such-step")));
  CHECK(bench.state.hold_point_before("no-such-step") == nullptr);
}

TEST_CASE("Live entries leave out what was withdrawn") {
  Bench bench;
  bench.take(WriteText{"complaint-when", "cold"}).take(WriteText{"complaint-when", "hot"});
  CHECK(bench.state.live("complaint-when").size() == 2);
  CHECK(latest<Written>(bench.state, "complaint-when")->text == "hot");
  bench.take(Withdraw{bench.last_seq(), "misheard"});
  CHECK(bench.state.entries.size() == 4);
  CHECK(bench.state.live().size() == 3);
  CHECK(bench.state.live("complaint-when").size() == 1);
  CHECK(latest<Written>(bench.state, "complaint-when")->text == "cold");
  CHECK(bench.state.next_seq() == 5);
}

TEST_CASE("Live entries of one assembly") {
  Bench bench;
  bench.answer_up_to("hub-in").take(BeginAssembly{{}, "ring not home"});
  bench.answer("hub-ring-off");
  CHECK(bench.state.live("hub-ring-off").size() == 2);
  CHECK(bench.state.live("hub-ring-off", 1).size() == 1);
  CHECK(bench.state.live("hub-ring-off", 2).size() == 1);
  CHECK(latest<Done>(bench.state, "splines-greased", 1) != nullptr);
  CHECK(latest<Done>(bench.state, "splines-greased", 2) == nullptr);
}

TEST_CASE("The next step is the first one that is not passed") {
  Bench bench;
  CHECK(bench.state.next_step()->id == "complaint-read-back");
  bench.answer_up_to("odometer");
  CHECK(bench.state.next_step()->id == "odometer");
  bench.take(Withdraw{bench.seq_of("complaint-when", "written"), "misheard"});
  CHECK(bench.state.next_step()->id == "complaint-when");
}

TEST_CASE("No hold point stands before a step whose hold points are passed") {
  Bench bench;
  CHECK(bench.state.hold_point_before("diagnosis") == nullptr);
  CHECK(bench.state.hold_point_before("diagnosis-reason")->id == "diagnosis");
  CHECK(bench.state.hold_point_before("sign-checker")->id == "diagnosis");
  bench.answer_up_to("vehicle-secured");
  CHECK(bench.state.hold_point_before("high-voltage") == nullptr);
  CHECK(bench.state.hold_point_before("sign-checker")->id == "high-voltage");
}

TEST_CASE("A float that is begun, not judged, holds the other disc") {
  Bench bench;
  bench.answer_up_to("lower-float");
  bench.take(EnterFloatRun{"lower-float", 1, "0", "0.93", "", "dial_gauge"});
  CHECK(bench.step("lower-float") == "in_work");
  CHECK(bench.state.hold_point_before("hub-in")->id == "lower-float");
}

}  // namespace shimwright::job::test
