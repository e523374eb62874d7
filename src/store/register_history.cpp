#include "register_history.h"

#include "shimwright/json/canonical.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

Result<void> add_change(Connection& connection, const std::string& table, const std::string& id,
                        const nlohmann::json& body, const By& by) {
  const auto bytes = json::canonical(body);
  if (!bytes) {
    return refuse("not_utf8", table + bytes.error().place,
                  SHIMWRIGHT_TEXT("store", "A text in this has broken characters; enter it again."));
  }
  return connection.execute(
      "INSERT INTO register_change (position, register, item, person, at_ms, offset_min, clock_went_back, body) "
      "VALUES ((SELECT coalesce(max(position), 0) + 1 FROM register_change), ?, ?, ?, ?, ?, ?, ?)",
      {table, id, by.person, number_value(by.moment.at_ms), number_value(by.moment.offset_min),
       flag_value(by.moment.clock_went_back), Bytes{*bytes}});
}

Result<std::vector<RegisterChange>> Registers::changes(const std::string& table, const std::string& id) const {
  auto rows = connection_->rows(
      "SELECT position, register, item, person, at_ms, offset_min, clock_went_back, body FROM register_change "
      "WHERE register = ? AND item = ? ORDER BY position",
      {table, id});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<RegisterChange> changes;
  for (const Row& row : *rows) {
    const job::Moment moment{number_in(row, 4), static_cast<int>(number_in(row, 5)), number_in(row, 6) != 0};
    changes.push_back(
        {number_in(row, 0), text_in(row, 1), text_in(row, 2), By{text_in(row, 3), moment}, bytes_in(row, 7)});
  }
  return changes;
}

}  // namespace shimwright::store
