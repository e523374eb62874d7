#include "arrival.h"

#include <nlohmann/json.hpp>

#include "register_history.h"

namespace shimwright::store {

Result<void> note_arrival(Connection& connection, const std::string& job, const Arrival& arrival, const By& by) {
  return add_change(
      connection, "job", job,
      nlohmann::json{{"imported_from", arrival.from_store}, {"first", arrival.first}, {"last", arrival.last}}, by);
}

Result<bool> arrived(Connection& connection, const std::string& job, std::int64_t seq) {
  auto rows =
      connection.rows("SELECT body FROM register_change WHERE register = 'job' AND item = ? ORDER BY position", {job});
  if (!rows) {
    return passed_on(rows);
  }
  for (const Row& row : *rows) {
    const auto body = nlohmann::json::parse(bytes_in(row, 0), nullptr, false);
    const auto number = [&body](const char* key) {
      return body.is_object() && body.contains(key) && body[key].is_number_integer() ? body[key].get<std::int64_t>()
                                                                                     : 0;
    };
    if (number("first") <= seq && seq <= number("last")) {
      return true;
    }
  }
  return false;
}

Result<void> keep_sheet_of_arrival(Connection& connection, FixedText table, const SheetIssue& issue) {
  const std::string name = issue.name + "\n" + issue.hash;
  return connection.execute(
      "INSERT INTO " + std::string(table.text()) +
          " (hash, id, name, issue, json, added_at_ms) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT "
          "(hash) DO NOTHING",
      {issue.hash, issue.id, name, number_value(issue.issue), Bytes{issue.json}, number_value(issue.added_at_ms)});
}

}  // namespace shimwright::store
