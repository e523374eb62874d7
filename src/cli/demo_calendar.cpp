#include "demo_calendar.h"

#include <algorithm>

namespace shimwright::cli {

namespace {

constexpr std::int64_t minute_ms = 60'000;
constexpr std::int64_t hour_ms = 60 * minute_ms;
constexpr std::int64_t day_ms = 24 * hour_ms;
constexpr std::int64_t opening_ms = 8 * hour_ms;
constexpr std::int64_t closing_ms = 17 * hour_ms;
constexpr std::int64_t first_monday = 18'267;  // days since 1 January 1970

/// 0 is Monday.
std::int64_t weekday(std::int64_t day) {
  constexpr std::int64_t of_day_0 = 3;
  return (day + of_day_0) % 7;
}

std::int64_t in_utc(std::int64_t day, std::int64_t within_ms) {
  return day * day_ms + within_ms - demo_offset_min * minute_ms;
}

std::int64_t next_working_day(std::int64_t day) {
  do {
    ++day;
  } while (weekday(day) >= 5);
  return day;
}

}  // namespace

std::int64_t morning_of(std::int64_t working_day) {
  return in_utc(first_monday + working_day / 5 * 7 + working_day % 5, opening_ms);
}

std::int64_t at_work(std::int64_t at_ms) {
  const std::int64_t local = at_ms + demo_offset_min * minute_ms;
  const std::int64_t day = local / day_ms;
  const std::int64_t within = local % day_ms;
  if (weekday(day) >= 5) {
    return in_utc(next_working_day(day), opening_ms);
  }
  if (within >= closing_ms) {
    return in_utc(next_working_day(day), std::min(opening_ms + within - closing_ms, closing_ms - 1));
  }
  return in_utc(day, std::max(within, opening_ms));
}

}  // namespace shimwright::cli
