#pragma once

#include <vector>

#include "connection.h"

/// What was erased stays erased, though a backup of before takes the place of the store.
namespace shimwright::store {

/// Ids of personal texts that are erased in the store at that place. What it does not show any more cannot be asked of
/// it.
[[nodiscard]] std::vector<Row> erased_here(const QString& store_path);
/// Those of them that the copy still has are erased in it; gives how many.
[[nodiscard]] Result<std::int64_t> erase_again(Connection& copy, const std::vector<Row>& ids, std::int64_t now_ms);

}  // namespace shimwright::store
