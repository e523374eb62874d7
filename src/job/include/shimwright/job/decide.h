#pragma once

#include <vector>

#include "shimwright/job/command.h"
#include "shimwright/job/context.h"
#include "shimwright/job/state.h"

namespace shimwright::job {

/// What follows from a command: entries to be kept, in order, numbered and dated; or a refusal with one sentence that
/// says what is in the way and what to do. Pure: time, person, instruments and trays come with the context. A command
/// that is accepted leads to one entry at least.
///
/// Codes of refusal: docs/refusals.md. The place is the step, or the step and the field (`press-peak/torque`).
[[nodiscard]] Result<std::vector<Entry>> decide(const JobState& state, const Command& command, const Context& context);

/// The personal texts a command brings; they are stored with its entries.
[[nodiscard]] std::vector<PrivateText> private_texts_of(const Command& command);

}  // namespace shimwright::job
