#include "shimwright/job/state.h"

#include "round.h"

namespace shimwright::job {

bool passed(const StepState& state) {
  return std::holds_alternative<Accepted>(state) || std::holds_alternative<DeviationTaken>(state) ||
         std::holds_alternative<SaidNotRequired>(state) || std::holds_alternative<NotAsked>(state);
}

std::string_view name_of(const StepState& state) {
  struct Name {
    std::string_view operator()(const Open&) const { return "open"; }
    std::string_view operator()(const InWork&) const { return "in_work"; }
    std::string_view operator()(const Accepted&) const { return "accepted"; }
    std::string_view operator()(const Held&) const { return "held"; }
    std::string_view operator()(const DeviationTaken&) const { return "deviation"; }
    std::string_view operator()(const SaidNotRequired&) const { return "not_required"; }
    std::string_view operator()(const Unproven&) const { return "unproven"; }
    std::string_view operator()(const NotAsked&) const { return "not_asked"; }
  };
  return std::visit(Name{}, state);
}

const StepState& JobState::step(std::string_view step_id) const {
  static const StepState open = Open{};
  const auto found = steps.find(step_id);
  return found == steps.end() ? open : found->second;
}

std::vector<const Entry*> JobState::live() const {
  std::vector<const Entry*> found;
  found.reserve(entries.size());
  for (const Entry& entry : entries) {
    if (withdrawn.count(entry.seq) == 0) {
      found.push_back(&entry);
    }
  }
  return found;
}

std::vector<const Entry*> JobState::live(std::string_view step_id) const {
  std::vector<const Entry*> found;
  for (const Entry& entry : entries) {
    const StepRef* at = step_of(entry.body);
    if (at != nullptr && at->step == step_id && withdrawn.count(entry.seq) == 0) {
      found.push_back(&entry);
    }
  }
  return found;
}

std::vector<const Entry*> JobState::live(std::string_view step_id, int in_assembly) const {
  std::vector<const Entry*> found;
  for (const Entry* entry : live(step_id)) {
    if (step_of(entry->body)->assembly == in_assembly) {
      found.push_back(entry);
    }
  }
  return found;
}

const sheet::Step* JobState::next_step() const {
  for (const sheet::Step* each : sheets.job->steps()) {
    if (!passed(step(each->id))) {
      return each;
    }
  }
  return nullptr;
}

namespace {

bool is_final_float(const sheet::Step& step) {
  const auto* reading = std::get_if<sheet::FloatStep>(&step.body);
  return reading != nullptr && !reading->as_found;
}

/// Runs of another series do not take back what an earlier one has shown: it was measured, and is being measured again.
bool measured_before(const JobState& state, const sheet::Step& step) {
  const auto entries = state.live(step.id, state.assembly);
  return std::any_of(entries.begin(), entries.end(),
                     [](const Entry* entry) { return std::holds_alternative<Advised>(entry->body); });
}

/// Both discs may be measured before the pack comes off: a float that is off lets the other disc's steps through, since
/// two floats off opposite ways show exchanged shims, and that costs minutes where taking the pack off costs an hour.
std::size_t end_of_float_steps(const std::vector<const sheet::Step*>& steps) {
  std::size_t end = 0;
  for (std::size_t at = 0; at < steps.size(); ++at) {
    if (is_final_float(*steps[at])) {
      end = at + 1;
    }
  }
  return end;
}

}  // namespace

const sheet::Step* JobState::hold_point_before(std::string_view step_id) const {
  const auto steps_in_order = sheets.job->steps();
  const auto position = sheets.job->position_of(step_id);
  if (!position) {
    return nullptr;
  }
  const bool among_floats = *position < end_of_float_steps(steps_in_order);
  for (std::size_t at = 0; at < *position; ++at) {
    const sheet::Step& each = *steps_in_order[at];
    const StepState& each_state = step(each.id);
    if (!each.hold_point || passed(each_state)) {
      continue;
    }
    const bool being_measured = std::holds_alternative<Held>(each_state) || std::holds_alternative<InWork>(each_state);
    const bool measured = is_final_float(each) && being_measured && measured_before(*this, each);
    if (!(measured && among_floats)) {
      return &each;
    }
  }
  return nullptr;
}

}  // namespace shimwright::job
