#pragma once

#include <string>

#include <nlohmann/json.hpp>

#include "connection.h"
#include "shimwright/store/types.h"

namespace shimwright::store {

/// Writes what an item of a register was made to. `body` holds no fractions. Code: `not_utf8`.
[[nodiscard]] Result<void> add_change(Connection& connection, const std::string& table, const std::string& id,
                                      const nlohmann::json& body, const By& by);

}  // namespace shimwright::store
