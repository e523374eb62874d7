#include "withdrawal.h"

#include "shimwright/job/judgement.h"

namespace shimwright::job::test {

namespace {

JobState after(JobState state, const std::vector<Entry>& entries) {
  for (const Entry& entry : entries) {
    state = evolve(std::move(state), entry);
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

}  // namespace

JobState random_job(JobState state, const Context& context, const std::function<Command(const JobState&)>& make,
                    int commands) {
  for (int left = commands; left > 0; --left) {
    if (const auto entries = decide(state, make(state), context)) {
      state = after(std::move(state), *entries);
    }
  }
  return state;
}

void withdraw_one(const JobState& job, const Context& context, std::int64_t from) {
  const auto answers = answers_since(job, from);
  RC_PRE(!answers.empty());
  const auto seq = one_of(answers);
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

}  // namespace shimwright::job::test
