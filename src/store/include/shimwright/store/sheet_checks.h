#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "shimwright/sheet/taken_away.h"
#include "shimwright/store/store.h"

/// Job sheets and spec sheets over their life: who entered and checked an issue, and which jobs use it.
namespace shimwright::store {

/// Somebody compared an issue with where its values come from.
struct SheetCheck {
  std::string id;     ///< UUID
  std::string sheet;  ///< hash of the issue
  std::string person;
  job::Moment moment;
  bool second_person = true;  ///< false: who entered it, on a later day
  friend bool operator==(const SheetCheck&, const SheetCheck&) = default;
};

/// How many jobs were opened on an issue.
struct SheetUse {
  std::int64_t jobs = 0;
  std::int64_t open = 0;  ///< of them, parked ones with them
};

/// All issues of one name, latest first.
[[nodiscard]] Result<std::vector<SheetIssue>> issues_of_job_sheet(const Store& store, const std::string& name);
[[nodiscard]] Result<std::vector<SheetIssue>> issues_of_spec_sheet(const Store& store, const std::string& gearbox);

/// Who entered an issue, of either kind, and when. Code: `unknown_sheet`.
[[nodiscard]] Result<By> sheet_entered_by(const Store& store, const std::string& hash);
/// Oldest first; none in a store of before there were checks.
[[nodiscard]] Result<std::vector<SheetCheck>> checks_of_sheet(const Store& store, const std::string& hash);
/// Keeps that this person checked an issue. A second check by the same person changes nothing. Codes: `unknown_sheet`,
/// `unknown_person`, `bad_id`, and those of sheet::check_counts().
[[nodiscard]] Result<SheetCheck> check_sheet(Store& store, const std::string& id, const std::string& hash,
                                             const By& by);
/// Whether a job may be opened on it: it was checked, or it carries the demonstration mark and so does the job.
[[nodiscard]] Result<bool> sheet_may_be_used(const Store& store, const std::string& hash);
/// Of each name the latest issue a job may be opened on, by name.
[[nodiscard]] Result<std::vector<SheetIssue>> usable_job_sheets(const Store& store);
[[nodiscard]] Result<std::vector<SheetIssue>> usable_spec_sheets(const Store& store);
[[nodiscard]] Result<SheetUse> use_of_sheet(const Store& store, const std::string& hash);

/// What an issue of a job sheet lost against the one before, with the reasons given.
[[nodiscard]] Result<std::vector<sheet::TakenAway>> lost_by_sheet(const Store& store, const std::string& hash);

}  // namespace shimwright::store
