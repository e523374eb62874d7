#include "desk.h"

#include <algorithm>

#include "shimwright/job/evolve.h"
#include "shimwright/job/judgement.h"

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

std::string instrument_word(sheet::InstrumentKind kind) {
  switch (kind) {
    case sheet::InstrumentKind::dial_gauge:
      return SHIMWRIGHT_TEXT("word", "dial gauge");
    case sheet::InstrumentKind::depth_gauge:
      return SHIMWRIGHT_TEXT("word", "depth gauge");
    case sheet::InstrumentKind::micrometer:
      return SHIMWRIGHT_TEXT("word", "micrometer");
    case sheet::InstrumentKind::torque_wrench:
      return SHIMWRIGHT_TEXT("word", "torque wrench");
    case sheet::InstrumentKind::thermometer:
      return SHIMWRIGHT_TEXT("word", "thermometer");
    case sheet::InstrumentKind::multimeter:
      return SHIMWRIGHT_TEXT("word", "multimeter");
    case sheet::InstrumentKind::pressure_gauge:
      return SHIMWRIGHT_TEXT("word", "pressure gauge");
    case sheet::InstrumentKind::scale:
      return SHIMWRIGHT_TEXT("word", "scale");
  }
  return "";
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

namespace {

/// The calendar day of a moment where it was (ISO 8601), by days since 1970 (algorithm of the proleptic Gregorian
/// calendar in 400-year eras).
std::string iso_day(const Moment& moment) {
  constexpr std::int64_t minute_ms = 60'000;
  constexpr std::int64_t day_ms = 1'440 * minute_ms;
  const std::int64_t local = moment.at_ms + moment.offset_min * minute_ms;
  const std::int64_t days = (local >= 0 ? local : local - (day_ms - 1)) / day_ms + 719'468;
  const std::int64_t era = (days >= 0 ? days : days - 146'096) / 146'097;
  const std::int64_t day_of_era = days - era * 146'097;
  const std::int64_t year_of_era = (day_of_era - day_of_era / 1'460 + day_of_era / 36'524 - day_of_era / 146'096) / 365;
  const std::int64_t day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const std::int64_t shifted_month = (5 * day_of_year + 2) / 153;
  const std::int64_t day = day_of_year - (153 * shifted_month + 2) / 5 + 1;
  const std::int64_t month = shifted_month < 10 ? shifted_month + 3 : shifted_month - 9;
  const std::int64_t year = year_of_era + era * 400 + (month <= 2 ? 1 : 0);
  const auto two = [](std::int64_t number) { return (number < 10 ? "0" : "") + std::to_string(number); };
  return std::to_string(year) + "-" + two(month) + "-" + two(day);
}

}  // namespace

bool calibration_overdue(const Instrument& instrument, const Moment& now) {
  return instrument.calibrated_to && *instrument.calibrated_to < iso_day(now);
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
  return InstrumentUsed{used.id, used.name, used.resolution, used.permissible_error, used.calibrated_to, overdue};
}

Bodies with_advice(const Desk& desk, const sheet::Step& step, std::vector<EntryBody> bodies) {
  JobState after = desk.state;
  for (const EntryBody& body : bodies) {
    const Entry entry{after.next_seq(), desk.context.now, desk.context.person, body};
    after = evolve(std::move(after), entry);
  }
  auto judgement = judge(after, step, desk.context);
  if (!judgement) {
    Error error = judgement.error();
    error.place = step.id + error.place;
    return tl::make_unexpected(std::move(error));
  }
  if (std::optional<Judgement>& found = *judgement) {
    bodies.emplace_back(std::move(found->advised));
  }
  return bodies;
}

}  // namespace shimwright::job
