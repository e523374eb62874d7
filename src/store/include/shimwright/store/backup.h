#pragma once

#include <atomic>
#include <cstdint>
#include <functional>
#include <string>

#include "shimwright/quantity/error.h"

namespace shimwright::store {

/// Lets work in the background be followed and stopped.
struct BackupWatch {
  const std::atomic<bool>* stop = nullptr;  ///< looked at between photos, jobs and steps
  std::function<void(std::int64_t done, std::int64_t of_all)> progress = {};  ///< photos and steps
};

struct BackupReport {
  std::int64_t entries = 0;
  std::int64_t photos_copied = 0;
  std::int64_t photos_there = 0;  ///< lay there already, with the right content
  std::int64_t photos_gone = 0;   ///< lie in neither place as they were taken: the backup is made without them
  std::string put_aside;  ///< new name of a backup that had what the store went back behind; empty: none was there
};

/// Copies the store at `store_path` to the file `out`, photos to `photos` beside it. Opens its own connection, so it
/// may run in any thread while the store is written. The copy is made under another name, checked as check() checks,
/// brought to the disk, and only then takes its name. Photos come first, each compared with its hash;
/// one that was lost keeps no entry from being backed up, it is counted.
///
/// Codes of refusal: those of Store::open() for the store; `backup_in_the_way` (something other than an older backup of
/// this store lies at `out`), `backup_wrong` (the copy did not pass the check), `backup_runs` (another one is made in
/// that folder), `stopped`, `disk_full`, `disk_fault`.
///
/// A backup of this store with entries that the store has no more, since it went back to an earlier one, is put aside
/// as `<name>-before-1` and so on.
[[nodiscard]] Result<BackupReport> back_up(const std::string& store_path, const std::string& out,
                                           const BackupWatch& watch = {});

}  // namespace shimwright::store
