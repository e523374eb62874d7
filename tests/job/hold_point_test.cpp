#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

/// Hold points asked on that gearbox, all of them on the one or the other.
std::vector<std::string> hold_points(const std::string& spec_file) {
  std::vector<std::string> ids;
  const JobState state = begin(shipped_sheets(spec_file));
  for (const sheet::Step* step : state.sheets.job->steps()) {
    if (step->hold_point && !std::holds_alternative<NotAsked>(state.step(step->id))) {
      ids.push_back(step->id);
    }
  }
  return ids;
}

std::vector<std::string> steps_after(const JobState& state, const std::string& id) {
  std::vector<std::string> ids;
  for (const sheet::Step* step : state.sheets.job->steps()) {
    if (*state.sheets.job->position_of(step->id) > *state.sheets.job->position_of(id) &&
        !std::holds_alternative<NotAsked>(state.step(step->id))) {
      ids.push_back(step->id);
    }
  }
  return ids;
}

/// Any step may be left out with a reason, unless something comes before it.
Command probe(const std::string& step_id) {
  return Deviate{step_id, "to see whether the way is open"};
}

void check_refused_because_of(const Bench& bench, const std::string& later, const std::string& hold) {
  INFO(later << " behind " << hold);
  const auto refused = bench.error(probe(later));
  REQUIRE(refused);
  CHECK(refused->code == "hold_point");
  CHECK(refused->place == later);
  CHECK(refused->message.arguments.back() == hold);
}

void check_holds(const std::string& spec_file, const std::string& hold) {
  Bench answered(spec_file);
  answered.answer_up_to(hold);
  const auto later = steps_after(answered.state, hold);
  for (const std::string& each : later) {
    check_refused_because_of(answered, each, hold);
  }
  Bench deviated = answered;
  answered.answer(hold);
  deviated.take(Deviate{hold, "no other way today"});
  CHECK(deviated.step(hold) == "deviation");
  for (const Bench* bench : {&answered, &deviated}) {
    CHECK(bench->state.hold_point_before(later.front()) == nullptr);
    CHECK(bench->error(DoStep{later.front()}).value_or(Error{}).code != "hold_point");
  }
}

}  // namespace

TEST_CASE("Each hold point of the default sheet holds the job until it is answered or deviated from") {
  for (const std::string& hold : hold_points("D7-2.json")) {
    DYNAMIC_SECTION("by gauge: " << hold) {
      check_holds("D7-2.json", hold);
    }
  }
  for (const std::string hold : {"large-depth", "small-depth"}) {
    DYNAMIC_SECTION("by depth: " << hold) {
      check_holds("D6-1.json", hold);
    }
  }
}

TEST_CASE("The sheet has the hold points of the trade") {
  const auto ids = hold_points("D7-2.json");
  CHECK(ids.size() == 19);
  CHECK(hold_points("D6-1.json").size() == ids.size());
}

TEST_CASE("A hold point answered, but not as it should be, still holds") {
  Bench bench;
  bench.answer_up_to("diagnosis");
  bench.take(ChooseAnswer{"diagnosis", "actuator"});
  CHECK(bench.step("diagnosis") == "held");
  check_refused_because_of(bench, "customer-consent", "diagnosis");
  bench.take(ChooseAnswer{"diagnosis", "pack"});
  CHECK(bench.refusal(probe("diagnosis-reason")).empty());
  bench.answer_up_to("renew-list").take(CheckStep{"renew-list", false, "levers of the old generation"});
  check_refused_because_of(bench, "large-temperature", "renew-list");
  bench.take(Deviate{"renew-list", "the maker allows these levers"});
  CHECK(bench.refusal(DoStep{"splines-greased"}) == "hold_point");  // now by the shim
  CHECK(bench.error(DoStep{"splines-greased"})->message.arguments.back() == "large-gauge-fit");
}

TEST_CASE("Trials alone do not pass the hold point of a shim: one has to be chosen") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  bench.try_shim("large-gauge-fit", "1.65", Fit::tight).try_shim("large-gauge-fit", "1.60", Fit::snug);
  CHECK(bench.conclusion("large-gauge-fit") == "fit_shim");
  check_refused_because_of(bench, "large-shim-measured", "large-gauge-fit");
  bench.take(ChooseShim{"large-gauge-fit", "1.60", ""});
  CHECK(bench.refusal(probe("large-shim-measured")).empty());
  bench.try_shim("large-gauge-fit", "1.60", Fit::snug);  // something new known opens the choice again
  CHECK(bench.state.shims.count(Side::lower) == 0);
  check_refused_because_of(bench, "large-shim-measured", "large-gauge-fit");
}

TEST_CASE("A float that is off lets the other disc be measured, and nothing past it") {
  Bench bench;
  bench.answer_up_to("lower-float");
  check_refused_because_of(bench, "hub-in", "lower-float");
  bench.runs("lower-float", too_large);
  CHECK(bench.step("lower-float") == "held");
  bench.answer_up_to("lower-float").answer("hub-in").answer("hub-ring-new").answer("hub-ring-seated");
  bench.answer("upper-dial-set").answer("upper-float-temperature").answer("upper-float");
  check_refused_because_of(bench, "shafts-turned", "lower-float");
  check_refused_because_of(bench, "sign-technician", "lower-float");
  bench.take(Deviate{"lower-float", "accepted by the customer"});
  CHECK(bench.refusal(probe("shafts-turned")).empty());
}

TEST_CASE("A float that is measured again was measured: the steps to the other disc stay open, closing up does not") {
  for (const auto& lifted : {too_large, std::vector<std::string>{"0.55", "0.54", "0.56"}}) {
    Bench bench;
    bench.answer_up_to("lower-float").float_twice("lower-float", lifted);
    bench.take(BeginSeries{"lower-float", {}, SeriesReason::measure_again});
    CHECK(bench.step("lower-float") == "in_work");
    bench.answer("hub-in").answer("hub-ring-new").answer("hub-ring-seated").answer("upper-dial-set");
    bench.answer("upper-float-temperature").answer("upper-float");
    check_refused_because_of(bench, "shafts-turned", "lower-float");
    bench.take(EnterFloatRun{"lower-float", 1, "0", "0.55", "", "dial_gauge"});
    bench.take(BeginSeries{"lower-float", {2}, SeriesReason::seated_again});
    CHECK(bench.refusal(probe("upper-float")).empty());
    check_refused_because_of(bench, "shafts-turned", "lower-float");
    bench.take(BeginSeries{"lower-float", {}, SeriesReason::measure_again}).answer("lower-float");
    CHECK(bench.refusal(probe("shafts-turned")).empty());
  }
}

TEST_CASE("A float begun and never judged, or judged in an earlier assembly, is not measured yet") {
  Bench bench;
  bench.answer_up_to("lower-float").take(EnterFloatRun{"lower-float", 1, "0", "0.55", "", "dial_gauge"});
  check_refused_because_of(bench, "hub-in", "lower-float");
  bench.runs("lower-float", too_large).take(BeginAssembly{{}, "the ring was proud"});
  bench.answer_up_to("lower-float").take(EnterFloatRun{"lower-float", 1, "0", "0.55", "", "dial_gauge"});
  check_refused_because_of(bench, "hub-in", "lower-float");
}

TEST_CASE("Another hold point among the floats is not let through") {
  Bench bench;
  bench.answer_up_to("lower-float").runs("lower-float", too_large);
  check_refused_because_of(bench, "upper-float", "hub-ring-seated");
}

}  // namespace shimwright::job::test
