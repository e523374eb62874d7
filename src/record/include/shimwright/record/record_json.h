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
/// The same as it was frozen before a bearing that came off began a line of its own under `shims`: such an assembly,
/// where nothing was tried in it, stood with the shim of the one before. What was sealed so is still shown.
[[nodiscard]] std::string sealed_part_with_shims_joined(const Record& record);

}  // namespace shimwright::record
