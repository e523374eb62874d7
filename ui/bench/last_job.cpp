#include "last_job.h"

namespace shimwright::bench {

Result<std::optional<std::string>> written_in_last_job(const Workbench& bench, const std::string& step_id) {
  constexpr std::int64_t jobs_looked_at = 20;
  auto jobs = bench.store().jobs(jobs_looked_at);
  if (!jobs) {
    return tl::make_unexpected(jobs.error());
  }
  for (const store::JobSummary& each : *jobs) {
    if (each.id == bench.job_id() || each.gearbox != bench.state().sheets.spec->gearbox) {
      continue;
    }
    auto hand = store::JobInHand::load(bench.store(), each.id);
    if (!hand) {
      return tl::make_unexpected(hand.error());
    }
    if (const auto* written = job::latest<job::Written>(hand->state(), step_id)) {
      return written->text;
    }
  }
  return std::optional<std::string>{};
}

}  // namespace shimwright::bench
