#include <algorithm>
#include <map>
#include <set>

#include "check_parts.h"
#include "job_row.h"
#include "projections.h"
#include "schema.h"
#include "search_terms.h"
#include "search_text.h"
#include "shimwright/job/evolve.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

namespace {

void add_difference(CheckReport& report, std::string_view table, const std::string& job,
                    std::optional<std::int64_t> seq) {
  add_finding(report, "projection_differs", std::string(table), job, seq,
              {SHIMWRIGHT_TEXT("store", "What is kept in table {0} is not what follows from the entries."),
               {std::string(table)}});
}

/// The number of the entry where two lists of rows part.
std::optional<std::int64_t> first_difference(const std::vector<Row>& left, const std::vector<Row>& right) {
  const auto [at_left, at_right] = std::mismatch(left.begin(), left.end(), right.begin(), right.end());
  if (at_left != left.end() || at_right != right.end()) {
    return number_in(at_left != left.end() ? *at_left : *at_right, 1);
  }
  return std::nullopt;
}

Result<void> check_tables(Connection& connection, const CheckedJob& job, CheckReport& report) {
  std::map<const ProjectionTable*, std::vector<Row>> expected;
  for (const job::Entry& entry : job.entries) {
    for (ProjectedRow& row : projected_rows(job.id, entry)) {
      expected[row.table].push_back(std::move(row.values));
    }
  }
  for (const ProjectionTable& table : projection_tables()) {
    auto kept = connection.rows(select_from(table), {job.id});
    if (!kept) {
      return passed_on(kept);
    }
    const auto difference = first_difference(*kept, expected[&table]);
    if (difference) {
      add_difference(report, table.name, job.id, *difference);
    }
  }
  return {};
}

Result<void> check_job_row(Connection& connection, const CheckedJob& job, const job::JobState& state,
                           const std::string& vehicle_key, CheckReport& report) {
  auto kept = connection.rows(std::string("SELECT ") + job_columns + " FROM job WHERE id = ?", {job.id});
  if (!kept) {
    return passed_on(kept);
  }
  if (*kept != std::vector<Row>{job_row(job.id, state)}) {
    add_difference(report, "job", job.id, std::nullopt);
  }
  auto vehicle = connection.value("SELECT count(*) FROM vehicle WHERE key = ?", {vehicle_key});
  if (!vehicle) {
    return passed_on(vehicle);
  }
  if (*vehicle != number_value(1)) {
    add_difference(report, "vehicle", job.id, std::nullopt);
  }
  return {};
}

Result<PrivateTexts> readable_texts(Connection& connection, const job::Opened& opened) {
  PrivateTexts texts;
  for (const auto* reference : {&opened.plate, &opened.customer_reference}) {
    if (*reference) {
      auto text =
          connection.rows("SELECT text FROM private_text WHERE id = ? AND text IS NOT NULL", {(*reference)->id});
      if (!text) {
        return passed_on(text);
      }
      if (!text->empty()) {
        texts.emplace((*reference)->id, text_in(text->front(), 0));
      }
    }
  }
  return texts;
}

using PartsByTerm = std::map<std::pair<std::string, std::string>, std::set<std::string>>;

/// The terms of a job with the rows of their index; without them where the file has another index.
Result<PartsByTerm> kept_parts(Connection& connection, const std::string& job, bool indexed) {
  auto rows =
      connection.rows(indexed ? "SELECT search_term.place, search_term.term, search_suffix.suffix FROM search_term "
                                "LEFT JOIN search_suffix ON search_suffix.term = search_term.id WHERE "
                                "search_term.job = ?"
                              : "SELECT place, term, NULL FROM search_term WHERE job = ?",
                      {job});
  if (!rows) {
    return passed_on(rows);
  }
  PartsByTerm parts;
  for (const Row& row : *rows) {
    auto& of_term = parts[{text_in(row, 0), text_in(row, 1)}];
    if (const auto part = optional_text_in(row, 2); part) {
      of_term.insert(*part);
    }
  }
  return parts;
}

Result<void> check_search(Connection& connection, const CheckedJob& job, const job::JobState& state,
                          const job::Opened& opened, CheckReport& report) {
  auto texts = readable_texts(connection, opened);
  if (!texts) {
    return passed_on(texts);
  }
  auto indexed = has_suffixes(connection);
  if (!indexed) {
    return passed_on(indexed);
  }
  PartsByTerm expected;
  for (const job::Entry& entry : job.entries) {
    for (const SearchTerm& term : search_terms_of(entry, state.sheets.job.get(), *texts)) {
      const auto parts = *indexed ? suffixes_of(term.key) : std::vector<std::string>();
      expected[{std::string(name_of(term.place)), in_utf8(term.key)}] = {parts.begin(), parts.end()};
    }
  }
  auto kept = kept_parts(connection, job.id, *indexed);
  if (!kept) {
    return passed_on(kept);
  }
  if (*kept != expected) {
    add_difference(report, "search_term", job.id, std::nullopt);
  }
  return {};
}

/// The job folded on its own sheets; nothing where these cannot be read, which check_sheets() tells.
Result<std::optional<job::JobState>> folded(SheetShelf& shelf, const CheckedJob& job) {
  const auto* opened = job.entries.empty() ? nullptr : std::get_if<job::Opened>(&job.entries.front().body);
  if (opened == nullptr) {
    return std::optional<job::JobState>();
  }
  auto sheets = shelf.sheets(opened->sheet_hash, opened->spec_hash);
  if (!sheets) {
    return std::optional<job::JobState>();
  }
  return std::optional(job::fold(std::move(*sheets), job.entries));
}

}  // namespace

Result<void> check_derived(Connection& connection, SheetShelf& shelf, const CheckedJob& job, CheckReport& report) {
  if (!job.readable()) {
    // Nothing can be made anew of it; check_job_chain() says why.
    return {};
  }
  if (auto checked = check_tables(connection, job, report); !checked) {
    return checked;
  }
  auto state = folded(shelf, job);
  if (!state) {
    return passed_on(state);
  }
  const std::optional<job::JobState>& found = *state;
  if (!found || !found->opened) {
    add_finding(
        report, "not_foldable", "entry", job.id, 1,
        {SHIMWRIGHT_TEXT("store", "This job does not begin with its opening, or its sheets are not to be read."), {}});
    return {};
  }
  if (auto checked = check_job_row(connection, job, *found, found->opened->vehicle_key, report); !checked) {
    return checked;
  }
  return check_search(connection, job, *found, *found->opened, report);
}

Result<void> check_listed_jobs(Connection& connection, CheckReport& report) {
  auto rows = connection.rows("SELECT id FROM job WHERE NOT EXISTS (SELECT 1 FROM entry WHERE entry.job = job.id)");
  if (!rows) {
    return passed_on(rows);
  }
  for (const Row& row : *rows) {
    add_difference(report, "job", text_in(row, 0), std::nullopt);
  }
  return {};
}

}  // namespace shimwright::store
