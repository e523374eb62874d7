#pragma once

#include <string>

#include "shimwright/record/record.h"

namespace shimwright::record {

/// The record as one canonical JSON text: format `shimwright.record`, version 1 (docs/formats/record.md,
/// data/schema/record.schema.json). `record` is what a seal covers; `personal` lies beside it, so that a personal text
/// can be erased and the seal still holds; `seal` is not there until the record is sealed.
[[nodiscard]] std::string record_json(const Record& record);

/// The canonical bytes a seal covers: the member `record` alone.
[[nodiscard]] std::string sealed_part(const Record& record);

}  // namespace shimwright::record
