#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <QDate>
#include <QString>

#include "shimwright/job/context.h"
#include "shimwright/job/state.h"
#include "shimwright/store/types.h"

/// What a person should know before the first job of the day.
namespace shimwright::bench {

struct Heed {
  QString what;           ///< `dial 2`
  QString text;           ///< `Calibration due 30 Nov 2026, in 6 days.`
  bool pressing = false;  ///< past, not only near
};

/// Instruments whose calibration is over or nearly so, the longest overdue first.
[[nodiscard]] std::vector<Heed> calibrations(const std::vector<job::Instrument>& instruments, const QDate& today);

/// Adds one to each tray this job may still take a shim from: the shim of that side is not chosen, or its disc's float
/// is not accepted yet.
void add_wishes(std::map<std::string, int>& jobs_by_tray, const job::JobState& state);

/// Trays with shims of which one or none is left; those that open jobs may want from come first.
[[nodiscard]] std::vector<Heed> low_trays(const std::vector<store::Tray>& trays,
                                          const std::map<std::string, int>& jobs_by_tray);

/// Nothing while the last verified backup is young enough.
[[nodiscard]] std::optional<Heed> backup_heed(const std::optional<job::Moment>& last, const job::Moment& now);

}  // namespace shimwright::bench
