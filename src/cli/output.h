#pragma once

#include <string>
#include <string_view>

#include "shimwright/quantity/error.h"

namespace shimwright::cli {

/// 0: done. 1: done, and something is not as it should be (a check found it, a replay went another way than the script
/// expects, the disk refused). 2: what was asked or given cannot be taken; nothing was changed.
enum class Exit { done = 0, off = 1, refused = 2 };

/// One line on standard output, brought out at once.
void say(std::string_view line);
/// One line on standard error.
void complain(std::string_view line);
/// The error as one line on standard error; the exit status that goes with it.
[[nodiscard]] Exit refused(const Error& error);
/// The same for a fault that is of the disk or the store, not of what was given.
[[nodiscard]] Exit failed(const Error& error);

/// A file from outside, at most 64 MiB. Codes: `cannot_read`, `too_large`. `-` is standard input.
[[nodiscard]] Result<std::string> read_file(const std::string& path);

}  // namespace shimwright::cli
