#pragma once

#include <cstdint>
#include <string>

#include "shimwright/quantity/error.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/rescue.h"
#include "shimwright/store/store.h"

/// Going back to a backup though the store is in order, or bringing one to another machine.
namespace shimwright::store {

/// What a backup holds, and what of the store at that place came after it. Nothing is changed; what lies at the place
/// is only looked at.
///
/// Codes: those of Store::open() for the backup; `backup_wrong` (it does not pass the check, or its tables are not
/// those of this program), `newer_backup`, `other_store` (it is of another store, and there are jobs in this one),
/// `same_file`, `stopped`.
[[nodiscard]] Result<BackupOffer> look_at_backup(const std::string& store_path, const std::string& backup,
                                                 const BackupWatch& watch = {});

/// One sentence for the person who decides whether to go back to it.
[[nodiscard]] Message told_before_restore(const BackupOffer& offer);

struct RestoreReport {
  std::string kept;  ///< the file that was there before, beside it; empty where nothing was
  std::int64_t jobs = 0;
  std::int64_t entries = 0;      ///< each compared with the backup's, hash for hash, as it lies in its place
  std::int64_t photos = 0;       ///< that were brought back
  std::int64_t photos_gone = 0;  ///< that lie beside neither as they were taken
  std::int64_t erased = 0;       ///< personal texts that were erased here after the backup: they stay erased
};

/// Lays a backup in the place of a store that nobody has open; where none is, it is a new one. What is there is kept
/// first, as `<store>.before-restore-1` and so on. A backup whose whole folder of photos was left behind is refused
/// (`backup_wrong`); single photos that were lost are counted. Codes: those of look_at_backup(), `locked`,
/// `restore_differs`, `disk_full`, `disk_fault`.
[[nodiscard]] Result<RestoreReport> restore(const std::string& store_path, const std::string& backup,
                                            const Opening& opening);

}  // namespace shimwright::store
