#pragma once

#include <string>
#include <vector>

#include "connection.h"
#include "shimwright/job/command.h"
#include "shimwright/job/state.h"

namespace shimwright::store {

/// Store::append() within a transaction that is open already.
[[nodiscard]] Result<void> append_within(Connection& connection, const std::string& job,
                                         const std::vector<job::Entry>& entries,
                                         const std::vector<job::PrivateText>& texts, const job::JobState& after);

}  // namespace shimwright::store
