#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include <QString>

#include "shimwright/job/state.h"
#include "shimwright/store/store.h"

/// What a workshop remembers of a vehicle when it comes again.
namespace shimwright::bench {

struct EarlierJob {
  std::string number;
  job::Moment opened;
  store::JobStanding standing = store::JobStanding::closed;
  std::optional<std::string> plate;
  std::optional<std::string> chassis_reason;
  std::optional<quantity::TypedNumber> odometer;
  std::string gearbox;
  std::string gearbox_serial;
  std::string build_date;
  bool pack_renewed = false;
  std::map<sheet::Side, std::string> shims;
  std::map<sheet::Side, std::int64_t> final_float_um;  ///< mean over the spots of the last measurement
  int teach_in_attempt = 0;                            ///< the one that was completed, the highest of both sides
};

[[nodiscard]] EarlierJob earlier_job(const store::JobSummary& summary, const job::JobState& state);

struct EarlierJobs {
  std::vector<EarlierJob> latest;  ///< latest first
  std::size_t more = 0;            ///< older ones that were not read
};
/// Reads at most `most` of the vehicle's jobs. Codes: as Store::load().
[[nodiscard]] Result<EarlierJobs> read_earlier_jobs(store::Store& store, const std::string& vehicle_key,
                                                    std::size_t most);

/// `Job 1790 · 11 Feb 2026 · 81950 km · pack renewed`.
[[nodiscard]] QString heading_of(const EarlierJob& earlier);
/// `shims large 1.65, small 1.75 · final float lower 0.58, upper 0.52 mm`; blank where nothing is known.
[[nodiscard]] QString details_of(const EarlierJob& earlier);

struct EarlierNotice {
  QString heading;
  QString text;
};
/// What the earlier jobs and the odometer say together.
[[nodiscard]] std::vector<EarlierNotice> notices_of(const EarlierJobs& earlier,
                                                    const std::optional<quantity::TypedNumber>& odometer);

}  // namespace shimwright::bench
