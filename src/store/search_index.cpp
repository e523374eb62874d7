#include "search_index.h"

#include <nlohmann/json.hpp>

#include "search_text.h"

namespace shimwright::store {

namespace {

Result<std::int64_t> next_term_id(Connection& connection) {
  auto last = connection.value("SELECT max(id) FROM search_term");
  if (!last) {
    return passed_on(last);
  }
  const auto* number = std::get_if<std::int64_t>(&*last);
  return number == nullptr ? 1 : *number + 1;
}

/// Stands behind every text that begins with another: no term holds it.
constexpr const char* behind_all = "\xF4\x8F\xBF\xBF";

}  // namespace

Result<void> add_search_term(Connection& connection, const std::string& job, const SearchTerm& term) {
  auto id = next_term_id(connection);
  if (!id) {
    return passed_on(id);
  }
  auto added = connection.execute(
      "INSERT INTO search_term (id, job, place, term, private_text) VALUES (?, ?, ?, ?, ?) "
      "ON CONFLICT (job, place, term) DO NOTHING",
      {number_value(*id), job, text_value(name_of(term.place)), in_utf8(term.key), optional_value(term.private_text)});
  if (!added || connection.changes() == 0) {
    return added;
  }
  for (const std::string& suffix : suffixes_of(term.key)) {
    if (auto inserted =
            connection.execute("INSERT INTO search_suffix (suffix, term) VALUES (?, ?)", {suffix, number_value(*id)});
        !inserted) {
      return inserted;
    }
  }
  return {};
}

Result<void> remove_search_terms_of(Connection& connection, const std::string& private_text) {
  auto removed = connection.execute(
      "DELETE FROM search_suffix WHERE term IN (SELECT id FROM search_term WHERE private_text = ?)", {private_text});
  if (!removed) {
    return removed;
  }
  return connection.execute("DELETE FROM search_term WHERE private_text = ?", {private_text});
}

Result<std::vector<HoldingTerm>> terms_that_hold(Connection& connection, const std::vector<std::u32string>& any_of,
                                                 std::int64_t most) {
  nlohmann::json sought = nlohmann::json::array();
  for (const std::u32string& each : any_of) {
    sought.push_back(in_utf8(each));
  }
  // Each text sought is one range of the index; what is found is bounded, however much there is.
  auto rows = connection.rows(
      "SELECT search_term.job, search_term.place, search_term.term FROM "
      "(SELECT DISTINCT search_suffix.term FROM json_each(?) AS sought CROSS JOIN search_suffix "
      "ON search_suffix.suffix >= sought.value AND search_suffix.suffix < sought.value || ? LIMIT ?) AS hit "
      "CROSS JOIN search_term ON search_term.id = hit.term",
      {sought.dump(), text_value(behind_all), number_value(most)});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<HoldingTerm> terms;
  terms.reserve(rows->size());
  for (const Row& row : *rows) {
    terms.push_back({text_in(row, 0), text_in(row, 1), text_in(row, 2)});
  }
  return terms;
}

}  // namespace shimwright::store
