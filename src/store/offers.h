#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>

#include "check_parts.h"
#include "shimwright/store/rescue.h"

/// What a backup holds against what a store still shows.
namespace shimwright::store {

/// As much of a store as can still be read.
struct Remains {
  Value id;
  std::optional<std::map<std::string, std::int64_t>> ends;  ///< last entry of each job
};

[[nodiscard]] Remains remains_of(const QString& path);

/// A backup of this program, of today or before, whose tables are the program's own: nothing else in it has been read
/// by then. Codes: `not_a_store`, `newer_backup`, `backup_wrong`, `store_damaged`, `cannot_open`.
[[nodiscard]] Result<std::unique_ptr<Connection>> open_backup(const std::string& backup);

/// The offer of a backup that passed its check.
[[nodiscard]] Result<BackupOffer> offer_made(Connection& backup, const CheckReport& report, const Remains& remains);

}  // namespace shimwright::store
