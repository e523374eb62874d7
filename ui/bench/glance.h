#pragma once

#include <string>
#include <vector>

#include <QString>

#include "shimwright/job/state.h"
#include "shimwright/store/types.h"
#include "shimwright/widgets/stage_bar.h"

namespace shimwright::bench {

/// Which card stands above which: what is off, then what can go on, then what waits.
enum class Urgency { off, open, parked };

/// What a job's card on the bench says.
struct Glance {
  std::string job;  ///< id
  QString number;
  QString vehicle;   ///< `VIN ends 30417`
  QString unit;      ///< `unit D7`
  QString stage;     ///< title of the stage of the next step
  QString next;      ///< the next thing to do, what is held, or what the job waits for
  bool bad = false;  ///< `next` in brick: held, or overdue
  std::vector<widgets::StageLook> stages;
  Urgency urgency = Urgency::open;
};

/// Where a card goes among those that stand there already, in their order: behind all that are as urgent.
[[nodiscard]] std::size_t place_among(const std::vector<Urgency>& cards, Urgency urgency);

[[nodiscard]] Glance glance_at(const store::JobSummary& summary, const job::JobState& state, const job::Moment& now);
/// Of a job that cannot be read just now: the list's line and the sentence that says why.
[[nodiscard]] Glance glance_without_state(const store::JobSummary& summary, const Error& error);

/// What is wrong at a held step, in a few words: `measure again`, `too large`, `a question is open`.
[[nodiscard]] QString held_words(const job::JobState& state, const sheet::Step& step);

}  // namespace shimwright::bench
