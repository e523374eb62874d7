#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "shimwright/quantity/error.h"

namespace shimwright::cli {

/// A sheet that comes with the program, as its file's bytes. Code: `unknown_sheet`.
[[nodiscard]] Result<std::string> shipped_job_sheet(const std::string& name);
/// `D7-3`: gearbox and issue.
[[nodiscard]] Result<std::string> shipped_spec_sheet(const std::string& name);

}  // namespace shimwright::cli
