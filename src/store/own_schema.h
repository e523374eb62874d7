#pragma once

#include "connection.h"

/// Whether a file's tables are those of this program, asked before anything is read by them.
namespace shimwright::store {

/// Whether every table, index and trigger is one this program makes, and no view or trigger was added. Of a newer store
/// it is not known, and counts as true.
[[nodiscard]] Result<bool> has_own_schema(Connection& connection);

/// Whether a store may be opened: each of our tables is there as this program makes it, and nothing was added that acts
/// by itself, a trigger or a virtual table. A view, an index or a table that a person added is left alone, and so is
/// an index or a trigger of ours that is missing: the check tells them. Code: `store_damaged`.
[[nodiscard]] Result<void> check_nothing_acts(Connection& connection);

}  // namespace shimwright::store
