#include "taken_back.h"

#include <nlohmann/json.hpp>

#include "search_terms.h"
#include "search_text.h"
#include "shimwright/job/codec.h"

namespace shimwright::store {

namespace {

// Entries whose terms can be taken back; the opening of a job cannot.
constexpr const char* taken_back_sql =
    "SELECT entry.job, entry.kind, entry.kind_version, entry.body FROM json_each(?) AS wanted CROSS JOIN withdrawal ON "
    "withdrawal.job = wanted.value CROSS JOIN entry ON entry.job = withdrawal.job AND entry.seq = withdrawal.entry "
    "WHERE entry.kind IN ('parts_fitted', 'written')";
constexpr const char* counting_sql =
    "SELECT entry.job, entry.kind, entry.kind_version, entry.body FROM json_each(?) AS wanted CROSS JOIN entry ON "
    "entry.job = wanted.value WHERE entry.kind IN ('parts_fitted', 'written') AND NOT EXISTS (SELECT 1 FROM withdrawal "
    "WHERE withdrawal.job = entry.job AND withdrawal.entry = entry.seq)";

std::string jobs_of(const std::set<TermOfJob>& terms) {
  std::set<std::string> jobs;
  for (const TermOfJob& each : terms) {
    jobs.insert(std::get<0>(each));
  }
  return nlohmann::json(jobs).dump();
}

/// The terms of the entries that the statement finds for the jobs of `of`.
Result<std::set<TermOfJob>> terms_in(Connection& connection, const char* sql, const std::set<TermOfJob>& of) {
  auto rows = connection.rows(sql, {jobs_of(of)});
  if (!rows) {
    return passed_on(rows);
  }
  std::set<TermOfJob> terms;
  for (const Row& row : *rows) {
    auto body = job::decode(text_in(row, 1), static_cast<int>(number_in(row, 2)), bytes_in(row, 3));
    if (!body) {
      return passed_on(body);
    }
    for (const SearchTerm& each : terms_of_texts(*body)) {
      terms.emplace(text_in(row, 0), std::string(name_of(each.place)), in_utf8(each.key));
    }
  }
  return terms;
}

}  // namespace

Result<std::set<TermOfJob>> taken_back(Connection& connection, const std::set<TermOfJob>& terms) {
  std::set<TermOfJob> found;
  if (terms.empty()) {
    return found;
  }
  auto withdrawn = terms_in(connection, taken_back_sql, terms);
  if (!withdrawn) {
    return withdrawn;
  }
  for (const TermOfJob& each : terms) {
    if (withdrawn->count(each) != 0) {
      found.insert(each);
    }
  }
  if (found.empty()) {
    return found;
  }
  auto counting = terms_in(connection, counting_sql, found);
  if (!counting) {
    return counting;
  }
  for (const TermOfJob& each : *counting) {
    found.erase(each);
  }
  return found;
}

}  // namespace shimwright::store
