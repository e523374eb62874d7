#pragma once

#include <map>
#include <memory>
#include <string>

#include "connection.h"
#include "shimwright/job/state.h"

namespace shimwright::store {

/// The sheets of one store, each read once: an issue never changes, and thousands of jobs stand on the same few.
class SheetShelf {
 public:
  explicit SheetShelf(Connection& connection) : connection_(&connection) {}

  /// Ready to open or fold a job on. Code: `unknown_sheet`; refused as the readers of sheets refuse.
  [[nodiscard]] Result<job::Sheets> sheets(const std::string& job_sheet_hash, const std::string& spec_sheet_hash);

 private:
  Connection* connection_;
  std::map<std::string, std::shared_ptr<const sheet::JobSheet>> job_sheets_;
  std::map<std::string, std::shared_ptr<const sheet::SpecSheet>> spec_sheets_;
};

}  // namespace shimwright::store
