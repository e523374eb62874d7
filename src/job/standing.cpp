#include "shimwright/job/standing.h"

#include <algorithm>

#include "round.h"
#include "shimwright/job/judgement.h"

namespace shimwright::job {

std::vector<const Entry*> present_entries(const JobState& state, const sheet::Step& step) {
  return round_entries(state, step);
}

std::vector<const Entry*> present_trials(const JobState& state, const sheet::Step& step) {
  std::vector<const Entry*> trials;
  for (const Entry* entry : round_entries(state, step)) {
    if (std::holds_alternative<ShimTried>(entry->body)) {
      trials.push_back(entry);
    }
  }
  return trials;
}

std::vector<std::string> parts_to_renew(const JobState& state, const sheet::Step& step) {
  const auto* body = std::get_if<sheet::PartStep>(&step.body);
  return body != nullptr && std::holds_alternative<Unproven>(state.step(step.id)) ? body->parts
                                                                                  : parts_missing(state, step);
}

const DepthsRead* present_depths(const JobState& state, const sheet::Step& step) {
  const DepthsRead* depths = nullptr;
  for (const Entry* entry : round_entries(state, step)) {
    if (const auto* each = std::get_if<DepthsRead>(&entry->body)) {
      depths = each;
    }
  }
  return depths;
}

const Advised* advice_before_series(const JobState& state, const sheet::Step& step) {
  const Advised* latest_advice = nullptr;
  const Advised* before = nullptr;
  for (const Entry* entry : round_entries(state, step)) {
    if (const auto* advised = std::get_if<Advised>(&entry->body)) {
      latest_advice = advised;
    } else if (std::holds_alternative<SeriesBegun>(entry->body)) {
      before = latest_advice;
    }
  }
  return before;
}

const Advised* standing_advice(const JobState& state, const sheet::Step& step) {
  const Advised* found = nullptr;
  for (const Entry* entry : round_entries(state, step)) {
    if (const auto* advised = std::get_if<Advised>(&entry->body)) {
      found = advised;
    }
  }
  const bool has_trials = found != nullptr && found->conclusion != Conclusion::try_shim;
  if (has_trials) {
    return found;
  }
  const Advised* of_float = nullptr;
  for (const Entry* entry : state.live()) {
    const auto* advised = std::get_if<Advised>(&entry->body);
    const bool before = advised != nullptr && advised->side == step.side && advised->at.step != step.id &&
                        advised->at.assembly == state.assembly - 1;
    of_float = before ? advised : of_float;
  }
  const bool other_shim = of_float != nullptr && (of_float->conclusion == Conclusion::change_shim ||
                                                  of_float->conclusion == Conclusion::step_shim);
  return other_shim ? of_float : found;
}

bool runs_missing(const JobState& state, const sheet::Step& step) {
  const auto* body = std::get_if<sheet::FloatStep>(&step.body);
  if (body == nullptr) {
    return false;
  }
  const int asked = body->as_found ? 1 : state.sheets.spec->side(step.its_side()).disc_float.least_runs;
  const auto runs = present_runs(state, step);
  return std::any_of(runs.begin(), runs.end(),
                     [asked](const auto& spot) { return static_cast<int>(spot.size()) < asked; });
}

bool advises(const Advised* advised, const std::string& shim) {
  if (advised == nullptr) {
    return false;
  }
  const auto& candidates = advised->candidates;
  const bool offered = std::find(candidates.begin(), candidates.end(), shim) != candidates.end();
  return (advised->shim == shim && advised->conclusion != Conclusion::try_shim &&
          advised->conclusion != Conclusion::far) ||
         (advised->conclusion == Conclusion::edge && offered);
}

}  // namespace shimwright::job
