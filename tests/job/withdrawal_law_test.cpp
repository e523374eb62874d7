#include <algorithm>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "bench.h"
#include "shimwright/job/judgement.h"

/// Withdrawing an entry equals never having made it, but for the trace.
namespace shimwright::job::test {

namespace {

template <class Value>
Value one_of(std::vector<Value> values) {
  return values.at(*rc::gen::inRange<std::size_t>(0, values.size()));
}

Command gauge_command() {
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

Command float_command() {
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

JobState after(JobState state, const std::vector<Entry>& entries) {
  for (const Entry& entry : entries) {
    state = evolve(std::move(state), entry);
  }
  return state;
}

JobState random_job(JobState state, const Context& context, Command (*make)(), int commands) {
  for (int left = commands; left > 0; --left) {
    if (const auto entries = decide(state, make(), context)) {
      state = after(std::move(state), *entries);
    }
  }
  return state;
}

/// The same entries without those that no longer count.
JobState never_made(const JobState& state) {
  std::vector<Entry> left;
  for (const Entry* entry : state.live()) {
    left.push_back(*entry);
  }
  return fold(state.sheets, left);
}

bool stands_on(const Entry& advice, const StepRef& at, std::int64_t seq) {
  const auto* advised = std::get_if<Advised>(&advice.body);
  return advised != nullptr && advised->at.step == at.step && advice.seq > seq;
}

/// All that a withdrawal took with it is advice that stood on the entry.
void check_falls_with_it(const JobState& before, const JobState& withdrawn, std::int64_t seq) {
  const StepRef* at = step_of(before.entries.at(static_cast<std::size_t>(seq - 1)).body);
  for (const std::int64_t each : withdrawn.withdrawn) {
    if (before.withdrawn.count(each) == 0 && each != seq) {
      RC_ASSERT(at != nullptr);
      RC_ASSERT(stands_on(before.entries.at(static_cast<std::size_t>(each - 1)), *at, seq));
    }
  }
}

/// What is said of the step now is what would be said had the entry never been made.
void check_fresh_advice(const JobState& withdrawn, const JobState& never, const sheet::Step& step,
                        const std::vector<Entry>& entries, const Context& context) {
  const auto judged = judge(never, step, context);
  RC_ASSERT(judged.has_value());
  const auto* fresh = std::get_if<Advised>(&entries.back().body);
  RC_ASSERT((fresh != nullptr) == judged->has_value());
  if (fresh != nullptr) {
    RC_ASSERT(fresh->case_json == (*judged)->advised.case_json);
    RC_ASSERT(fresh->answer_json == (*judged)->advised.answer_json);
    RC_ASSERT(fresh->conclusion == (*judged)->advised.conclusion);
  } else {
    const auto name = name_of(withdrawn.step(step.id));
    RC_ASSERT(name == "open" || name == "in_work" || name == "deviation");
  }
}

std::vector<std::int64_t> answers_since(const JobState& job, std::int64_t from) {
  std::vector<std::int64_t> found;
  for (const Entry* entry : job.live()) {
    if (entry->seq >= from && step_of(entry->body) != nullptr && !std::holds_alternative<Advised>(entry->body)) {
      found.push_back(entry->seq);
    }
  }
  return found;
}

void withdraw_one(const JobState& job, const Context& context, std::int64_t from) {
  const auto seq = one_of(answers_since(job, from));
  const auto entries = decide(job, Withdraw{seq, "a slip"}, context);
  RC_PRE(entries.has_value());  // an open parking refuses it
  const JobState withdrawn = after(job, {entries->front()});
  RC_ASSERT(same_but_trace(withdrawn, never_made(withdrawn)));
  check_falls_with_it(job, withdrawn, seq);
  const EntryBody& body = job.entries.at(static_cast<std::size_t>(seq - 1)).body;
  const StepRef* at = step_of(body);
  const bool reading = std::holds_alternative<ShimTried>(body) || std::holds_alternative<FloatRun>(body);
  if (reading && at->assembly == job.assembly) {
    check_fresh_advice(withdrawn, never_made(withdrawn), *job.sheets.job->find(at->step), *entries, context);
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
