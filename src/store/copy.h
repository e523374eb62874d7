#pragma once

#include <functional>

#include "connection.h"

namespace shimwright::store {

/// Looks at a copy before it takes its name.
using CopyCheck = std::function<Result<void>(Connection& copy)>;

/// Copies the whole file of a connection to `out`, whole or not at all: under another name first, then checked by
/// SQLite and by `check`, brought to the disk, and renamed over what lies there. Codes: `backup_wrong`, those of
/// database_error().
[[nodiscard]] Result<void> lay_copy(Connection& connection, const QString& out, const CopyCheck& check = {});

/// Whether SQLite finds the file whole: its own check of structure and of foreign keys. The first thing it says.
[[nodiscard]] Result<std::optional<std::string>> fault_of_file(Connection& connection);

/// The structure alone, as SQLite advises to be asked of a file from elsewhere before anything else.
[[nodiscard]] Result<std::optional<std::string>> quick_fault_of_file(Connection& connection);

}  // namespace shimwright::store
