#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/job/command.h"
#include "shimwright/job/context.h"
#include "shimwright/job/decide.h"
#include "shimwright/job/evolve.h"
#include "shimwright/job/state.h"

/// A job at the bench, driven by commands on the sheets shipped with the project.
namespace shimwright::job::test {

[[nodiscard]] Sheets shipped_sheets(const std::string& spec_file = "D7-2.json");

/// The step `new-pack` renews the clutch pack, the lever set and the guide bolts.
[[nodiscard]] Sheets sheets_with_three_parts();

/// Person MK, 23 November 2026, one instrument of each kind (its id: `dial_gauge`, `micrometer`, …).
[[nodiscard]] Context bench_context();
[[nodiscard]] OpenJob open_command();
[[nodiscard]] quantity::TypedNumber typed(std::string_view text, quantity::Unit unit = quantity::Unit::millimetre);

class Bench {
 public:
  /// A job opened on the default sheet and that spec sheet.
  explicit Bench(const std::string& spec_file = "D7-2.json");
  explicit Bench(Sheets sheets) : state(begin(std::move(sheets))) {}

  /// Does it; a refusal ends the test.
  Bench& take(const Command& command);
  /// The refusal's code, empty where the command would be accepted; nothing changes.
  [[nodiscard]] std::string refusal(const Command& command) const;
  [[nodiscard]] std::optional<Error> error(const Command& command) const;

  /// Answers a step so that it is accepted …
  Bench& answer(const std::string& step_id);
  /// … or every step before that one that is not passed yet.
  Bench& answer_up_to(const std::string& step_id);

  Bench& try_shim(const std::string& step_id, const std::string& shim, Fit fit);
  /// One run at each spot, beginning at rest 0.00.
  Bench& runs(const std::string& step_id, const std::vector<std::string>& lifted);
  /// The same floats twice, as least_runs of the demonstration sheets asks.
  Bench& float_twice(const std::string& step_id, const std::vector<std::string>& lifted);
  Bench& enter(const std::string& step_id, const std::string& channel, const std::string& text,
               const std::string& instrument = "");

  [[nodiscard]] std::string step(const std::string& step_id) const;
  [[nodiscard]] std::vector<std::string> questions(const std::string& step_id) const;
  [[nodiscard]] std::string conclusion(const std::string& step_id) const;
  [[nodiscard]] const Advised& advice(const std::string& step_id) const;
  [[nodiscard]] std::int64_t last_seq() const { return static_cast<std::int64_t>(state.entries.size()); }
  /// Sequence number of the latest live entry of that kind at the step.
  [[nodiscard]] std::int64_t seq_of(const std::string& step_id, std::string_view kind) const;

  JobState state;
  Context context = bench_context();
  /// The shim each side had and gets again.
  std::map<Side, std::string> shim = {{Side::lower, "1.60"}, {Side::upper, "1.75"}};
};

/// Whether two states are the same but for their trace.
[[nodiscard]] bool same_but_trace(const JobState& one, const JobState& other);

/// Those two floats, off opposite ways, as exchanged shims would make them.
inline const std::vector<std::string> too_small = {"0.10", "0.11", "0.10"};
inline const std::vector<std::string> too_large = {"0.93", "0.90", "0.96"};

}  // namespace shimwright::job::test
