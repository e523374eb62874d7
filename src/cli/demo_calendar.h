#pragma once

#include <cstdint>

/// When people are at work in a demonstration: Monday to Friday, 08:00 to 17:00.
namespace shimwright::cli {

/// The wall clock of the demonstration's workshop, minutes ahead of UTC.
inline constexpr int demo_offset_min = 60;
/// From Monday 6 January 2020 to Friday 20 November 2026.
inline constexpr std::int64_t demo_working_days = 1795;

/// 08:00 of a working day, the first is 0. Milliseconds UTC.
[[nodiscard]] std::int64_t morning_of(std::int64_t working_day);
/// The same moment where people are at work, else as long after the next opening as it is after closing time.
[[nodiscard]] std::int64_t at_work(std::int64_t at_ms);

}  // namespace shimwright::cli
