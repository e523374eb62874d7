#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "shimwright/job/command.h"
#include "shimwright/job/decide.h"
#include "shimwright/job/evolve.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

/// A job someone works on: read once, then kept in step with the store, command by command. What its state shows is on
/// the disk.
class JobInHand {
 public:
  /// A job not opened yet, on sheets that are in the store. Code: `unknown_sheet`, and as the readers of sheets refuse.
  [[nodiscard]] static Result<JobInHand> begin(Store& store, std::string id, const std::string& sheet_hash,
                                               const std::string& spec_hash);
  /// Codes: as Store::load().
  [[nodiscard]] static Result<JobInHand> load(Store& store, std::string id);

  [[nodiscard]] const std::string& id() const { return id_; }
  [[nodiscard]] const job::JobState& state() const { return state_; }
  /// What decide may know beyond the job, as the store has it now. For a job not opened yet the vehicle is that key.
  [[nodiscard]] Result<job::Context> context(const By& by, const std::string& vehicle_key = {}) const;

  /// Decides, stores, and only then takes over; gives the entries that followed. Refused as decide() and
  /// Store::append() refuse: then nothing was stored and nothing changed.
  [[nodiscard]] Result<std::vector<job::Entry>> execute(const job::Command& command, const job::Context& context);

 private:
  JobInHand(Store& store, std::string id, job::JobState state)
      : store_(&store), id_(std::move(id)), state_(std::move(state)) {}

  void go_back_to(std::size_t entries);

  Store* store_;
  std::string id_;
  job::JobState state_;
};

}  // namespace shimwright::store
