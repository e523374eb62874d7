#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "shimwright/job/command.h"
#include "shimwright/job/state.h"

/// The lines a replay prints (docs/formats/replay-lines.md). Locale-free JSON, one object a line.
namespace shimwright::cli {

/// What an accepted command led to: its entries, the state of its step, the advice, open questions, the next step, the
/// assembly and the shims.
[[nodiscard]] std::string accepted_line(std::size_t command, const std::vector<job::Entry>& entries,
                                        const job::JobState& state);
[[nodiscard]] std::string refused_line(std::size_t command, const Error& error);

/// What an opened job's vehicle is filed under.
[[nodiscard]] std::string vehicle_key(const job::OpenJob& command);

}  // namespace shimwright::cli
