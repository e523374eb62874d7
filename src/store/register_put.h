#pragma once

#include <functional>
#include <optional>
#include <string>

#include <nlohmann/json.hpp>

#include "connection.h"
#include "shimwright/store/types.h"

namespace shimwright::store {

/// What is written of one item, and how.
struct RegisterItem {
  std::string table;
  std::string id;
  std::string name;
  nlohmann::json body;  ///< for the history
};

/// An item and its line of history, in one transaction. Codes: `bad_id`, `bad_item`, `text_too_long`, `look_only`,
/// `not_utf8`.
[[nodiscard]] Result<void> put_item(Connection& connection, const RegisterItem& item, const By& by,
                                    const std::function<Result<void>(Connection&)>& write);

template <class Content>
void add_if_there(nlohmann::json& body, const char* key, const std::optional<Content>& content) {
  if (content) {
    body[key] = *content;
  }
}

/// A day of the calendar, or none. Code: `bad_date`.
[[nodiscard]] Result<void> check_date(const std::string& place, const std::optional<std::string>& day);
/// Nothing larger is reckoned with: 10 m, 10 kN·m.
inline constexpr std::int64_t most_amount = 9'999'999;
/// `most_amount` at most as well. Code: `bad_amount`.
[[nodiscard]] Result<void> check_least(const std::string& place, std::int64_t amount, std::int64_t least);

}  // namespace shimwright::store
