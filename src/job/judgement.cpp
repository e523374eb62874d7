#include "shimwright/job/judgement.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "advice_wording.h"
#include "judge_float.h"
#include "round.h"
#include "shimwright/job/standing.h"
#include "tray_steps.h"

namespace shimwright::job {

namespace {

template <class Body>
const sheet::Step* step_of_side(const JobState& state, Side side) {
  for (const sheet::Step* step : state.sheets.job->steps()) {
    if (step->side == side && std::holds_alternative<Body>(step->body)) {
      return step;
    }
  }
  return nullptr;
}

Conclusion conclusion_of(shim::GaugeFitState state) {
  switch (state) {
    case shim::GaugeFitState::try_shim:
      return Conclusion::try_shim;
    case shim::GaugeFitState::settled:
      return Conclusion::fit_shim;
    case shim::GaugeFitState::tray_too_thick:
      return Conclusion::tray_too_thick;
    case shim::GaugeFitState::tray_too_thin:
      return Conclusion::tray_too_thin;
    case shim::GaugeFitState::contradiction:
      return Conclusion::contradiction;
  }
  return Conclusion::contradiction;
}

Conclusion conclusion_of(shim::DepthState state) {
  switch (state) {
    case shim::DepthState::tilted:
      return Conclusion::tilted;
    case shim::DepthState::impossible:
      return Conclusion::impossible;
    case shim::DepthState::outside:
      return Conclusion::outside;
    case shim::DepthState::far:
      return Conclusion::far;
    case shim::DepthState::edge:
      return Conclusion::edge;
    case shim::DepthState::shim:
      return Conclusion::fit_shim;
  }
  return Conclusion::impossible;
}

Result<std::optional<Judgement>> judge_gauge_fit(const JobState& state, const sheet::Step& step,
                                                 const Context& context) {
  const auto today = tray_of(state, step.its_side(), context);
  auto tray = today;
  auto gauge_fit = gauge_fit_case(state, step.its_side(), tray);
  if (!gauge_fit) {
    return std::nullopt;
  }
  Judgement judgement;
  judgement.engine_case.tray = engine_tray(tray);
  judgement.engine_case.gauge_fit = std::move(gauge_fit);
  const auto checked = shim::checked(judgement.engine_case);
  if (!checked) {
    return tl::make_unexpected(checked.error());
  }
  judgement.answer = shim::advise(*checked);
  if (!judgement.answer.gauge_fit) {
    return std::nullopt;
  }
  const shim::GaugeFitAnswer& answer = *judgement.answer.gauge_fit;
  judgement.advised = advised_on(state, step, judgement.engine_case, judgement.answer);
  judgement.advised.conclusion = conclusion_of(answer.state);
  judgement.advised.shim = answer.shim;
  judgement.advised.reason = gauge_fit_reason(answer);
  say_where_gone(judgement.advised, today);
  return judgement;
}

/// Ranges of the spec sheet name shims of its own tray; one that is not in the tray today is put back into `tray`.
std::string shim_of_bin(const std::string& id, const std::vector<sheet::SpecShim>& shims, std::vector<TrayShim>& tray) {
  const auto found = std::find_if(shims.begin(), shims.end(), [&](const auto& each) { return each.id == id; });
  return found == shims.end() ? id : keep_in_tray(tray, {found->id, found->thickness, found->u_mm, std::nullopt});
}

/// What a depth is known to with a gauge the workshop tested: GUM 5.1.2 over its rounding, repeatability and
/// permissible error. 0 for one that was not tested: then the sheet's word stands alone.
double tested_u_mm(const std::optional<InstrumentUsed>& gauge) {
  if (!gauge || !gauge->repeatability) {
    return 0.0;
  }
  return std::hypot(quantity::in_millimetres(quantity::Length(gauge->resolution)) / std::sqrt(12.0),
                    quantity::in_millimetres(quantity::Length(gauge->permissible_error)) / std::sqrt(3.0),
                    static_cast<double>(*gauge->repeatability) / 1e6);
}

shim::DepthCase depth_case(const sheet::DepthSpec& spec, const DepthsRead& depths,
                           const std::vector<sheet::SpecShim>& shims, std::vector<TrayShim>& tray) {
  shim::DepthCase depth;
  for (const quantity::TypedNumber& each : depths.readings) {
    depth.readings.emplace_back(each.base);
  }
  depth.reference = quantity::Length(depths.reference.base);
  for (const sheet::DepthConstant& each : spec.constants) {
    depth.constants.push_back({each.name, each.add});
  }
  depth.stamp_used = spec.stamp_used;
  if (depths.stamp) {
    depth.stamp = quantity::Length(depths.stamp->base);
  }
  depth.max_spread = spec.max_spread;
  depth.u_reading_mm = std::max(spec.u_reading_mm, tested_u_mm(depths.instrument));
  if (spec.bins) {
    depth.bins.emplace();
    for (const sheet::DepthBin& each : *spec.bins) {
      depth.bins->push_back({each.from, each.to, shim_of_bin(each.shim, shims, tray)});
    }
  }
  return depth;
}

Result<std::optional<Judgement>> judge_depth(const JobState& state, const sheet::Step& step, const Context& context) {
  const auto& spec = state.sheets.spec->side(step.its_side()).depth;
  const DepthsRead* depths = present_depths(state, step);
  if (depths == nullptr || !spec) {
    return std::nullopt;
  }
  const auto today = tray_of(state, step.its_side(), context);
  auto tray = today;
  Judgement judgement;
  const shim::DepthCase depth = depth_case(*spec, *depths, state.sheets.spec->side(step.its_side()).tray, tray);
  judgement.engine_case.depth = depth;
  judgement.engine_case.tray = engine_tray(tray);
  const auto checked = shim::checked(judgement.engine_case);
  if (!checked) {
    return tl::make_unexpected(checked.error());
  }
  judgement.answer = shim::advise(*checked);
  if (!judgement.answer.depth) {
    return std::nullopt;
  }
  const shim::DepthAnswer& answer = *judgement.answer.depth;
  judgement.advised = advised_on(state, step, judgement.engine_case, judgement.answer);
  judgement.advised.conclusion = conclusion_of(answer.state);
  judgement.advised.shim = answer.shim;
  judgement.advised.candidates = answer.candidates;
  judgement.advised.reason = depth_reason(answer, depth);
  say_where_gone(judgement.advised, today);
  return judgement;
}

}  // namespace

std::vector<TrayShim> tray_of(const JobState& state, Side side, const Context& context) {
  const auto found = context.trays.find(side);
  if (found != context.trays.end() && !found->second.empty()) {
    return found->second;
  }
  std::vector<TrayShim> tray;
  for (const sheet::SpecShim& each : state.sheets.spec->side(side).tray) {
    tray.push_back({each.id, each.thickness, each.u_mm, std::nullopt});
  }
  return tray;
}

shim::Tray engine_tray(const std::vector<TrayShim>& tray) {
  shim::Tray shims;
  shims.reserve(tray.size());
  for (const TrayShim& each : tray) {
    shims.push_back({each.id, each.thickness, each.u_mm});
  }
  return shims;
}

namespace {

/// The shim as it was when it was tried; as the spec sheet has it for an entry of before that was kept.
std::optional<TrayShim> shim_tried(const JobState& state, const ShimTried& tried) {
  if (tried.thickness && tried.u_nm) {
    return TrayShim{tried.shim, *tried.thickness, static_cast<double>(*tried.u_nm) / 1e6, std::nullopt};
  }
  for (const sheet::SpecShim& each : state.sheets.spec->side(tried.side).tray) {
    if (each.id == tried.shim) {
      return TrayShim{each.id, each.thickness, each.u_mm, std::nullopt};
    }
  }
  return std::nullopt;
}

}  // namespace

void say_where_gone(Advised& advised, const std::vector<TrayShim>& tray_today) {
  const bool to_be_taken = advised.conclusion == Conclusion::try_shim || advised.conclusion == Conclusion::fit_shim ||
                           advised.conclusion == Conclusion::change_shim || advised.conclusion == Conclusion::step_shim;
  if (to_be_taken && advised.shim && shim_with_id(tray_today, *advised.shim) == nullptr) {
    advised.reason = gone_reason(*advised.shim);
  }
}

namespace {

constexpr double finest_feel_mm = 0.001;  // the engine takes no finer one

}  // namespace

std::optional<shim::GaugeFitCase> gauge_fit_case(const JobState& state, Side side, std::vector<TrayShim>& tray) {
  const auto& spec = state.sheets.spec->side(side).gauge_fit;
  const sheet::Step* step = step_of_side<sheet::GaugeFitStep>(state, side);
  if (!spec || step == nullptr) {
    return std::nullopt;
  }
  shim::GaugeFitCase gauge_fit;
  gauge_fit.snug_band = spec->snug_band;
  gauge_fit.feel_u_mm = spec->feel_u_mm;
  if (spec->prior) {
    gauge_fit.prior = shim::SeatPrior{spec->prior->mean_mm, spec->prior->sd_mm};
  }
  gauge_fit.order = spec->thick_to_thin ? shim::TrialOrder::thick_to_thin : shim::TrialOrder::fewest;
  std::optional<double> coarsest_feel;
  for (const Entry* entry : round_entries(state, *step)) {
    if (const auto* tried = std::get_if<ShimTried>(&entry->body)) {
      const double feel = tried->feel_nm ? static_cast<double>(*tried->feel_nm) / 1e6 : spec->feel_u_mm;
      coarsest_feel = std::max(coarsest_feel.value_or(feel), feel);
      if (shim_with_id(tray, tried->shim) != nullptr) {
        gauge_fit.trials.push_back({tried->shim, tried->fit});
      } else if (const auto shim = shim_tried(state, *tried)) {
        gauge_fit.trials.push_back({keep_in_tray(tray, *shim), tried->fit});
      }
    }
  }
  // Whoever felt least finely speaks for all; the sheet for a person whose feel was not tested.
  gauge_fit.feel_u_mm = std::max(coarsest_feel.value_or(spec->feel_u_mm), finest_feel_mm);
  return gauge_fit;
}

Advised not_judged(const JobState& state, const sheet::Step& step, Message reason) {
  Advised advised;
  advised.at = {step.id, state.assembly};
  advised.side = step.its_side();
  advised.engine = std::string(shim::engine_version());
  advised.conclusion = Conclusion::question;
  advised.reason = std::move(reason);
  return advised;
}

Advised advised_on(const JobState& state, const sheet::Step& step, const shim::AdviseCase& engine_case,
                   const shim::AdviseAnswer& answer) {
  Advised advised;
  advised.at = {step.id, state.assembly};
  advised.side = step.its_side();
  advised.engine = std::string(shim::engine_version());
  advised.case_json = shim::write_case(engine_case);
  advised.answer_json = shim::write_answer(answer);
  return advised;
}

namespace {

Result<std::optional<Judgement>> judged(const JobState& state, const sheet::Step& step, const Context& context) {
  if (!step.side) {
    return std::nullopt;
  }
  if (std::holds_alternative<sheet::GaugeFitStep>(step.body)) {
    return judge_gauge_fit(state, step, context);
  }
  if (std::holds_alternative<sheet::DepthStep>(step.body)) {
    return judge_depth(state, step, context);
  }
  if (std::holds_alternative<sheet::FloatStep>(step.body)) {
    return judge_float(state, step, context);
  }
  return std::nullopt;
}

}  // namespace

Result<std::optional<Judgement>> judge(const JobState& state, const sheet::Step& step, const Context& context) {
  auto judgement = judged(state, step, context);
  if (!judgement) {
    // The engine speaks of its case; a person knows the workshop's lists.
    judgement.error().message = not_reckonable_reason();
  }
  return judgement;
}

}  // namespace shimwright::job
