#pragma once

#include <string>
#include <vector>

#include <QString>

#include "shimwright/job/context.h"
#include "shimwright/job/state.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/pack_drawing.h"

/// What the job screen says of a job as it stands. Pure.
namespace shimwright::bench {

[[nodiscard]] widgets::Mark mark_of(const job::StepState& state);

/// How far a stage is: steps that are asked in this job, and how many of them are passed.
struct StageProgress {
  int asked = 0;
  int passed = 0;
  bool held = false;
  widgets::Mark mark = widgets::Mark::open;
};
[[nodiscard]] StageProgress progress_of(const job::JobState& state, const sheet::Stage& stage);

/// The steps that are asked in this job, in order.
[[nodiscard]] std::vector<const sheet::Step*> asked_steps(const job::JobState& state);
/// The next one after it that is not passed, else the first that is not; nothing when all are.
[[nodiscard]] const sheet::Step* step_after(const job::JobState& state, const std::string& step_id);
[[nodiscard]] const sheet::Step* step_before(const job::JobState& state, const std::string& step_id);
/// Where a stage is entered: its first step that is not passed, else its first; nothing for a stage that is not asked.
[[nodiscard]] const sheet::Step* entrance_of(const job::JobState& state, const std::string& stage_id);

/// One of the four numbers above the drawing: `1.65 ?`, `0.93 mm`.
struct PanelNumber {
  QString title;
  QString value;
  bool bad = false;
};
[[nodiscard]] std::vector<PanelNumber> panel_numbers(const job::JobState& state);
[[nodiscard]] widgets::PackView pack_view(const job::JobState& state, const job::Context& context,
                                          const sheet::Step* step);

/// `24 Nov 10:58`, by the offset of the entry.
[[nodiscard]] QString time_text(const job::Moment& moment);
/// What an entry says, in a few words: `Depth kept`, with the step's title before it.
[[nodiscard]] QString entry_words(const job::JobState& state, const job::Entry& entry, const std::string& language);

/// What was answered: `1.65 tight`, `in order`, `13.5 N·m`.
[[nodiscard]] QString answer_words(const job::EntryBody& body);

/// Parts that open part steps still want: `pack ring, D7-113, 1`.
[[nodiscard]] std::vector<QString> parts_to_order(const job::JobState& state, const std::string& language);

}  // namespace shimwright::bench
