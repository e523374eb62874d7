#include <algorithm>
#include <cmath>

#include "advice_wording.h"
#include "desk.h"
#include "round.h"
#include "shimwright/job/judgement.h"
#include "shimwright/job/questions.h"
#include "shimwright/job/standing.h"
#include "tray_steps.h"

namespace shimwright::job {

namespace {

Result<TrayShim> shim_in_tray(const Desk& desk, const sheet::Step& step, const std::string& id) {
  const auto tray = tray_of(desk.state, step.its_side(), desk.context);
  const TrayShim* shim = shim_with_id(tray, id);
  if (shim == nullptr) {
    return refuse("unknown_shim", step.id,
                  SHIMWRIGHT_TEXT("job", "The tray of the {0} has no shim {1}: choose one of its sizes."),
                  {bearing_name(step.its_side()), id});
  }
  return *shim;
}

bool advised_before(const JobState& state, const sheet::Step& step) {
  const auto entries = round_entries(state, step);
  return std::any_of(entries.begin(), entries.end(),
                     [](const Entry* entry) { return std::holds_alternative<Advised>(entry->body); });
}

}  // namespace

Bodies decide_on(const Desk& desk, const TryShim& command) {
  const auto step = step_of_kind<sheet::GaugeFitStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  auto shim = shim_in_tray(desk, **step, command.shim);
  if (!shim) {
    return tl::make_unexpected(shim.error());
  }
  std::vector<EntryBody> bodies;
  if (!advised_before(desk.state, **step)) {  // which one was said to be tried first is part of the job
    auto first = with_advice(desk, **step, {});
    if (!first) {
      return first;
    }
    bodies = *std::move(first);
  }
  const std::int64_t u_nm = std::llround(shim->u_mm * 1e6);
  bodies.emplace_back(ShimTried{desk.at(**step), (*step)->its_side(), command.shim, command.fit, shim->thickness, u_nm,
                                desk.context.feel_nm});
  return with_advice(desk, **step, std::move(bodies));
}

namespace {

Result<std::optional<quantity::TypedNumber>> stamp_typed(const Desk& desk, const sheet::Step& step,
                                                         const sheet::DepthSpec& spec, const std::string& text) {
  if (is_blank(text)) {
    if (spec.stamp_used) {
      return refuse("stamp_missing", step.id + "/stamp",
                    SHIMWRIGHT_TEXT("job", "The stamp on the new pack is needed: 0 is a value, blank is not."));
    }
    return std::nullopt;
  }
  sheet::Channel channel;
  channel.id = "stamp";
  channel.signed_value = true;
  auto judged = judged_reading(desk, step, channel, {"stamp", text, ""});
  if (!judged) {
    return tl::make_unexpected(judged.error());
  }
  return judged->reading.number;
}

Result<std::vector<quantity::TypedNumber>> depths_typed(const sheet::Step& step, const sheet::DepthSpec& spec,
                                                        const std::vector<std::string>& texts) {
  std::vector<quantity::TypedNumber> readings;
  for (std::size_t at = 0; at < texts.size(); ++at) {
    auto number = number_typed(step.id + "/readings/" + std::to_string(at + 1), texts[at], quantity::Unit::millimetre);
    if (!number) {
      return tl::make_unexpected(number.error());
    }
    readings.push_back(*number);
  }
  if (static_cast<int>(readings.size()) < spec.places) {
    return refuse("depth_missing", step.id + "/readings",
                  SHIMWRIGHT_TEXT("job", "Depths at {0} places are needed, {1} are there: measure the others too."),
                  {std::to_string(spec.places), std::to_string(readings.size())});
  }
  return readings;
}

}  // namespace

Bodies decide_on(const Desk& desk, const EnterDepths& command) {
  const auto step = step_of_kind<sheet::DepthStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  const auto& spec = desk.state.sheets.spec->side((*step)->its_side()).depth;
  if (!spec) {
    return wrong_kind(**step);
  }
  auto readings = depths_typed(**step, *spec, command.readings);
  if (!readings) {
    return tl::make_unexpected(readings.error());
  }
  auto reference = number_typed(command.step + "/reference", command.reference, quantity::Unit::millimetre);
  if (!reference) {
    return tl::make_unexpected(reference.error());
  }
  auto stamp = stamp_typed(desk, **step, *spec, command.stamp);
  if (!stamp) {
    return tl::make_unexpected(stamp.error());
  }
  auto instrument =
      instrument_used(desk, command.step + "/instrument", command.instrument, sheet::InstrumentKind::depth_gauge);
  if (!instrument) {
    return tl::make_unexpected(instrument.error());
  }
  DepthsRead depths{desk.at(**step), (*step)->its_side(),   *std::move(readings), *reference,
                    *stamp,          *std::move(instrument)};
  return with_advice(desk, **step, {std::move(depths)});
}

namespace {

ChosenBy chosen_by(const sheet::Step& step, const Advised* advised, bool as_advised) {
  if (!as_advised) {
    return ChosenBy::person;
  }
  if (advised->at.step != step.id) {
    return ChosenBy::float_reading;
  }
  return std::holds_alternative<sheet::DepthStep>(step.body) ? ChosenBy::depth : ChosenBy::trials;
}

std::optional<int> chance_percent(const Desk& desk, const sheet::Step& step, const std::string& shim) {
  const auto judgement = judge(desk.state, step, desk.context).value_or(std::nullopt);
  if (!judgement || !judgement->answer.gauge_fit || !judgement->answer.gauge_fit->seat) {
    return std::nullopt;
  }
  for (const shim::ShimChance& each : judgement->answer.gauge_fit->seat->p_best) {
    if (each.shim == shim) {
      return static_cast<int>(std::lround(each.p * 100.0));
    }
  }
  return std::nullopt;
}

}  // namespace

Bodies decide_on(const Desk& desk, const ChooseShim& command) {
  const auto step = open_way_to(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  const bool finds_shim = std::holds_alternative<sheet::GaugeFitStep>((*step)->body) ||
                          std::holds_alternative<sheet::DepthStep>((*step)->body);
  if (!finds_shim) {
    return wrong_kind(**step);
  }
  auto shim = shim_in_tray(desk, **step, command.shim);
  if (!shim) {
    return tl::make_unexpected(shim.error());
  }
  const Advised* advised = standing_advice(desk.state, **step);
  const bool as_advised = advises(advised, command.shim);
  if (!as_advised && is_blank(command.reason)) {
    return refuse(
        "reason_missing", command.step,
        SHIMWRIGHT_TEXT("job", "{0} is not the shim that was advised: say why it is taken, or choose the advised one."),
        {command.shim});
  }
  ShimChosen chosen;
  chosen.at = desk.at(**step);
  chosen.side = (*step)->its_side();
  chosen.shim = shim->id;
  chosen.thickness = shim->thickness;
  chosen.u_mm = shim->u_mm;
  chosen.by = chosen_by(**step, advised, as_advised);
  if (std::holds_alternative<sheet::GaugeFitStep>((*step)->body)) {
    chosen.chance_percent = chance_percent(desk, **step, shim->id);
  }
  chosen.reason = command.reason;
  const auto tray = tray_of(desk.state, chosen.side, desk.context);
  if (auto far = far_from_old_shim(desk.state, chosen.side, shim->thickness, tray)) {
    chosen.questions.push_back(*std::move(far));
  }
  if (const auto* depths = latest<DepthsRead>(desk.state, command.step, desk.state.assembly); depths && depths->stamp) {
    if (auto differs = stamp_differs(desk.state, chosen.side, quantity::Length(depths->stamp->base))) {
      chosen.questions.push_back(*std::move(differs));
    }
  }
  return std::vector<EntryBody>{std::move(chosen)};
}

}  // namespace shimwright::job
