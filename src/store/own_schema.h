#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "connection.h"

/// Whether a file's tables are those of this program, asked before anything is read by them.
namespace shimwright::store {

/// SHA-256 of the texts of a schema, hexadecimal.
[[nodiscard]] std::string schema_digest(const std::vector<Row>& texts);

/// That of a store of the newest version with nothing added and nothing missing. With it most stores are known without
/// making one anew to compare them with; a new step of the schema makes a new one, and the test says it.
inline constexpr std::string_view newest_schema = "c1a07c2e1666e729992454107ceb77195e66c4eb0051d90f55e9b98a4f71331b";

/// Whether every table, index and trigger is one this program makes, and no view or trigger was added. Of a newer store
/// it is not known, and counts as true.
[[nodiscard]] Result<bool> has_own_schema(Connection& connection);

/// Whether a store may be opened: each of our tables is there as this program makes it, and nothing was added that acts
/// by itself, a trigger or a virtual table. A view, an index or a table that a person added is left alone, and so is
/// an index or a trigger of ours that is missing: the check tells them. Code: `store_damaged`.
[[nodiscard]] Result<void> check_nothing_acts(Connection& connection);

}  // namespace shimwright::store
