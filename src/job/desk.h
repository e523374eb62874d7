#pragma once

#include <string>
#include <vector>

#include "shimwright/job/command.h"
#include "shimwright/job/context.h"
#include "shimwright/job/state.h"

namespace shimwright::job {

using Bodies = Result<std::vector<EntryBody>>;

/// What a command is decided on: the job and what is known beyond it.
struct Desk {
  const JobState& state;
  const Context& context;

  [[nodiscard]] StepRef at(const sheet::Step& step) const { return {step.id, state.assembly}; }
};

[[nodiscard]] std::string title_of(const sheet::Step& step);
[[nodiscard]] bool is_blank(std::string_view text);

/// The step, if it is on the sheet, asked for in this job and not behind an open hold point. Codes: `unknown_step`,
/// `not_asked`, `hold_point`.
[[nodiscard]] Result<const sheet::Step*> open_way_to(const Desk& desk, const std::string& step_id);

/// The same, and the step is of the kind the command answers. Code: `wrong_kind`.
template <class Body>
[[nodiscard]] Result<const sheet::Step*> step_of_kind(const Desk& desk, const std::string& step_id);

/// What a step of that kind is answered with: `readings`, `a photo`, …
[[nodiscard]] std::string answer_words(const sheet::StepBody& body);

[[nodiscard]] tl::unexpected<Error> wrong_kind(const sheet::Step& step);

/// The reason, if there is one. Code: `reason_missing`.
[[nodiscard]] Result<std::string> reason_given(const std::string& place, const std::string& reason);

/// A number typed for a field, its place in a refusal. Codes: those of the reader.
[[nodiscard]] Result<quantity::TypedNumber> number_typed(const std::string& place, const std::string& text,
                                                         quantity::Unit unit);

/// The instrument of that id as it is today. Codes: `unknown_instrument`, `wrong_instrument`.
[[nodiscard]] Result<InstrumentUsed> instrument_used(const Desk& desk, const std::string& place, const std::string& id,
                                                     sheet::InstrumentKind kind);

/// One reading of a channel, judged by its limit.
struct JudgedReading {
  Reading reading;
  std::vector<Question> questions;
};
[[nodiscard]] Result<JudgedReading> judged_reading(const Desk& desk, const sheet::Step& step,
                                                   const sheet::Channel& channel, const TypedReading& typed);

/// The bodies, and the advice that follows where the step is judged by the engine and nothing is missing. What the
/// engine cannot reckon with keeps nothing from being entered: the advice says so.
[[nodiscard]] Bodies with_advice(const Desk& desk, const sheet::Step& step, std::vector<EntryBody> bodies);

[[nodiscard]] Bodies decide_on(const Desk& desk, const OpenJob& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const DoStep& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const CheckStep& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const ChooseAnswer& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const EnterReadings& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const EnterPeak& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const FitParts& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const AddPhoto& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const WriteText& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const TryShim& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const EnterDepths& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const EnterFloatRun& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const BeginSeries& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const Confirm& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const ChooseShim& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const TryTeachIn& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const Sign& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const Deviate& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const SayNotRequired& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const Withdraw& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const Note& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const Park& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const TakeUp& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const HandOver& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const BeginAssembly& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const SealJob& command);
[[nodiscard]] Bodies decide_on(const Desk& desk, const AddAddendum& command);

template <class Body>
Result<const sheet::Step*> step_of_kind(const Desk& desk, const std::string& step_id) {
  auto step = open_way_to(desk, step_id);
  if (step && !std::holds_alternative<Body>((*step)->body)) {
    return wrong_kind(**step);
  }
  return step;
}

}  // namespace shimwright::job
