#include "shimwright/shell/tone.h"

#include <utility>
#include <variant>

namespace shimwright::shell {

namespace {

bool is_reading(const job::EntryBody& body) {
  return std::holds_alternative<job::Read>(body) || std::holds_alternative<job::PeakRead>(body) ||
         std::holds_alternative<job::FloatRun>(body) || std::holds_alternative<job::DepthsRead>(body) ||
         std::holds_alternative<job::ShimTried>(body);
}

}  // namespace

Tone::Tone(const bench::Workbench& bench, std::function<void()> sound, QObject* parent)
    : QObject(parent), bench_(&bench), sound_(std::move(sound)) {
  connect(&bench, &bench::Workbench::changed, this, &Tone::hear);
}

void Tone::hear() {
  if (!bench_->has_job()) {
    return;
  }
  const auto& entries = bench_->state().entries;
  const std::int64_t last = entries.empty() ? 0 : entries.back().seq;
  bool heard = false;
  if (bench_->job_id() == job_) {
    for (auto entry = entries.rbegin(); entry != entries.rend() && entry->seq > last_seq_; ++entry) {
      heard = heard || is_reading(entry->body);
    }
  }
  job_ = bench_->job_id();
  last_seq_ = last;
  if (on_ && heard) {
    sound_();
  }
}

}  // namespace shimwright::shell
