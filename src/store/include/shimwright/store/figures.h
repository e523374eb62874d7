#pragma once

#include <compare>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/sheet/words.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/store.h"

/// What the jobs of a period say of the workshop as a whole. Each figure is the list of its jobs, so that it can be
/// looked behind.
namespace shimwright::store {

/// From the first moment to before the second, UTC milliseconds: jobs opened then.
struct Period {
  std::int64_t from_ms = 0;
  std::int64_t to_ms = 0;
};

/// What counts as a vehicle that is back soon: no farther and no later than this since its job before. Days of the
/// calendar, by the wall clock of each opening. A pack that is driven with care and built in well lasts several times
/// as long.
struct BackWithin {
  std::int64_t distance_m = 30'000'000;
  std::int64_t days = 365;
};

struct Month {
  int year = 0;
  unsigned month = 1;
  friend auto operator<=>(const Month&, const Month&) = default;
};

struct ShimName {
  std::string gearbox;
  sheet::Side side = sheet::Side::lower;
  std::string shim;
  friend auto operator<=>(const ShimName&, const ShimName&) = default;
};

using JobIds = std::vector<std::string>;

/// Of one job what the figures are made from; nothing that was withdrawn.
struct JobFacts {
  struct Visit {
    std::int64_t opened_at_ms = 0;
    int offset_min = 0;  ///< of the wall clock where it was opened
    std::optional<std::int64_t> odometer_m;
  };

  std::string id;
  std::string gearbox;
  Visit visit;
  std::optional<Visit> before;                        ///< the last job on this vehicle before
  int assembly = 1;                                   ///< the present one
  std::map<sheet::Side, std::string> shims;           ///< chosen last, and nothing tried or taken off since
  std::map<std::pair<sheet::Side, int>, int> trials;  ///< by side and assembly, where a shim was chosen after them
};

/// Shims that were found after so many trials, and the jobs they were for, each once.
struct FoundAfter {
  std::int64_t shims = 0;
  JobIds jobs;
  friend bool operator==(const FoundAfter&, const FoundAfter&) = default;
};

struct Figures {
  JobIds jobs;       ///< opened in the period, in order of time; so are all others
  JobIds elsewhere;  ///< opened then as well, but taken in from another workshop: in none of the others
  std::map<Month, JobIds> by_month;
  JobIds with_shim;                     ///< where a shim was chosen: what the share of `again` is of
  JobIds again;                         ///< that needed a second assembly
  std::map<int, FoundAfter> by_trials;  ///< by how many trials it took
  std::int64_t trials = 0;              ///< of all of them
  std::int64_t shims_found = 0;         ///< after trials
  std::map<ShimName, JobIds> by_shim;   ///< left in the vehicle
  JobIds back;                          ///< vehicle was back within distance and time
  JobIds back_by_time;  ///< within the time; a distance is not known, as an odometer is missing or went down
};

/// Pure.
void take(Figures& figures, const JobFacts& job, const BackWithin& within);

/// Reads job after job in small steps, so that somebody else may write meanwhile; takes time with the number of jobs
/// in the period, so it is for a thread of its own. Codes: as Store::open(), and `stopped`.
[[nodiscard]] Result<Figures> figures_of(const std::string& store_path, const Period& period, const BackWithin& within,
                                         const BackupWatch& watch = {});
/// The same over an open store, so many jobs in one step.
[[nodiscard]] Result<Figures> figures_of(const Store& store, const Period& period, const BackWithin& within,
                                         const BackupWatch& watch = {}, std::int64_t at_a_time = 500);

/// Ids of the jobs opened in the period, in order of time.
[[nodiscard]] Result<JobIds> jobs_of_period(const Store& store, const Period& period);

}  // namespace shimwright::store
