#pragma once

#include <string>

#include "connection.h"
#include "shimwright/store/types.h"

/// The store-wide list of chain heads: one line for each time something was stored, each standing on the one before.
namespace shimwright::store {

/// SHA-256 over the list's hash before (empty at its beginning), position, job, seq and hash of the head, joined by
/// line feeds; none of them holds one.
[[nodiscard]] std::string list_hash(const std::string& before, std::int64_t position, const std::string& job,
                                    std::int64_t seq, const std::string& hash);

/// Where the list ends; position 0 and no hash while it is empty.
[[nodiscard]] Result<HeadsEnd> end_of_heads(Connection& connection);
[[nodiscard]] Result<void> add_head(Connection& connection, const std::string& job, std::int64_t seq,
                                    const std::string& hash);
[[nodiscard]] Result<bool> heads_hold(Connection& connection, const HeadsEnd& end);

/// Whether the list goes on unbroken from such an end to its own, and what it says last of a job is this entry.
[[nodiscard]] Result<bool> heads_go_on(Connection& connection, const HeadsEnd& from, const std::string& job,
                                       std::int64_t seq, const std::string& hash);

}  // namespace shimwright::store
