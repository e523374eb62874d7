#pragma once

#include <string>

#include "connection.h"
#include "fixed_text.h"
#include "shimwright/store/types.h"

/// What came with a job from another store, and what is known here of where it came from.
namespace shimwright::store {

/// Entries `first` to `last` of a job were taken in from that store.
struct Arrival {
  std::string from_store;
  std::int64_t first = 0;
  std::int64_t last = 0;
};

/// Into the history, under the register `job`.
[[nodiscard]] Result<void> note_arrival(Connection& connection, const std::string& job, const Arrival& arrival,
                                        const By& by);
/// Whether that entry was taken in and not made here. A seal that was taken in names the end of another store's list of
/// chain heads.
[[nodiscard]] Result<bool> arrived(Connection& connection, const std::string& job, std::int64_t seq);

/// Keeps an issue for the jobs that came with it. It is not offered for new ones: nobody here entered it. Its name and
/// number may be taken here by another issue, so its row carries its hash behind the name.
[[nodiscard]] Result<void> keep_sheet_of_arrival(Connection& connection, FixedText table, const SheetIssue& issue);

}  // namespace shimwright::store
