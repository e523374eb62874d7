#pragma once

#include <set>
#include <string>
#include <tuple>

#include "connection.h"

namespace shimwright::store {

/// Job, place as name_of(FoundIn) has it, and term.
using TermOfJob = std::tuple<std::string, std::string, std::string>;

/// Those of these terms whose entries were all taken back. A term stays in the index when its entry is taken back,
/// since it was on the bench once; it has to be told from one that counts.
[[nodiscard]] Result<std::set<TermOfJob>> taken_back(Connection& connection, const std::set<TermOfJob>& terms);

}  // namespace shimwright::store
