#include "offered_sheets.h"
#include "register_history.h"
#include "shimwright/record/hash.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

namespace {

/// The two tables are alike; only what is read into them differs.
struct SheetTable {
  const char* name;
  const char* insert;
  const char* by_hash;
  const char* by_issue;
  const char* latest;
};

constexpr SheetTable job_sheet_table = {
    "job_sheet", "INSERT INTO job_sheet (hash, id, name, issue, json, added_at_ms) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (hash) DO NOTHING",
    "SELECT hash, id, name, issue, json, added_at_ms FROM job_sheet WHERE hash = ?",
    "SELECT hash FROM " SHIMWRIGHT_OFFERED("job_sheet") " WHERE name = ? AND issue = ?",
    "SELECT hash, id, name, issue, json, added_at_ms FROM " SHIMWRIGHT_OFFERED("job_sheet") " AS each WHERE issue = (SELECT max(other.issue) FROM "
    SHIMWRIGHT_OFFERED("job_sheet") " AS other WHERE other.name = each.name) ORDER BY name"};
constexpr SheetTable spec_sheet_table = {
    "spec_sheet", "INSERT INTO spec_sheet (hash, id, name, issue, json, added_at_ms) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (hash) DO NOTHING",
    "SELECT hash, id, name, issue, json, added_at_ms FROM spec_sheet WHERE hash = ?",
    "SELECT hash FROM " SHIMWRIGHT_OFFERED("spec_sheet") " WHERE name = ? AND issue = ?",
    "SELECT hash, id, name, issue, json, added_at_ms FROM " SHIMWRIGHT_OFFERED("spec_sheet") " AS each WHERE issue = (SELECT max(other.issue) FROM "
    SHIMWRIGHT_OFFERED("spec_sheet") " AS other WHERE other.name = each.name) ORDER BY name"};

SheetIssue issue_of(const Row& row) {
  const std::string name = text_in(row, 2);
  return {text_in(row, 0),   text_in(row, 1),  name.substr(0, name.find('\n')),
          number_in(row, 3), bytes_in(row, 4), number_in(row, 5)};
}

Result<std::vector<SheetIssue>> issues(Connection& connection, const char* sql, const Row& values) {
  auto rows = connection.rows(sql, values);
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<SheetIssue> list;
  for (const Row& row : *rows) {
    list.push_back(issue_of(row));
  }
  return list;
}

Result<SheetIssue> issue_with_hash(Connection& connection, const SheetTable& table, const std::string& hash) {
  auto found = issues(connection, table.by_hash, {hash});
  if (!found) {
    return passed_on(found);
  }
  if (found->empty()) {
    return refuse("unknown_sheet", hash,
                  SHIMWRIGHT_TEXT("store", "This issue of a sheet is not in the store; add it first."));
  }
  return std::move(found->front());
}

Result<void> insert_issue(Connection& connection, const SheetTable& table, const SheetIssue& issue, const By& by) {
  auto transaction = Transaction::begin(connection);
  if (!transaction) {
    return passed_on(transaction);
  }
  auto inserted = connection.execute(table.insert, {issue.hash, issue.id, issue.name, number_value(issue.issue),
                                                    Bytes{issue.json}, number_value(issue.added_at_ms)});
  if (!inserted) {
    return inserted;
  }
  const nlohmann::json body{{"hash", issue.hash}, {"id", issue.id}, {"name", issue.name}, {"issue", issue.issue}};
  if (auto added = add_change(connection, table.name, issue.hash, body, by); !added) {
    return added;
  }
  return transaction->commit();
}

Result<std::string> add_issue(Connection& connection, const SheetTable& table, const SheetIssue& issue, const By& by) {
  auto known = connection.value(table.by_issue, {issue.name, number_value(issue.issue)});
  if (!known) {
    return passed_on(known);
  }
  if (*known == Value(issue.hash)) {
    return issue.hash;
  }
  if (!std::holds_alternative<Nothing>(*known)) {
    return refuse("issue_taken", table.name,
                  SHIMWRIGHT_TEXT("store",
                                  "Issue {0} of {1} is in the store with other values; give the changed sheet "
                                  "the next issue number."),
                  {std::to_string(issue.issue), issue.name});
  }
  if (auto inserted = insert_issue(connection, table, issue, by); !inserted) {
    return passed_on(inserted);
  }
  return issue.hash;
}

}  // namespace

Result<std::string> Registers::add_job_sheet(const std::string& json, const By& by) {
  auto read = sheet::read_job_sheet(json);
  if (!read) {
    return passed_on(read);
  }
  return add_issue(*connection_, job_sheet_table,
                   {record::sha256_hex(json), read->id, read->name, read->issue, json, by.moment.at_ms}, by);
}

Result<std::string> Registers::add_spec_sheet(const std::string& json, const By& by) {
  auto read = sheet::read_spec_sheet(json);
  if (!read) {
    return passed_on(read);
  }
  return add_issue(*connection_, spec_sheet_table,
                   {record::sha256_hex(json), read->id, read->gearbox, read->issue, json, by.moment.at_ms}, by);
}

Result<std::vector<SheetIssue>> Registers::job_sheets() const {
  return issues(*connection_, job_sheet_table.latest, {});
}

Result<std::vector<SheetIssue>> Registers::spec_sheets() const {
  return issues(*connection_, spec_sheet_table.latest, {});
}

Result<SheetIssue> Registers::job_sheet(const std::string& hash) const {
  return issue_with_hash(*connection_, job_sheet_table, hash);
}

Result<SheetIssue> Registers::spec_sheet(const std::string& hash) const {
  return issue_with_hash(*connection_, spec_sheet_table, hash);
}

}  // namespace shimwright::store
