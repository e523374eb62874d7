#pragma once

#include <string>
#include <vector>

#include "connection.h"
#include "shimwright/record/signed_record.h"
#include "shimwright/store/store.h"

/// A seal as it lies in its tables.
namespace shimwright::store {

[[nodiscard]] Result<void> insert_seal(Connection& connection, const record::SealStatement& statement,
                                       const std::vector<std::string>& signatures, const std::string& record,
                                       const std::string& code);
[[nodiscard]] Result<void> insert_addendum(Connection& connection, const record::SignedAddendum& addendum);

/// What the tables hold for a job; entries and personal texts are left empty. Codes: `not_sealed`, `seal_damaged`.
[[nodiscard]] Result<record::SignedRecord> seal_rows(Connection& connection, const std::string& job);

/// The same with its entries and personal texts, as a signed file has them. Codes: as seal_rows().
[[nodiscard]] Result<record::SignedRecord> signed_record_in(Connection& connection, const LoadedJob& job);

/// Whether the seal of a job holds under the keys of the workshop; tables that were changed give `changed`. Codes:
/// `not_sealed`, those of Store.
[[nodiscard]] Result<record::SealCheck> seal_check(const Store& store, const LoadedJob& job);

}  // namespace shimwright::store
