#include "shimwright/job/stage_hours.h"

#include <map>

namespace shimwright::job {

namespace {

constexpr std::int64_t longest_pause_ms = std::int64_t{2} * 60 * 60 * 1000;

}  // namespace

std::vector<StageTime> stage_hours(const JobState& state) {
  std::map<std::string, std::int64_t> by_stage;
  for (std::size_t at = 1; at < state.entries.size(); ++at) {
    const Entry& entry = state.entries[at];
    const Entry& before = state.entries[at - 1];
    const StepRef* ref = step_of(entry.body);
    const sheet::Stage* stage = ref == nullptr ? nullptr : state.sheets.job->stage_of(ref->step);
    if (stage == nullptr || std::holds_alternative<Parked>(before.body)) {
      continue;
    }
    const std::int64_t spent = entry.moment.at_ms - before.moment.at_ms;
    if (spent > 0 && spent <= longest_pause_ms) {
      by_stage[stage->id] += spent;
    }
  }
  std::vector<StageTime> hours;
  for (const sheet::Stage& stage : state.sheets.job->stages) {
    if (const auto found = by_stage.find(stage.id); found != by_stage.end() && found->second >= 30000) {
      hours.push_back({stage.id, (found->second + 30000) / 60000});
    }
  }
  return hours;
}

}  // namespace shimwright::job
