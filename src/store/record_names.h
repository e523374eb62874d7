#pragma once

#include "shimwright/record/record.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

/// The names and personal texts the store has for a job today.
[[nodiscard]] Result<record::RecordNames> record_names(Store& store, const LoadedJob& job);

}  // namespace shimwright::store
