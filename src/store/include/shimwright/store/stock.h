#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "shimwright/store/store.h"

/// What lies in the trays today, and what open jobs may take out of them.
namespace shimwright::store {

/// The same tray, each count less what jobs took since it was taken and more what came back; not below 0. A count whose
/// day is not known stays as it is.
[[nodiscard]] Result<Tray> as_it_lies(const Store& store, Tray tray);

/// What open jobs may want of one tray.
struct TrayDemand {
  std::map<std::string, double> wanted;  ///< by shim: how many are expected to be taken
  int jobs = 0;                          ///< sides of jobs whose shim is still to be chosen or changed
  int without_belief = 0;                ///< of these, where nothing is known yet
};

/// By the names of trays, over the latest open jobs, `most` of them: the belief of each as it stands
/// (job::shims_wanted).
[[nodiscard]] Result<std::map<std::string, TrayDemand>> wanted_by_open_jobs(Store& store, const By& by,
                                                                            std::int64_t most = 50);

}  // namespace shimwright::store
