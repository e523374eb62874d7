#pragma once

#include <string>
#include <vector>

#include "connection.h"
#include "shimwright/record/signed_record.h"

/// A seal as it lies in its tables.
namespace shimwright::store {

[[nodiscard]] Result<void> insert_seal(Connection& connection, const record::SealStatement& statement,
                                       const std::vector<std::string>& signatures, const std::string& record,
                                       const std::string& code);
[[nodiscard]] Result<void> insert_addendum(Connection& connection, const record::SignedAddendum& addendum);

/// What the tables hold for a job; entries and personal texts are left empty. Codes: `not_sealed`, `seal_damaged`.
[[nodiscard]] Result<record::SignedRecord> seal_rows(Connection& connection, const std::string& job);

}  // namespace shimwright::store
