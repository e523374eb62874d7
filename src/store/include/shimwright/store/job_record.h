#pragma once

#include <string>

#include "shimwright/quantity/error.h"
#include "shimwright/record/record.h"
#include "shimwright/record/shift_slip.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

/// The record of a stored job, finished or not, with the names and personal texts the store has. Codes as
/// Store::load().
[[nodiscard]] Result<record::Record> record_of(Store& store, const std::string& job);

/// The slip for who goes on with it. Codes as Store::load().
[[nodiscard]] Result<record::ShiftSlip> shift_slip_of(Store& store, const std::string& job);

}  // namespace shimwright::store
