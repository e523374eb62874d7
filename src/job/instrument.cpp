#include <chrono>
#include <cstdint>

#include "shimwright/job/context.h"

namespace shimwright::job {

namespace {

/// By days since 1970 (algorithm of the proleptic Gregorian calendar in 400-year eras).
std::string day_from(std::int64_t days_since_1970) {
  const std::int64_t days = days_since_1970 + 719'468;
  const std::int64_t era = (days >= 0 ? days : days - 146'096) / 146'097;
  const std::int64_t day_of_era = days - era * 146'097;
  const std::int64_t year_of_era = (day_of_era - day_of_era / 1'460 + day_of_era / 36'524 - day_of_era / 146'096) / 365;
  const std::int64_t day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const std::int64_t shifted_month = (5 * day_of_year + 2) / 153;
  const std::int64_t day = day_of_year - (153 * shifted_month + 2) / 5 + 1;
  const std::int64_t month = shifted_month < 10 ? shifted_month + 3 : shifted_month - 9;
  const std::int64_t year = year_of_era + era * 400 + (month <= 2 ? 1 : 0);
  const auto two = [](std::int64_t number) { return (number < 10 ? "0" : "") + std::to_string(number); };
  return std::to_string(year) + "-" + two(month) + "-" + two(day);
}

std::int64_t local_days(const Moment& moment) {
  constexpr std::int64_t minute_ms = 60'000;
  constexpr std::int64_t day_ms = 1'440 * minute_ms;
  const std::int64_t local = moment.at_ms + moment.offset_min * minute_ms;
  return (local >= 0 ? local : local - (day_ms - 1)) / day_ms;
}

}  // namespace

std::string instrument_word(sheet::InstrumentKind kind) {
  switch (kind) {
    case sheet::InstrumentKind::dial_gauge:
      return SHIMWRIGHT_TEXT("word", "dial gauge");
    case sheet::InstrumentKind::depth_gauge:
      return SHIMWRIGHT_TEXT("word", "depth gauge");
    case sheet::InstrumentKind::micrometer:
      return SHIMWRIGHT_TEXT("word", "micrometer");
    case sheet::InstrumentKind::torque_wrench:
      return SHIMWRIGHT_TEXT("word", "torque wrench");
    case sheet::InstrumentKind::thermometer:
      return SHIMWRIGHT_TEXT("word", "thermometer");
    case sheet::InstrumentKind::multimeter:
      return SHIMWRIGHT_TEXT("word", "multimeter");
    case sheet::InstrumentKind::pressure_gauge:
      return SHIMWRIGHT_TEXT("word", "pressure gauge");
    case sheet::InstrumentKind::scale:
      return SHIMWRIGHT_TEXT("word", "scale");
  }
  return "";
}

bool is_date(const std::string& text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
    return false;
  }
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (at != 4 && at != 7 && (text[at] < '0' || text[at] > '9')) {
      return false;
    }
  }
  const std::chrono::year_month_day day(std::chrono::year(std::stoi(text.substr(0, 4))),
                                        std::chrono::month(static_cast<unsigned>(std::stoi(text.substr(5, 2)))),
                                        std::chrono::day(static_cast<unsigned>(std::stoi(text.substr(8, 2)))));
  return day.ok();
}

std::string iso_day_of(const Moment& moment) {
  return day_from(local_days(moment));
}

bool calibration_overdue(const Instrument& instrument, const Moment& now) {
  return instrument.calibrated_to && *instrument.calibrated_to < iso_day_of(now);
}

Calibration calibration_of(const Instrument& instrument, const Moment& now) {
  if (!instrument.calibrated_to) {
    return Calibration::no_date;
  }
  if (calibration_overdue(instrument, now)) {
    return Calibration::overdue;
  }
  return *instrument.calibrated_to <= day_from(local_days(now) + days_before_due) ? Calibration::due_soon
                                                                                  : Calibration::in_date;
}

}  // namespace shimwright::job
