#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "shimwright/quantity/error.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/store.h"

/// What is left when a store is damaged: its latest whole backup.
namespace shimwright::store {

/// A backup that passed the check, and what the damaged store still shows that came after it.
struct BackupOffer {
  struct Missing {
    std::int64_t jobs = 0;  ///< that have entries which the backup does not hold
    std::int64_t entries = 0;
  };

  std::string file;
  std::int64_t last_at_ms = 0;  ///< of its latest entry; 0 where it has none
  std::int64_t jobs = 0;
  std::int64_t entries = 0;
  std::optional<Missing> missing;  ///< nothing where the damaged store does not show it any more
  std::int64_t photos_gone = 0;    ///< or changed

  /// Nothing where every photo lies beside it.
  [[nodiscard]] std::optional<Message> told_of_photos() const;
  /// One sentence for the person who decides.
  [[nodiscard]] Message told() const;
};

/// The backup with the most entries among the files in `folder` that are of this store and pass the whole check, photos
/// beside them as well. Where the store does not even show its id any more, any store in the folder counts. Nothing
/// where there is none. Code: `stopped`.
[[nodiscard]] Result<std::optional<BackupOffer>> last_whole_backup(const std::string& store_path,
                                                                   const std::string& folder,
                                                                   const BackupWatch& watch = {});

/// Puts a backup in the place of a damaged store, which nobody may have open. The damaged file and its log are kept
/// beside it as `<store>.damaged-1` and so on; gives that name. Photos the backup has and the store lacks are put back
/// too. Until the last step nothing is changed. Codes: those of back_up() and Store::open().
[[nodiscard]] Result<std::string> put_back(const std::string& store_path, const std::string& backup,
                                           const Opening& opening);

}  // namespace shimwright::store
