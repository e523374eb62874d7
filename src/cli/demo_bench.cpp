#include "demo_bench.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "shimwright/job/judgement.h"

namespace shimwright::cli {

using quantity::Length;
using quantity::millimetre_text;

namespace {

/// As the display of the instrument has it: to the hundredth.
std::string shown(double micrometres) {
  return millimetre_text(Length(std::llround(micrometres / 10.0) * 10), 2);
}

std::string instrument_id(const job::Context& context, sheet::InstrumentKind kind) {
  for (const job::Instrument& each : context.instruments) {
    if (each.kind == kind) {
      return each.id;
    }
  }
  return {};
}

template <class Payload>
int count_of(const job::JobState& state, std::string_view step) {
  int count = 0;
  for (const job::Entry* entry : state.live(step)) {
    count += std::holds_alternative<Payload>(entry->body) ? 1 : 0;
  }
  return count;
}

std::int64_t thickness_of(const job::JobState& state, job::Side side, const job::Context& context) {
  const auto chosen = state.shims.find(side);
  for (const job::TrayShim& each : job::tray_of(state, side, context)) {
    if (chosen != state.shims.end() && each.id == chosen->second) {
      return each.thickness.count();
    }
  }
  return 0;
}

std::string nearest_to(std::int64_t thickness, const std::vector<job::TrayShim>& tray) {
  const auto nearest = std::min_element(tray.begin(), tray.end(), [&](const auto& one, const auto& other) {
    return std::abs(one.thickness.count() - thickness) < std::abs(other.thickness.count() - thickness);
  });
  return nearest->id;
}

/// Well within a limit; 0 where there is none of that name.
std::int64_t middle_of(const sheet::SpecSheet& spec, const std::string& limit_name) {
  const auto limit = spec.limits.find(limit_name);
  if (limit == spec.limits.end()) {
    return 0;
  }
  const auto& [least, most] = std::pair{limit->second.least, limit->second.most};
  if (least && most) {
    return (*least + *most) / 2;
  }
  return most ? *most * 8 / 10 : least.value_or(0) * 12 / 10;
}

/// Once more is tried, twice is enough.
constexpr int most_teach_ins = 2;

/// A step that is gone on with where it is held: by what the engine says, or by trying again.
bool goes_on(const sheet::Step& step, const job::JobState& state) {
  return std::holds_alternative<sheet::FloatStep>(step.body) ||
         std::holds_alternative<sheet::GaugeFitStep>(step.body) ||
         std::holds_alternative<sheet::DepthStep>(step.body) ||
         (std::holds_alternative<sheet::TeachInStep>(step.body) &&
          count_of<job::TeachInTried>(state, step.id) < most_teach_ins);
}

bool seated_again(const job::JobState& state, const sheet::Step& step) {
  const auto* begun = job::latest<job::SeriesBegun>(state, step.id, state.assembly);
  return begun != nullptr && begun->reason == job::SeriesReason::seated_again;
}

}  // namespace

TrueGearbox left_by(const job::JobState& state, const TrueGearbox& gearbox, const job::Context& context) {
  return left_with(gearbox, thickness_of(state, job::Side::lower, context),
                   thickness_of(state, job::Side::upper, context));
}

std::optional<job::Command> DemoTechnician::next(const job::JobState& state, const job::Context& context) {
  const sheet::Step* step = state.next_step();
  if (step == nullptr) {
    return std::nullopt;
  }
  return answer(*step, state, context);
}

job::Command DemoTechnician::answer(const sheet::Step& step, const job::JobState& state, const job::Context& context) {
  const auto* held = std::get_if<job::Held>(&state.step(step.id));
  if (held != nullptr && (!held->questions.empty() || !goes_on(step, state))) {
    return answer_held(step, *held);
  }
  if (std::holds_alternative<sheet::DoStep>(step.body)) {
    return job::DoStep{step.id};
  }
  if (std::holds_alternative<sheet::CheckStep>(step.body)) {
    return job::CheckStep{step.id, true, ""};
  }
  if (const auto* choose = std::get_if<sheet::ChooseStep>(&step.body)) {
    for (const sheet::Choice& each : choose->choices) {
      if (each.accepted) {
        return job::ChooseAnswer{step.id, each.id};
      }
    }
  }
  if (const auto* part = std::get_if<sheet::PartStep>(&step.body)) {
    return answer_part(step, *part);
  }
  if (std::holds_alternative<sheet::TextStep>(step.body)) {
    return answer_text(step, state);
  }
  if (std::holds_alternative<sheet::PhotoStep>(step.body)) {
    return answer_photo(step, state);
  }
  if (std::holds_alternative<sheet::SignStep>(step.body)) {
    return job::Sign{step.id};
  }
  if (std::holds_alternative<sheet::GaugeFitStep>(step.body)) {
    return answer_trial(step, state, context);
  }
  if (std::holds_alternative<sheet::DepthStep>(step.body)) {
    return answer_depth(step, state, context);
  }
  if (std::holds_alternative<sheet::FloatStep>(step.body)) {
    return answer_float(step, state, context);
  }
  if (std::holds_alternative<sheet::TeachInStep>(step.body)) {
    return answer_teach_in(step, state);
  }
  return answer_readings(step, state, context);
}

job::Command DemoTechnician::answer_held(const sheet::Step& step, const job::Held& held) const {
  if (!held.questions.empty()) {
    return job::Confirm{step.id, held.questions.front().code, "looked at again, it is so"};
  }
  const bool teach_in = std::holds_alternative<sheet::TeachInStep>(step.body);
  return job::Deviate{step.id, teach_in ? "broken off twice, to be taught in when the customer comes back"
                                        : "accepted after a second look"};
}

job::Command DemoTechnician::answer_part(const sheet::Step& step, const sheet::PartStep& part) const {
  job::FitParts fit{step.id, {}};
  for (const std::string& each : part.parts) {
    fit.parts.push_back({each, "", 1, each == "clutch-pack" ? gearbox_.pack_serial : ""});
  }
  return fit;
}

job::Command DemoTechnician::answer_text(const sheet::Step& step, const job::JobState& state) const {
  job::WriteText write{step.id, "as expected"};
  if (step.role == sheet::Role::old_pack_serial) {
    write.text = gearbox_.old_pack_serial;
  } else if (step.role == sheet::Role::new_pack_serial) {
    write.text = gearbox_.pack_serial;
  } else if (step.id == "gearbox-identity" && state.opened && state.opened->gearbox_serial) {
    write.text = *state.opened->gearbox_serial;
  }
  return write;
}

job::Command DemoTechnician::answer_photo(const sheet::Step& step, const job::JobState& state) {
  std::vector<job::AddPhoto> fitting;
  std::copy_if(photos_.begin(), photos_.end(), std::back_inserter(fitting),
               [&](const job::AddPhoto& each) { return each.step == step.id; });
  const auto taken = static_cast<std::size_t>(count_of<job::PhotoTaken>(state, step.id));
  if (fitting.empty() || (taken == 0 && dice_.one_in(20))) {
    return job::Deviate{step.id, "no camera at the bench"};
  }
  return fitting[taken % fitting.size()];
}

std::string DemoTechnician::reading_text(const sheet::Step& step, const sheet::Channel& channel,
                                         const job::JobState& state) {
  if (step.role == sheet::Role::old_shim && step.side) {
    return millimetre_text(Length(side(*step.side).old_shim + dice_.between(-2, 2)), 3);
  }
  if (step.role == sheet::Role::stamp && step.side) {
    const std::int64_t stamp = side(*step.side).stamp;
    return (stamp > 0 ? "+" : "") + millimetre_text(Length(stamp), 2);
  }
  if (channel.unit == quantity::Unit::piece) {
    return std::to_string(gearbox_.plugs);
  }
  if (step.id == "odometer" && state.opened && state.opened->odometer) {
    return quantity::digits_of(*state.opened->odometer);
  }
  const sheet::SpecSheet& spec = *state.sheets.spec;
  const bool litres = channel.unit == quantity::Unit::litre;
  std::int64_t middle = middle_of(spec, channel.limit.value_or(""));
  if (middle == 0 && litres) {
    middle = middle_of(spec, "gear_oil") * dice_.between(90, 97) / 100;  // less comes out than went in
  }
  const std::int64_t drawn = middle + std::llround(dice_.bell(static_cast<double>(std::abs(middle)) * 0.01));
  const std::int64_t finest = litres ? 10'000 : 100;
  quantity::TypedNumber number{drawn - drawn % finest, litres ? 2 : 1, channel.unit};
  if (middle == 0) {
    number.base = 9'000 + dice_.between(0, 9) * 100;
  }
  return quantity::digits_of(number);
}

job::Command DemoTechnician::answer_readings(const sheet::Step& step, const job::JobState& state,
                                             const job::Context& context) {
  if (const auto* peak = std::get_if<sheet::PeakStep>(&step.body)) {
    const std::string instrument =
        peak->channel.instrument ? instrument_id(context, *peak->channel.instrument) : std::string();
    return job::EnterPeak{step.id, {peak->channel.id, reading_text(step, peak->channel, state), instrument}};
  }
  job::EnterReadings readings{step.id, {}};
  for (const sheet::Channel& each : std::get<sheet::ReadStep>(step.body).channels) {
    const std::string instrument = each.instrument ? instrument_id(context, *each.instrument) : std::string();
    std::string text = reading_text(step, each, state);
    if (step.role == sheet::Role::new_shim && step.side) {
      text = millimetre_text(Length(thickness_of(state, *step.side, context) + dice_.between(-2, 2)), 3);
    }
    readings.readings.push_back({each.id, std::move(text), instrument});
  }
  return readings;
}

job::Command DemoTechnician::answer_trial(const sheet::Step& step, const job::JobState& state,
                                          const job::Context& context) {
  const TrueSide& truth = side(step.its_side());
  const std::int64_t seat = truth.seat + (state.assembly == 1 ? truth.first_seat_error : 0);
  const auto judgement = job::judge(state, step, context).value_or(std::nullopt);
  const job::Advised* advised = judgement ? &judgement->advised : nullptr;
  if (advised == nullptr || !advised->shim) {
    const std::string nearest = nearest_to(seat, job::tray_of(state, step.its_side(), context));
    return job::ChooseShim{step.id, nearest, "the trials do not settle, the nearest there is"};
  }
  if (advised->conclusion == job::Conclusion::fit_shim) {
    return job::ChooseShim{step.id, *advised->shim, ""};
  }
  double thickness = 0;
  for (const job::TrayShim& each : job::tray_of(state, step.its_side(), context)) {
    thickness = each.id == *advised->shim ? static_cast<double>(each.thickness.count()) : thickness;
  }
  const auto& gauge_fit = state.sheets.spec->side(step.its_side()).gauge_fit;
  const double band = gauge_fit ? static_cast<double>(gauge_fit->snug_band.count()) : 0.0;
  const double proud = thickness + dice_.bell(4.0) - static_cast<double>(seat);
  const job::Fit fit = proud > 0 ? job::Fit::tight : proud > -band ? job::Fit::snug : job::Fit::loose;
  return job::TryShim{step.id, *advised->shim, fit};
}

job::Command DemoTechnician::answer_depth(const sheet::Step& step, const job::JobState& state,
                                          const job::Context& context) {
  const auto spec = state.sheets.spec->side(step.its_side()).depth.value_or(sheet::DepthSpec{});
  const auto* depths = job::latest<job::DepthsRead>(state, step.id, state.assembly);
  const auto judgement = job::judge(state, step, context).value_or(std::nullopt);
  if (depths != nullptr && judgement && judgement->advised.shim) {
    const bool plain = judgement->advised.conclusion == job::Conclusion::fit_shim;
    return job::ChooseShim{step.id, *judgement->advised.shim, plain ? "" : "nearest to the sum, measured twice"};
  }
  const TrueSide& truth = side(step.its_side());
  double depth = static_cast<double>(truth.seat - truth.stamp) + 2'900.0 +
                 static_cast<double>(state.assembly == 1 ? truth.first_seat_error : 0);
  for (const sheet::DepthConstant& each : spec.constants) {
    depth -= static_cast<double>(each.add.count());
  }
  job::EnterDepths enter{step.id, {}, "2.90", "", instrument_id(context, sheet::InstrumentKind::depth_gauge)};
  for (int place = 0; place < spec.places; ++place) {
    enter.readings.push_back(shown(depth + dice_.bell(10.0)));
  }
  enter.stamp = (truth.stamp > 0 ? "+" : "") + millimetre_text(Length(truth.stamp), 2);
  return enter;
}

job::Command DemoTechnician::answer_float(const sheet::Step& step, const job::JobState& state,
                                          const job::Context& context) {
  const TrueSide& truth = side(step.its_side());
  const bool as_found = std::get<sheet::FloatStep>(step.body).as_found;
  if (as_found && !state.sheets.spec->side(step.its_side()).disc_float.as_found) {
    return job::SayNotRequired{step.id, "not measured, because the method has no float as found"};
  }
  const auto judgement = job::judge(state, step, context).value_or(std::nullopt);
  const bool held = std::holds_alternative<job::Held>(state.step(step.id));
  if (held && judgement) {
    const job::Advised& advised = judgement->advised;
    if (advised.conclusion == job::Conclusion::change_shim || advised.conclusion == job::Conclusion::step_shim) {
      return job::BeginAssembly{
          {step.its_side()},
          seated_again(state, step) ? "float off, the same after seating again" : "float off, another shim advised"};
    }
    if (advised.conclusion == job::Conclusion::seat_again &&
        count_of<job::SeriesBegun>(state, step.id) < 2 * state.assembly) {
      return job::BeginSeries{step.id, {}, job::SeriesReason::seated_again};
    }
    if (advised.conclusion != job::Conclusion::measure_again || job::present_runs(state, step).front().size() > 4) {
      return job::Deviate{step.id, "accepted by the foreman after the customer was told"};
    }
  }
  const auto runs = job::present_runs(state, step);
  std::size_t spot = 0;
  for (std::size_t each = 1; each < runs.size(); ++each) {
    spot = runs[each].size() < runs[spot].size() ? each : spot;
  }
  const double middle_float =
      as_found ? truth.found_float : truth.float_with(thickness_of(state, step.its_side(), context));
  const double lift = middle_float + 12.0 * (static_cast<double>(spot) - 1.0) + dice_.bell(4.0);
  return job::EnterFloatRun{step.id, static_cast<int>(spot) + 1,
                            "0.00",  shown(lift),
                            "0.00",  instrument_id(context, sheet::InstrumentKind::dial_gauge)};
}

job::Command DemoTechnician::answer_teach_in(const sheet::Step& step, const job::JobState& state) {
  const bool first = count_of<job::TeachInTried>(state, step.id) == 0;
  if (dice_.one_in(first ? 6 : 25)) {
    return job::TryTeachIn{step.id, false, {}, "C-17", "supply voltage fell during the run"};
  }
  job::TryTeachIn tried{step.id, true, {}, "", ""};
  for (const sheet::Channel& each : std::get<sheet::TeachInStep>(step.body).channels) {
    tried.values.push_back({each.id, reading_text(step, each, state), reading_text(step, each, state)});
  }
  return tried;
}

}  // namespace shimwright::cli
