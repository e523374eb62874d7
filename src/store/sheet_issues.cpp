#include "sheet_issues.h"

#include "offered_sheets.h"
#include "register_history.h"
#include "schema.h"
#include "shimwright/record/hash.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/spec_sheet.h"

namespace shimwright::store {

const SheetTable job_sheet_table = {
    "job_sheet",
    "INSERT INTO job_sheet (hash, id, name, issue, json, added_at_ms) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (hash) DO NOTHING",
    "SELECT hash, id, name, issue, json, added_at_ms FROM job_sheet WHERE hash = ?",
    "SELECT hash FROM " SHIMWRIGHT_OFFERED("job_sheet") " WHERE name = ? AND issue = ?",
    "SELECT hash, id, name, issue, json, added_at_ms FROM " SHIMWRIGHT_OFFERED("job_sheet") " WHERE name = ? ORDER BY issue DESC",
    "SELECT hash, id, name, issue, json, added_at_ms FROM " SHIMWRIGHT_OFFERED("job_sheet") " AS each WHERE issue = (SELECT "
    "max(other.issue) FROM " SHIMWRIGHT_OFFERED("job_sheet") " AS other WHERE other.name = each.name) ORDER BY name"};
const SheetTable spec_sheet_table = {
    "spec_sheet",
    "INSERT INTO spec_sheet (hash, id, name, issue, json, added_at_ms) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (hash) DO NOTHING",
    "SELECT hash, id, name, issue, json, added_at_ms FROM spec_sheet WHERE hash = ?",
    "SELECT hash FROM " SHIMWRIGHT_OFFERED("spec_sheet") " WHERE name = ? AND issue = ?",
    "SELECT hash, id, name, issue, json, added_at_ms FROM " SHIMWRIGHT_OFFERED("spec_sheet") " WHERE name = ? ORDER BY issue DESC",
    "SELECT hash, id, name, issue, json, added_at_ms FROM " SHIMWRIGHT_OFFERED("spec_sheet") " AS each WHERE issue = (SELECT "
    "max(other.issue) FROM " SHIMWRIGHT_OFFERED("spec_sheet") " AS other WHERE other.name = each.name) ORDER BY name"};

namespace {

tl::unexpected<Error> no_such_sheet(const std::string& hash) {
  return refuse("unknown_sheet", hash,
                SHIMWRIGHT_TEXT("store", "This issue of a sheet is not in the store; add it first."));
}

/// What was taken away goes into the history as well, so that the check finds a row changed beside the program.
nlohmann::json body_of(const SheetIssue& issue, const std::vector<sheet::TakenAway>& lost) {
  nlohmann::json body{{"hash", issue.hash}, {"id", issue.id}, {"name", issue.name}, {"issue", issue.issue}};
  for (const sheet::TakenAway& each : lost) {
    body["taken_away"].push_back(
        {{"step", each.step}, {"kind", name_of(each.guard)}, {"text", each.text}, {"reason", each.reason}});
  }
  return body;
}

Result<void> insert_lost(Connection& connection, const std::string& hash, const std::vector<sheet::TakenAway>& lost) {
  std::int64_t item = 0;
  for (const sheet::TakenAway& each : lost) {
    auto inserted = connection.execute(
        "INSERT INTO taken_away (sheet, item, step, kind, text, reason) VALUES (?, ?, ?, ?, ?, ?)",
        {hash, number_value(++item), each.step, text_value(name_of(each.guard)), each.text, each.reason});
    if (!inserted) {
      return inserted;
    }
  }
  return {};
}

/// Values that were invented once do not become real by a new issue of the same name.
Result<void> keeps_its_mark(Connection& connection, const SheetTable& table, const SheetIssue& issue,
                            bool demonstration) {
  auto others = sheet_issues(connection, table.by_name, {issue.name});
  if (!others) {
    return passed_on(others);
  }
  for (const SheetIssue& each : *others) {
    auto marked = is_demonstration(table, each);
    if (!marked) {
      return passed_on(marked);
    }
    if (*marked && !demonstration) {
      return refuse("mark_lost", "/demonstration",
                    SHIMWRIGHT_TEXT("store",
                                    "{0} is a demonstration sheet and its issues stay so; enter a sheet with real "
                                    "values under another name."),
                    {issue.name});
    }
  }
  return {};
}

Result<std::string> add_issue(Connection& connection, const SheetTable& table, const SheetIssue& issue,
                              const std::vector<sheet::TakenAway>& lost, const By& by) {
  auto inserted = connection.execute(table.insert, {issue.hash, issue.id, issue.name, number_value(issue.issue),
                                                    Bytes{issue.json}, number_value(issue.added_at_ms)});
  if (!inserted) {
    return passed_on(inserted);
  }
  if (auto kept = insert_lost(connection, issue.hash, lost); !kept) {
    return passed_on(kept);
  }
  if (auto added = add_change(connection, table.name, issue.hash, body_of(issue, lost), by); !added) {
    return passed_on(added);
  }
  return issue.hash;
}

/// True where these very bytes are in the store. Code: `issue_taken`.
Result<bool> is_there(Connection& connection, const SheetTable& table, const SheetIssue& issue) {
  auto known = connection.value(table.by_issue, {issue.name, number_value(issue.issue)});
  if (!known) {
    return passed_on(known);
  }
  if (*known == Value(issue.hash)) {
    return true;
  }
  if (!std::holds_alternative<Nothing>(*known)) {
    return refuse("issue_taken", table.name,
                  SHIMWRIGHT_TEXT("store",
                                  "Issue {0} of {1} is in the store with other values; give the changed sheet "
                                  "the next issue number."),
                  {std::to_string(issue.issue), issue.name});
  }
  return false;
}

/// What this issue lost against the one before it, each with its reason.
Result<std::vector<sheet::TakenAway>> lost_since(Connection& connection, const sheet::JobSheet& sheet,
                                                 const std::vector<sheet::TakenAway>& reasons) {
  auto others = sheet_issues(connection, job_sheet_table.by_name, {sheet.name});
  if (!others) {
    return passed_on(others);
  }
  for (const SheetIssue& each : *others) {
    if (each.issue < sheet.issue) {
      auto before = sheet::read_job_sheet(each.json);
      return before ? sheet::taken_away_for(*before, sheet, reasons) : tl::make_unexpected(std::move(before.error()));
    }
  }
  return std::vector<sheet::TakenAway>();
}

Result<bool> was_checked(Connection& connection, const std::string& hash) {
  auto there = has_sheet_checks(connection);
  if (!there || !*there) {
    return there;
  }
  auto found = connection.value("SELECT 1 FROM sheet_check WHERE sheet = ? LIMIT 1", {hash});
  if (!found) {
    return passed_on(found);
  }
  return *found == number_value(1);
}

}  // namespace

Result<std::vector<SheetIssue>> sheet_issues(Connection& connection, const char* sql, const Row& values) {
  auto rows = connection.rows(sql, values);
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<SheetIssue> list;
  for (const Row& row : *rows) {
    const std::string name = text_in(row, 2);
    list.push_back({text_in(row, 0), text_in(row, 1), name.substr(0, name.find('\n')), number_in(row, 3),
                    bytes_in(row, 4), number_in(row, 5)});
  }
  return list;
}

Result<SheetIssue> sheet_with_hash(Connection& connection, const SheetTable& table, const std::string& hash) {
  auto found = sheet_issues(connection, table.by_hash, {hash});
  if (!found) {
    return passed_on(found);
  }
  return found->empty() ? Result<SheetIssue>(no_such_sheet(hash)) : std::move(found->front());
}

Result<SheetIssue> any_sheet_with_hash(Connection& connection, const std::string& hash) {
  auto job = sheet_with_hash(connection, job_sheet_table, hash);
  return !job && job.error().code == "unknown_sheet" ? sheet_with_hash(connection, spec_sheet_table, hash)
                                                     : std::move(job);
}

Result<bool> is_demonstration(const SheetTable& table, const SheetIssue& issue) {
  if (&table == &job_sheet_table) {
    const auto sheet = sheet::read_job_sheet(issue.json);
    return sheet ? Result<bool>(sheet->demonstration) : tl::make_unexpected(sheet.error());
  }
  const auto spec = sheet::read_spec_sheet(issue.json);
  return spec ? Result<bool>(spec->demonstration) : tl::make_unexpected(spec.error());
}

Result<std::string> add_job_sheet_within(Connection& connection, const std::string& json,
                                         const std::vector<sheet::TakenAway>& reasons, const By& by,
                                         const std::vector<sheet::TakenAway>& lost) {
  auto read = sheet::read_job_sheet(json);
  if (!read) {
    return passed_on(read);
  }
  const SheetIssue issue{record::sha256_hex(json), read->id, read->name, read->issue, json, by.moment.at_ms};
  auto there = is_there(connection, job_sheet_table, issue);
  if (!there || *there) {
    return there ? Result<std::string>(issue.hash) : passed_on(there);
  }
  if (auto kept = keeps_its_mark(connection, job_sheet_table, issue, read->demonstration); !kept) {
    return passed_on(kept);
  }
  auto all_lost = lost_since(connection, *read, reasons);
  if (!all_lost) {
    return passed_on(all_lost);
  }
  all_lost->insert(all_lost->end(), lost.begin(), lost.end());
  return add_issue(connection, job_sheet_table, issue, *all_lost, by);
}

Result<std::string> add_spec_sheet_within(Connection& connection, const std::string& json, const By& by) {
  auto read = sheet::read_spec_sheet(json);
  if (!read) {
    return passed_on(read);
  }
  const SheetIssue issue{record::sha256_hex(json), read->id, read->gearbox, read->issue, json, by.moment.at_ms};
  auto there = is_there(connection, spec_sheet_table, issue);
  if (!there || *there) {
    return there ? Result<std::string>(issue.hash) : passed_on(there);
  }
  if (auto kept = keeps_its_mark(connection, spec_sheet_table, issue, read->demonstration); !kept) {
    return passed_on(kept);
  }
  return add_issue(connection, spec_sheet_table, issue, {}, by);
}

Result<bool> may_be_used(Connection& connection, const SheetTable& table, const SheetIssue& issue) {
  auto checked = was_checked(connection, issue.hash);
  return !checked || *checked ? std::move(checked) : is_demonstration(table, issue);
}

Result<void> sheets_may_be_used(Connection& connection, const std::string& sheet_hash, const std::string& spec_hash) {
  for (const auto& [table, hash] : {std::pair(&job_sheet_table, sheet_hash), std::pair(&spec_sheet_table, spec_hash)}) {
    auto issue = sheet_with_hash(connection, *table, hash);
    if (!issue) {
      return passed_on(issue);
    }
    auto may = may_be_used(connection, *table, *issue);
    if (!may) {
      return passed_on(may);
    }
    if (!*may) {
      return refuse("not_checked", table->name,
                    SHIMWRIGHT_TEXT("store",
                                    "{0}, issue {1}, was not checked yet; let a second person check it under Workshop "
                                    "before it is used on a job."),
                    {issue->name, std::to_string(issue->issue)});
    }
  }
  return {};
}

}  // namespace shimwright::store
