#pragma once

#include <string>
#include <vector>

#include "connection.h"
#include "shimwright/job/state.h"
#include "shimwright/record/hash.h"

namespace shimwright::store {

/// The entries of a job as they lie there, by number.
[[nodiscard]] Result<std::vector<record::StoredEntry>> stored_entries(Connection& connection, const std::string& job);

/// Sheets ready to open or fold a job on. Refused as the readers of sheets refuse.
[[nodiscard]] Result<job::Sheets> read_sheets(const std::string& sheet_json, const std::string& spec_json);

}  // namespace shimwright::store
