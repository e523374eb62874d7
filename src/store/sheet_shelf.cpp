#include "sheet_shelf.h"

#include "shimwright/store/registers.h"

namespace shimwright::store {

namespace {

/// The sheet under this hash, from the shelf where it lies there.
template <typename Sheet, typename Find, typename Read>
Result<std::shared_ptr<const Sheet>> taken(std::map<std::string, std::shared_ptr<const Sheet>>& shelf,
                                           const std::string& hash, Find find, Read read) {
  if (const auto found = shelf.find(hash); found != shelf.end()) {
    return found->second;
  }
  auto issue = find(hash);
  if (!issue) {
    return passed_on(issue);
  }
  auto sheet = read(issue->json);
  if (!sheet) {
    return passed_on(sheet);
  }
  return shelf.emplace(hash, std::make_shared<const Sheet>(std::move(*sheet))).first->second;
}

}  // namespace

Result<job::Sheets> SheetShelf::sheets(const std::string& job_sheet_hash, const std::string& spec_sheet_hash) {
  const Registers registers(*connection_);
  auto job_sheet = taken(
      job_sheets_, job_sheet_hash, [&](const std::string& hash) { return registers.job_sheet(hash); },
      sheet::read_job_sheet);
  if (!job_sheet) {
    return passed_on(job_sheet);
  }
  auto spec_sheet = taken(
      spec_sheets_, spec_sheet_hash, [&](const std::string& hash) { return registers.spec_sheet(hash); },
      sheet::read_spec_sheet);
  if (!spec_sheet) {
    return passed_on(spec_sheet);
  }
  return job::Sheets{std::move(*job_sheet), job_sheet_hash, std::move(*spec_sheet), spec_sheet_hash};
}

}  // namespace shimwright::store
