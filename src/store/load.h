#pragma once

#include <string>
#include <vector>

#include "connection.h"
#include "shimwright/record/hash.h"

namespace shimwright::store {

/// The entries of a job as they lie there, by number.
[[nodiscard]] Result<std::vector<record::StoredEntry>> stored_entries(Connection& connection, const std::string& job);

}  // namespace shimwright::store
