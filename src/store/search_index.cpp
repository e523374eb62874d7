#include "search_index.h"

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

/// The first text after all that begin with this one.
std::string after_all_with(std::u32string beginning) {
  ++beginning.back();
  return in_utf8(beginning);
}

std::vector<std::int64_t> first_numbers(const std::vector<Row>& rows) {
  std::vector<std::int64_t> numbers;
  for (const Row& row : rows) {
    numbers.push_back(number_in(row, 0));
  }
  return numbers;
}

/// `?, ?, ?`
std::string places(std::size_t count) {
  std::string text;
  for (std::size_t place = 0; place < count; ++place) {
    text += text.empty() ? "?" : ", ?";
  }
  return text;
}

std::vector<std::string> grams_within(const std::u32string& part) {
  std::vector<std::string> grams;
  for (std::size_t place = 0; place + 3 <= part.size(); ++place) {
    grams.push_back(in_utf8(part.substr(place, 3)));
  }
  std::sort(grams.begin(), grams.end());
  grams.erase(std::unique(grams.begin(), grams.end()), grams.end());
  return grams;
}

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
  for (const std::string& gram : grams_of(term.key)) {
    if (auto inserted =
            connection.execute("INSERT INTO search_gram (gram, term) VALUES (?, ?)", {gram, number_value(*id)});
        !inserted) {
      return inserted;
    }
  }
  return {};
}

Result<void> remove_search_terms_of(Connection& connection, const std::string& private_text) {
  auto removed = connection.execute(
      "DELETE FROM search_gram WHERE term IN (SELECT id FROM search_term WHERE private_text = ?)", {private_text});
  if (!removed) {
    return removed;
  }
  return connection.execute("DELETE FROM search_term WHERE private_text = ?", {private_text});
}

Result<std::vector<std::int64_t>> terms_that_may_hold(Connection& connection, const std::u32string& part) {
  Result<std::vector<Row>> found;
  if (part.size() < 3) {
    found = connection.rows("SELECT DISTINCT term FROM search_gram WHERE gram >= ? AND gram < ?",
                            {in_utf8(part), after_all_with(part)});
  } else {
    const std::vector<std::string> grams = grams_within(part);
    Row values(grams.begin(), grams.end());
    values.push_back(number_value(static_cast<std::int64_t>(grams.size())));
    found = connection.rows(
        "SELECT term FROM search_gram WHERE gram IN (" + places(grams.size()) + ") GROUP BY term HAVING count(*) = ?",
        values);
  }
  if (!found) {
    return passed_on(found);
  }
  return first_numbers(*found);
}

}  // namespace shimwright::store
