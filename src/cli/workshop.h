#pragma once

#include <map>
#include <memory>
#include <string>

#include "script.h"
#include "shimwright/job/context.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/store.h"

namespace shimwright::cli {

/// The clock of this machine.
[[nodiscard]] job::Moment moment_now();

/// What a script's names are in a store.
struct KnownHere {
  std::map<std::string, std::string> people;       ///< id by initials
  std::map<std::string, std::string> instruments;  ///< id by name
  std::map<std::string, std::string> pins;         ///< by id; only of those who have one in the script
  std::string sheet_hash;
  std::string spec_hash;
};

/// Enters the script's people, instruments, trays and sheets into the store's registers where they are not there yet:
/// all of them, or none where one is refused. The place of a refusal is a JSON pointer into the script. Codes: those of
/// store::Registers.
[[nodiscard]] Result<KnownHere> settle_in(store::Store& store, const Script& script, store::IdSource& ids);
/// Whether a new store would take all of them; no store is touched.
[[nodiscard]] Result<void> could_settle(const Script& script);

/// Opens for looking only.
[[nodiscard]] Result<std::unique_ptr<store::Store>> open_to_look(const std::string& path);
/// Opens for writing, making the store where there is none.
[[nodiscard]] Result<std::unique_ptr<store::Store>> open_to_write(const std::string& path, const std::string& person);

/// The path made absolute.
[[nodiscard]] std::string absolute(const std::string& path);

/// The one job of that number or id. Codes: `unknown_job`, `several_jobs`.
[[nodiscard]] Result<std::string> job_named(const store::Store& store, const std::string& number_or_id);

}  // namespace shimwright::cli
