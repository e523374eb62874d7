#pragma once

#include "shimwright/job/command.h"

namespace shimwright::job {

/// What names something: a plate, a number, a serial. In characters.
inline constexpr std::size_t longest_line = 200;
/// What somebody writes: a complaint, a note, a reason. In characters: two pages of a record.
inline constexpr std::size_t longest_text = 4000;

/// Whether every text of the command can be printed and searched for. Codes, their place the field or step:
/// `text_too_long`, `control_character` (in a line).
[[nodiscard]] Result<void> check_text_lengths(const Command& command);

}  // namespace shimwright::job
