#pragma once

#include <string>
#include <vector>

#include "connection.h"
#include "shimwright/job/command.h"
#include "shimwright/job/state.h"
#include "shimwright/record/hash.h"

namespace shimwright::store {

/// Entries of a job with the bytes they are kept as, one at least, and the personal texts a search may find.
struct Chained {
  const std::string& job;
  const std::vector<record::StoredEntry>& stored;
  const std::vector<job::Entry>& entries;  ///< the same ones
  const std::vector<job::PrivateText>& texts;
};

/// Keeps entries that follow the last one stored, with all that is derived. Their personal texts and sheets are there.
[[nodiscard]] Result<void> append_chained(Connection& connection, const Chained& given, const job::JobState& after);

/// Store::append() within a transaction that is open already.
[[nodiscard]] Result<void> append_within(Connection& connection, const std::string& job,
                                         const std::vector<job::Entry>& entries,
                                         const std::vector<job::PrivateText>& texts, const job::JobState& after);

}  // namespace shimwright::store
