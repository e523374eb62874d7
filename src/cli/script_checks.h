#pragma once

#include <string>

#include "script.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/spec_sheet.h"

namespace shimwright::cli {

/// The names of a script against each other: who and what commands name is there, and nothing is there twice. Codes:
/// `unknown_person`, `unknown_instrument`, `named_twice`, `nothing_to_do`.
[[nodiscard]] Result<void> check_names(const Script& script);

/// A script against its sheets and, for photos, the folder it lies in. What a command is expected to be refused for may
/// be unknown. Codes: `unknown_step`, `unknown_tray`, `unknown_language`, `photo_unreadable`.
[[nodiscard]] Result<void> check_against(const Script& script, const sheet::JobSheet& job_sheet,
                                         const sheet::SpecSheet& spec, const std::string& folder);

}  // namespace shimwright::cli
