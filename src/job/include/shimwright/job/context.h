#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/job/entry.h"

namespace shimwright::job {

struct Instrument {
  std::string id;
  std::string name;
  sheet::InstrumentKind kind = sheet::InstrumentKind::dial_gauge;
  std::int64_t resolution = 0;                              ///< base units of what it reads
  std::int64_t permissible_error = 0;                       ///< base units
  std::optional<std::string> calibrated_to;                 ///< ISO date
  std::optional<quantity::Length> turn;                     ///< of a dial: what one turn of the hand is
  std::optional<std::string> calibrated_on = std::nullopt;  ///< ISO date
  /// Standard deviation of one reading when nothing changes, thousandths of a base unit; unset: not tested.
  std::optional<std::int64_t> repeatability = std::nullopt;
};

/// `dial gauge`, `torque wrench`, …
[[nodiscard]] std::string instrument_word(sheet::InstrumentKind kind);
/// Whether its calibration had run out on that day, by the local date.
[[nodiscard]] bool calibration_overdue(const Instrument& instrument, const Moment& now);

enum class Calibration { no_date, in_date, due_soon, overdue };
/// How many days before its last day an instrument is said to be due.
inline constexpr int days_before_due = 30;
[[nodiscard]] Calibration calibration_of(const Instrument& instrument, const Moment& now);

/// Whether this is a day of the calendar, written year-month-day.
[[nodiscard]] bool is_date(const std::string& text);
/// The calendar day of a moment where it was, ISO 8601.
[[nodiscard]] std::string iso_day_of(const Moment& moment);

/// A shim as it lies in the tray today.
struct TrayShim {
  std::string id;
  quantity::Length thickness;
  double u_mm = 0;
  std::optional<int> count;  ///< unset: not counted
};

/// A shim change and the change of float that followed, from another job.
struct Pair {
  quantity::Length shim_change;
  quantity::Length float_change;
  std::string job;
};

/// What the last job on this vehicle left in it.
struct PreviousPack {
  std::string job_number;
  std::optional<std::string> pack_serial;
  std::map<Side, quantity::Length> final_float;  ///< mean over the spots
};

/// All that decide may know beyond the job itself.
struct Context {
  Moment now;
  std::string person;
  std::vector<Instrument> instruments;
  std::map<Side, std::vector<TrayShim>> trays;  ///< a side left out: as the spec sheet has it
  std::map<Side, std::vector<Pair>> history;
  std::optional<PreviousPack> previous_pack;
  std::optional<std::int64_t> feel_nm = std::nullopt;  ///< of the person's feel with the gauge, where it was tested
};

}  // namespace shimwright::job
