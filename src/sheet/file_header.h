#pragma once

#include <string>
#include <string_view>

#include "fields.h"
#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"

namespace shimwright::sheet {

/// What this program's reader of sheets can read.
inline constexpr std::int64_t reader_version = 1;

/// Looks at `format` and `min_reader` before anything else, so that a file of another kind or a newer program is called
/// that, not a file with unknown fields. Codes: `wrong_format`, `newer_file`.
[[nodiscard]] Result<void> check_header(const json::Value& file, std::string_view format);

/// Reads `format`, `version` and `min_reader` as fields.
void read_header(Fields& fields);

}  // namespace shimwright::sheet
