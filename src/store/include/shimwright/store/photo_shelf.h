#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/store/backup.h"

/// The folder of photos beside a store, as a whole. Each of these calls opens its own connection, so it may run in any
/// thread while the store is written.
namespace shimwright::store {

struct MissingPhotos {
  std::int64_t photos = 0;        ///< that the store names
  std::int64_t missing = 0;       ///< whose file is gone, or is not as long as it was when it was taken
  std::vector<std::string> jobs;  ///< numbers of the jobs that name one of those, in order
};

/// Looks for every file, without reading one: whether a photo was changed is told by check(). Codes: those of
/// Store::open(), `stopped`.
[[nodiscard]] Result<MissingPhotos> missing_photos(const std::string& store_path, const BackupWatch& watch = {});

struct PhotosBrought {
  std::int64_t copied = 0;
  std::int64_t there = 0;  ///< lay there already, with the right content
  std::int64_t gone = 0;   ///< lie in neither place as they were taken
};

/// Copies what is missing beside the store from beside a backup. Codes: those of Store::open(), `stopped`, `disk_full`,
/// `disk_fault`.
[[nodiscard]] Result<PhotosBrought> bring_back_photos(const std::string& store_path, const std::string& backup,
                                                      const BackupWatch& watch = {});

}  // namespace shimwright::store
