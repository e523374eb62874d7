#include "sheet_issues.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

Result<std::string> Registers::add_job_sheet(const std::string& json, const By& by) {
  auto transaction = Transaction::begin(*connection_);
  if (!transaction) {
    return passed_on(transaction);
  }
  auto hash = add_job_sheet_within(*connection_, json, {}, by);
  if (!hash) {
    return hash;
  }
  auto committed = transaction->commit();
  return committed ? std::move(hash) : passed_on(committed);
}

Result<std::string> Registers::add_spec_sheet(const std::string& json, const By& by) {
  auto transaction = Transaction::begin(*connection_);
  if (!transaction) {
    return passed_on(transaction);
  }
  auto hash = add_spec_sheet_within(*connection_, json, by);
  if (!hash) {
    return hash;
  }
  auto committed = transaction->commit();
  return committed ? std::move(hash) : passed_on(committed);
}

Result<std::vector<SheetIssue>> Registers::job_sheets() const {
  return sheet_issues(*connection_, job_sheet_table.latest, {});
}

Result<std::vector<SheetIssue>> Registers::spec_sheets() const {
  return sheet_issues(*connection_, spec_sheet_table.latest, {});
}

Result<SheetIssue> Registers::job_sheet(const std::string& hash) const {
  return sheet_with_hash(*connection_, job_sheet_table, hash);
}

Result<SheetIssue> Registers::spec_sheet(const std::string& hash) const {
  return sheet_with_hash(*connection_, spec_sheet_table, hash);
}

}  // namespace shimwright::store
