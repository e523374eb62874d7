#include "shimwright/job/shims_wanted.h"

#include <optional>

#include "shimwright/job/judgement.h"

namespace shimwright::job {

namespace {

bool side_is_asked(const JobState& state, const sheet::Step& step) {
  const StepState& now = state.step(step.id);
  return !std::holds_alternative<NotAsked>(now) && !std::holds_alternative<SaidNotRequired>(now);
}

/// The step that finds a side's shim, or the one that measures its float.
const sheet::Step* step_of_wants(const JobState& state, Side side, bool of_float) {
  for (const sheet::Step* step : state.sheets.job->steps()) {
    const auto* measured = std::get_if<sheet::FloatStep>(&step->body);
    const bool finds =
        std::holds_alternative<sheet::GaugeFitStep>(step->body) || std::holds_alternative<sheet::DepthStep>(step->body);
    const bool wanted = of_float ? measured != nullptr && !measured->as_found : finds;
    if (wanted && step->side == side && side_is_asked(state, *step)) {
      return step;
    }
  }
  return nullptr;
}

std::optional<Judgement> judged_now(const JobState& state, const sheet::Step& step, const Context& context) {
  auto judgement = judge(state, step, context);
  return judgement ? *std::move(judgement) : std::nullopt;
}

void share_out(SideWants& wants, const std::vector<std::string>& shims) {
  for (const std::string& each : shims) {
    wants.chances[each] += 1.0 / static_cast<double>(shims.size());
  }
}

SideWants by_finding(const Judgement& judgement) {
  SideWants wants;
  if (judgement.answer.gauge_fit && judgement.answer.gauge_fit->seat) {
    for (const shim::ShimChance& each : judgement.answer.gauge_fit->seat->p_best) {
      wants.chances[each.shim] += each.p;
    }
  } else if (!judgement.advised.candidates.empty()) {
    share_out(wants, judgement.advised.candidates);
  } else if (judgement.advised.shim) {
    share_out(wants, {*judgement.advised.shim});
  } else {
    wants.no_belief = true;
  }
  return wants;
}

std::optional<SideWants> wants_of(const JobState& state, Side side, const Context& context) {
  if (state.shims.count(side) > 0) {
    const sheet::Step* step = step_of_wants(state, side, true);
    const auto judgement = step == nullptr ? std::nullopt : judged_now(state, *step, context);
    const bool changes = judgement && (judgement->advised.conclusion == Conclusion::change_shim ||
                                       judgement->advised.conclusion == Conclusion::step_shim);
    if (!changes || !judgement->advised.shim || *judgement->advised.shim == state.shims.at(side)) {
      return std::nullopt;
    }
    SideWants wants;
    share_out(wants, {*judgement->advised.shim});
    return wants;
  }
  const sheet::Step* step = step_of_wants(state, side, false);
  if (step == nullptr) {
    return std::nullopt;
  }
  const auto judgement = judged_now(state, *step, context);
  return judgement ? by_finding(*judgement) : SideWants{{}, true};
}

}  // namespace

std::map<Side, SideWants> shims_wanted(const JobState& state, const Context& context) {
  std::map<Side, SideWants> wanted;
  if (state.closed || state.sealed) {
    return wanted;
  }
  for (const Side side : {Side::lower, Side::upper}) {
    if (auto wants = wants_of(state, side, context)) {
      wanted[side] = *std::move(wants);
    }
  }
  return wanted;
}

}  // namespace shimwright::job
