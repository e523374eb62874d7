#pragma once

#include <string>

#include <QString>

#include "shimwright/quantity/error.h"

namespace shimwright::workshop {

/// The bytes of a sheet's file. Codes: `file_unreadable`, `file_too_large`.
[[nodiscard]] Result<std::string> read_sheet_file(const QString& path);
/// Whole or not at all. Code: `file_unwritten`.
[[nodiscard]] Result<void> write_sheet_file(const QString& path, const std::string& bytes);

}  // namespace shimwright::workshop
