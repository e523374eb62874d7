#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shimwright/record/vehicle_life.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

struct JobOfVehicle {
  JobSummary summary;
  record::JobInLife life;
  std::optional<record::SealStanding> seal = {};  ///< unset: not sealed
};

/// What the store knows of one vehicle.
struct VehicleHistory {
  std::string vehicle;
  std::vector<JobOfVehicle> jobs;  ///< latest first
  std::size_t older = 0;           ///< so many more, older ones, were not read
};

/// Its latest jobs, each folded from its entries on its own sheets; at most so many. A vehicle without jobs gives none.
/// Codes: as Store::load(), and `stopped`.
[[nodiscard]] Result<VehicleHistory> vehicle_history(Store& store, const std::string& vehicle_key,
                                                     std::size_t most = 50, const BackupWatch& watch = {});
/// The same over a store opened for it, so it may run in any thread. Codes: those of Store::open() as well.
[[nodiscard]] Result<VehicleHistory> vehicle_history(const std::string& store_path, const std::string& vehicle_key,
                                                     std::size_t most, const BackupWatch& watch);

/// How each pack wore, the earliest first, as far as the jobs that were read tell it.
[[nodiscard]] std::vector<record::Wear> wear_of(const VehicleHistory& history);

/// These jobs as lines of a list, in that order; one that is not there is left out.
[[nodiscard]] Result<std::vector<JobSummary>> jobs_named(const Store& store, const std::vector<std::string>& ids);

}  // namespace shimwright::store
