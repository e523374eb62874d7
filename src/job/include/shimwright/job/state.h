#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "shimwright/job/entry.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/spec_sheet.h"

namespace shimwright::job {

/// The sheets a job was opened on. It keeps them to its end.
struct Sheets {
  std::shared_ptr<const sheet::JobSheet> job;
  std::string job_hash;
  std::shared_ptr<const sheet::SpecSheet> spec;
  std::string spec_hash;
};

/// A step's state in the present assembly. Each alternative holds only what is valid in it.
struct Open {
  friend bool operator==(const Open&, const Open&) = default;
};
/// Begun, not yet complete.
struct InWork {
  friend bool operator==(const InWork&, const InWork&) = default;
};
struct Accepted {
  std::int64_t entry = 0;
  friend bool operator==(const Accepted&, const Accepted&) = default;
};
/// Complete, but not as it should be: wants another answer, an answer to its questions, or a deviation.
struct Held {
  std::int64_t entry = 0;
  std::vector<Question> questions;  ///< still open ones
  bool only_questions = false;      ///< confirming the last of them accepts the step
  friend bool operator==(const Held&, const Held&) = default;
};
struct DeviationTaken {
  std::int64_t entry = 0;
  friend bool operator==(const DeviationTaken&, const DeviationTaken&) = default;
};
struct SaidNotRequired {
  std::int64_t entry = 0;
  friend bool operator==(const SaidNotRequired&, const SaidNotRequired&) = default;
};
/// Was accepted, may have moved while the job lay still.
struct Unproven {
  std::int64_t entry = 0;  ///< what was accepted then
  friend bool operator==(const Unproven&, const Unproven&) = default;
};
/// The spec sheet finds this side's shim another way.
struct NotAsked {
  friend bool operator==(const NotAsked&, const NotAsked&) = default;
};
using StepState = std::variant<Open, InWork, Accepted, Held, DeviationTaken, SaidNotRequired, Unproven, NotAsked>;

/// Whether the job may go on past the step.
[[nodiscard]] bool passed(const StepState& state);
[[nodiscard]] std::string_view name_of(const StepState& state);

/// A job as its entries have made it. A value: fold of the entries, nothing else.
struct JobState {
  Sheets sheets;
  std::optional<Opened> opened;
  std::vector<Entry> entries;                           ///< all, in order: the trace
  std::set<std::int64_t> withdrawn;                     ///< sequence numbers that no longer count
  std::map<std::string, StepState, std::less<>> steps;  ///< by step id, every step of the sheet
  int assembly = 1;
  std::map<Side, std::string> shims;  ///< chosen for the present assembly
  std::optional<Parked> parked;
  std::optional<std::string> at_bench;  ///< person the job was last handed to
  std::optional<std::int64_t> sealed;   ///< seq of the entry that sealed it
  bool closed = false;                  ///< the sheet's last step is signed, or left out with a reason

  [[nodiscard]] std::int64_t next_seq() const { return static_cast<std::int64_t>(entries.size()) + 1; }
  [[nodiscard]] const StepState& step(std::string_view step_id) const;  ///< Open for an unknown id
  /// Entries that count, in order.
  [[nodiscard]] std::vector<const Entry*> live() const;
  [[nodiscard]] std::vector<const Entry*> live(std::string_view step_id) const;
  [[nodiscard]] std::vector<const Entry*> live(std::string_view step_id, int assembly) const;
  /// The first step in the sheet's order that is not passed; nothing when all are.
  [[nodiscard]] const sheet::Step* next_step() const;
  /// The first hold point before that step which is not passed.
  [[nodiscard]] const sheet::Step* hold_point_before(std::string_view step_id) const;
};

/// The latest live payload of a kind at a step, in an assembly or in any.
template <class Payload>
[[nodiscard]] const Payload* latest(const JobState& state, std::string_view step_id,
                                    std::optional<int> assembly = std::nullopt) {
  const Payload* found = nullptr;
  for (const Entry* entry : state.live(step_id)) {
    const auto* payload = std::get_if<Payload>(&entry->body);
    if (payload != nullptr && (!assembly || payload->at.assembly == *assembly)) {
      found = payload;
    }
  }
  return found;
}

}  // namespace shimwright::job
