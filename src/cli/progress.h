#pragma once

#include <chrono>
#include <functional>
#include <string>
#include <string_view>

#include "shimwright/store/backup.h"

namespace shimwright::cli {

using Clock = std::function<std::chrono::steady_clock::time_point()>;

/// Tells how far long work is, `check: 1200 of 20000`: nothing before it has taken two seconds, then a line for each
/// tenth. `name` is the command's.
[[nodiscard]] store::BackupWatch told_on_the_way(
    std::string_view name, const std::function<void(std::string_view)>& tell,
    const Clock& clock = [] { return std::chrono::steady_clock::now(); });
/// The same on standard error.
[[nodiscard]] store::BackupWatch told_on_the_way(std::string_view name);

}  // namespace shimwright::cli
