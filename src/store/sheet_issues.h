#pragma once

#include <optional>
#include <string>
#include <vector>

#include "connection.h"
#include "shimwright/sheet/taken_away.h"
#include "shimwright/store/types.h"

/// The two tables of sheets, which are alike; only what is read into them differs.
namespace shimwright::store {

struct SheetTable {
  const char* name;
  const char* insert;
  const char* by_hash;
  const char* by_issue;
  const char* by_name;  ///< all issues, latest first
  const char* latest;
};

extern const SheetTable job_sheet_table;
extern const SheetTable spec_sheet_table;

[[nodiscard]] Result<std::vector<SheetIssue>> sheet_issues(Connection& connection, const char* sql, const Row& values);
/// Code: `unknown_sheet`.
[[nodiscard]] Result<SheetIssue> sheet_with_hash(Connection& connection, const SheetTable& table,
                                                 const std::string& hash);
/// Of either kind. Code: `unknown_sheet`.
[[nodiscard]] Result<SheetIssue> any_sheet_with_hash(Connection& connection, const std::string& hash);

/// Whether the file says of itself that its values are for demonstration.
[[nodiscard]] Result<bool> is_demonstration(const SheetTable& table, const SheetIssue& issue);

/// Keeps a job sheet or spec sheet as an issue, within the caller's transaction: the rules of Registers::add_…_sheet.
/// `lost` is what it lost against another sheet than the issue before it.
[[nodiscard]] Result<std::string> add_job_sheet_within(Connection& connection, const std::string& json,
                                                       const std::vector<sheet::TakenAway>& reasons, const By& by,
                                                       const std::vector<sheet::TakenAway>& lost = {});
[[nodiscard]] Result<std::string> add_spec_sheet_within(Connection& connection, const std::string& json, const By& by);

/// Whether a job may be opened on both: each was checked or carries the demonstration mark. Code: `not_checked`.
[[nodiscard]] Result<void> sheets_may_be_used(Connection& connection, const std::string& sheet_hash,
                                              const std::string& spec_hash);
[[nodiscard]] Result<bool> may_be_used(Connection& connection, const SheetTable& table, const SheetIssue& issue);

}  // namespace shimwright::store
