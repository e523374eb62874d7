#include "shimwright/store/vehicle_history.h"

#include <algorithm>
#include <map>
#include <utility>

#include <nlohmann/json.hpp>

#include "job_lists.h"
#include "seal_rows.h"
#include "shimwright/job/evolve.h"

namespace shimwright::store {

namespace {

/// The entry alone says that somebody sealed; whether the seal holds is looked at here.
Result<std::optional<record::SealStanding>> standing_of_seal(const Store& store, const LoadedJob& job, bool sealed) {
  if (!sealed) {
    return std::optional<record::SealStanding>();
  }
  auto check = seal_check(store, job);
  if (!check && check.error().code != "not_sealed") {
    return passed_on(check);
  }
  return std::optional(check ? check->standing : record::SealStanding::changed);
}

}  // namespace

Result<VehicleHistory> vehicle_history(Store& store, const std::string& vehicle_key, std::size_t most,
                                       const BackupWatch& watch) {
  auto summaries = store.jobs_of_vehicle(vehicle_key);
  if (!summaries) {
    return passed_on(summaries);
  }
  VehicleHistory history;
  history.vehicle = vehicle_key;
  const std::size_t read = std::min(most, summaries->size());
  history.older = summaries->size() - read;
  for (std::size_t at = 0; at < read; ++at) {
    if (watch.stop != nullptr && watch.stop->load()) {
      return refuse("stopped", "", SHIMWRIGHT_TEXT("store", "Stopped: the jobs were not read to their end."));
    }
    JobSummary& summary = (*summaries)[at];
    auto loaded = store.load(summary.id);
    if (!loaded) {
      return passed_on(loaded);
    }
    record::JobInLife life = record::job_in_life(job::fold(loaded->sheets, loaded->entries));
    auto seal = standing_of_seal(store, *loaded, life.sealed);
    if (!seal) {
      return passed_on(seal);
    }
    history.jobs.push_back({std::move(summary), std::move(life), *seal});
  }
  return history;
}

Result<VehicleHistory> vehicle_history(const std::string& store_path, const std::string& vehicle_key, std::size_t most,
                                       const BackupWatch& watch) {
  auto store = Store::open(store_path, {Mode::look_only, "", 0});
  if (!store) {
    return passed_on(store);
  }
  return vehicle_history(**store, vehicle_key, most, watch);
}

std::vector<record::Wear> wear_of(const VehicleHistory& history) {
  std::vector<record::JobInLife> lives;
  for (auto job = history.jobs.rbegin(); job != history.jobs.rend(); ++job) {
    lives.push_back(job->life);
  }
  return record::wear_of_packs(lives);
}

Result<std::vector<JobSummary>> jobs_named(const Store& store, const std::vector<std::string>& ids) {
  const nlohmann::json wanted = ids;
  auto found =
      job_list(store.connection(), "WHERE job.id IN (SELECT value FROM json_each(?) AS wanted)", {wanted.dump()});
  if (!found) {
    return passed_on(found);
  }
  std::map<std::string, JobSummary> by_id;
  for (JobSummary& job : *found) {
    by_id.emplace(job.id, std::move(job));
  }
  std::vector<JobSummary> all;
  for (const std::string& id : ids) {
    if (const auto job = by_id.find(id); job != by_id.end()) {
      all.push_back(job->second);
    }
  }
  return all;
}

}  // namespace shimwright::store
