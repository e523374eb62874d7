#include "desk.h"

#include <algorithm>

#include "judge_float.h"
#include "shimwright/job/evolve.h"

namespace shimwright::job {

std::string title_of(const sheet::Step& step) {
  return step.title.in_english();
}

bool is_blank(std::string_view text) {
  return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

Result<const sheet::Step*> open_way_to(const Desk& desk, const std::string& step_id) {
  const sheet::Step* step = desk.state.sheets.job->find(step_id);
  if (step == nullptr) {
    return refuse("unknown_step", step_id,
                  SHIMWRIGHT_TEXT("job", "The job sheet has no such step: look at its list of steps."));
  }
  if (std::holds_alternative<NotAsked>(desk.state.step(step_id))) {
    return refuse(
        "not_asked", step_id,
        SHIMWRIGHT_TEXT("job", "“{0}” is not asked on this gearbox: its spec sheet finds the shim another way."),
        {title_of(*step)});
  }
  if (const sheet::Step* hold = desk.state.hold_point_before(step_id)) {
    return refuse("hold_point", step_id,
                  SHIMWRIGHT_TEXT("job", "“{0}” comes first: answer it, or go on with a reason there."),
                  {title_of(*hold), hold->id});  // the id leads programs to the step, people read the title
  }
  return step;
}

namespace {

/// A visitor: one phrase a kind of step.
struct AnswerWords {
  std::string operator()(const sheet::DoStep&) const { return SHIMWRIGHT_TEXT("word", "“done”"); }
  std::string operator()(const sheet::CheckStep&) const { return SHIMWRIGHT_TEXT("word", "“in order” or a finding"); }
  std::string operator()(const sheet::ChooseStep&) const { return SHIMWRIGHT_TEXT("word", "one of its choices"); }
  std::string operator()(const sheet::ReadStep&) const { return SHIMWRIGHT_TEXT("word", "readings"); }
  std::string operator()(const sheet::PeakStep&) const { return SHIMWRIGHT_TEXT("word", "the highest reading"); }
  std::string operator()(const sheet::PartStep&) const { return SHIMWRIGHT_TEXT("word", "the parts fitted"); }
  std::string operator()(const sheet::PhotoStep&) const { return SHIMWRIGHT_TEXT("word", "photos"); }
  std::string operator()(const sheet::TextStep&) const { return SHIMWRIGHT_TEXT("word", "words"); }
  std::string operator()(const sheet::GaugeFitStep&) const { return SHIMWRIGHT_TEXT("word", "trials with the gauge"); }
  std::string operator()(const sheet::DepthStep&) const { return SHIMWRIGHT_TEXT("word", "depths"); }
  std::string operator()(const sheet::FloatStep&) const { return SHIMWRIGHT_TEXT("word", "lifts at its spots"); }
  std::string operator()(const sheet::TeachInStep&) const { return SHIMWRIGHT_TEXT("word", "a teach-in"); }
  std::string operator()(const sheet::SignStep&) const { return SHIMWRIGHT_TEXT("word", "a signature"); }
};

}  // namespace

std::string answer_words(const sheet::StepBody& body) {
  return std::visit(AnswerWords{}, body);
}

tl::unexpected<Error> wrong_kind(const sheet::Step& step) {
  return refuse("wrong_kind", step.id, SHIMWRIGHT_TEXT("job", "“{0}” is answered with {1}: answer it so."),
                {title_of(step), answer_words(step.body)});
}

Result<std::string> reason_given(const std::string& place, const std::string& reason) {
  if (is_blank(reason)) {
    return refuse("reason_missing", place, SHIMWRIGHT_TEXT("job", "A reason is needed here: say it in a few words."));
  }
  return reason;
}

Result<quantity::TypedNumber> number_typed(const std::string& place, const std::string& text, quantity::Unit unit) {
  auto number = quantity::read_number(text, unit);
  if (!number) {
    Error error = number.error();
    error.place = place;
    return tl::make_unexpected(std::move(error));
  }
  return number;
}

Result<InstrumentUsed> instrument_used(const Desk& desk, const std::string& place, const std::string& id,
                                       sheet::InstrumentKind kind) {
  const auto& known = desk.context.instruments;
  const auto found = std::find_if(known.begin(), known.end(), [&](const Instrument& each) { return each.id == id; });
  if (found == known.end()) {
    return refuse("unknown_instrument", place,
                  SHIMWRIGHT_TEXT("job", "Say which instrument read this: a {0} of the workshop's list."),
                  {instrument_word(kind)});
  }
  if (found->kind != kind) {
    return refuse("wrong_instrument", place,
                  SHIMWRIGHT_TEXT("job", "{0} is a {1}, and this is read with a {2}: choose another."),
                  {found->name, instrument_word(found->kind), instrument_word(kind)});
  }
  const Instrument& used = *found;
  const bool overdue = calibration_overdue(used, desk.context.now);
  return InstrumentUsed{used.id, used.name,          used.resolution,   used.permissible_error, used.calibrated_to,
                        overdue, used.calibrated_on, used.repeatability};
}

Bodies with_advice(const Desk& desk, const sheet::Step& step, std::vector<EntryBody> bodies) {
  JobState after = desk.state;
  for (const EntryBody& body : bodies) {
    const Entry entry{after.next_seq(), desk.context.now, desk.context.person, body};
    after = evolve(std::move(after), entry);
  }
  auto judgement = judge(after, step, desk.context);
  if (!judgement) {
    bodies.emplace_back(not_judged(after, step, judgement.error().message));
  } else if (std::optional<Judgement>& found = *judgement) {
    bodies.emplace_back(std::move(found->advised));
  }
  return bodies;
}

}  // namespace shimwright::job
