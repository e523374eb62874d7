#pragma once

#include <string>

#include "shimwright/record/record.h"

/// The measurements of jobs as a table for other programs: CSV and canonical JSON (docs/formats/measurements.md).
namespace shimwright::record {

/// The line of heads, with the unit of each column of numbers, and its line end.
[[nodiscard]] std::string csv_head();

/// One line for each measurement of a job, as record::measurements() gives them; each ends with CR and LF. `job` is the
/// id. A text that a spreadsheet would take for a formula has an apostrophe before it.
[[nodiscard]] std::string csv_lines(const std::string& job, const Record& record);

/// What stands before the first job, and what after the last, in the file of canonical JSON.
[[nodiscard]] std::string measurements_begin();
[[nodiscard]] std::string measurements_end();
/// One job; between two of them stands a comma.
[[nodiscard]] std::string measurements_json(const std::string& job, const Record& record);

}  // namespace shimwright::record
