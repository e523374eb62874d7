#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "withdrawal.h"

/// Withdrawing an entry equals never having made it, but for the trace.
namespace shimwright::job::test {

namespace {

Command gauge_command(const JobState&) {
  const std::string step = "large-gauge-fit";
  switch (*rc::gen::inRange(0, 10)) {
    case 0:
      return ChooseShim{step, one_of<std::string>({"1.55", "1.60"}), "by feel"};
    case 1:
      return CheckStep{"large-bearing-seated", *rc::gen::arbitrary<bool>(), "tilted"};
    case 2:
      return EnterReadings{
          "large-temperature",
          {{one_of<std::string>({"box", "gauge"}), one_of<std::string>({"21", "35", "2100"}), "thermometer"}}};
    case 3:
      return Deviate{one_of<std::string>({step, "large-temperature"}), "no time"};
    case 4:
      return Confirm{"large-temperature", "hundredths_in_doubt", ""};
    case 5:
      return one_of<Command>({Park{"parts", ""}, TakeUp{}, HandOver{"RT", ""}});
    default:
      return TryShim{step, one_of<std::string>({"1.50", "1.55", "1.60", "1.65", "1.70"}),
                     one_of<Fit>({Fit::tight, Fit::snug, Fit::loose})};
  }
}

Command float_command(const JobState&) {
  const std::string step = one_of<std::string>({"lower-float", "lower-float", "lower-float-as-found"});
  switch (*rc::gen::inRange(0, 12)) {
    case 0:
      return BeginSeries{step, one_of<std::vector<int>>({{}, {1}, {2, 3}}),
                         one_of<SeriesReason>({SeriesReason::measure_again, SeriesReason::seated_again})};
    case 1:
      return Confirm{step, one_of<std::string>({"unit_in_doubt", "dial_reversed", "turn_missed"}), ""};
    case 2:
      return one_of<Command>({BeginAssembly{{Side::lower}, "off"}, Deviate{step, "as agreed"},
                              CheckStep{"lower-dial-set", true, ""}, CheckStep{"hub-in", true, ""}});
    default:
      return EnterFloatRun{step, *rc::gen::inRange(1, 4),
                           "0",  one_of<std::string>({"0.55", "0.57", "0.93", "1.55", "-0.55", "55"}),
                           "",   "dial_gauge"};
  }
}

}  // namespace

TEST_CASE("Withdrawing around shim trials equals never having made them") {
  Bench bench;
  bench.answer_up_to("large-temperature");
  const auto from = bench.last_seq() - 3;
  CHECK(rc::check([&] {
    withdraw_one(random_job(bench.state, bench.context, gauge_command, *rc::gen::inRange(1, 9)), bench.context, from);
  }));
}

TEST_CASE("Withdrawing around floats equals never having measured them") {
  Bench bench;
  bench.answer_up_to("lower-float");
  const auto from = bench.last_seq() - 1;
  CHECK(rc::check([&] {
    withdraw_one(random_job(bench.state, bench.context, float_command, *rc::gen::inRange(1, 14)), bench.context, from);
  }));
}

TEST_CASE("A spot whose only run is taken back has no float, and the step no advice") {
  Bench bench;
  bench.answer_up_to("lower-float").runs("lower-float", {"0.93", "0.90", "0.96"});
  CHECK(bench.step("lower-float") == "held");
  bench.take(Withdraw{bench.seq_of("lower-float", "float_run") - 2, "wrong spot"});
  CHECK(bench.step("lower-float") == "in_work");
  CHECK(latest<Advised>(bench.state, "lower-float") == nullptr);
}

TEST_CASE("A float as found with a run taken back is not measured any more") {
  Bench bench;
  bench.answer_up_to("lower-float-as-found").runs("lower-float-as-found", {"0.40", "0.41", "0.42"});
  CHECK(bench.step("lower-float-as-found") == "accepted");
  bench.take(Withdraw{bench.seq_of("lower-float-as-found", "float_run") - 1, "dial knocked"});
  CHECK(bench.step("lower-float-as-found") == "in_work");
}

TEST_CASE("A trial taken back after the choice opens the choice again") {
  Bench bench;
  bench.answer_up_to("large-shim-measured");
  bench.take(Withdraw{bench.seq_of("large-gauge-fit", "shim_tried"), "another shim was in hand"});
  CHECK(bench.step("large-gauge-fit") == "in_work");
  CHECK(bench.state.shims.count(Side::lower) == 0);
}

TEST_CASE("An answer taken back while the job lay still is open, not unproven") {
  Bench bench;
  bench.answer_up_to("bearings-seated");
  const auto laid = bench.seq_of("large-shim-laid", "checked");
  bench.take(Park{"a ring", ""}).take(TakeUp{});
  CHECK(bench.step("large-shim-laid") == "unproven");
  bench.take(Withdraw{laid, "was not laid at all"});
  CHECK(bench.step("large-shim-laid") == "open");
}

}  // namespace shimwright::job::test
