#pragma once

#include <vector>

#include <QByteArray>

#include "connection.h"

namespace shimwright::store {

/// Stands in the file's header and says whose it is: `SWst`.
inline constexpr std::int64_t application_id = 0x53577374;

/// One numbered step of the schema. Step 3 makes version 3 of version 2.
struct SchemaStep {
  int version = 0;
  QByteArray sql;
};

/// The steps this program was built with, in order.
[[nodiscard]] std::vector<SchemaStep> schema_steps();

/// Stores before this version have no tables of seals and keys. They are looked at as they are: old backups, for one.
inline constexpr int first_version_with_seals = 2;

/// Stores before this version have no tables of checked sheets, drafts and what was taken away.
inline constexpr int first_version_with_sheet_checks = 3;

/// Stores before this version keep of persons, instruments and trays only what version 1 did.
inline constexpr int first_version_with_own_values = 4;

/// Stores before this version have another index of what jobs are found by.
inline constexpr int first_version_with_suffixes = 5;

/// `PRAGMA user_version`: 0 for a file no step was taken in.
[[nodiscard]] Result<int> schema_version(Connection& connection);

/// Whether the file has the tables of seals and keys.
[[nodiscard]] Result<bool> has_seals(Connection& connection);

/// Whether the file has the tables of checked sheets.
[[nodiscard]] Result<bool> has_sheet_checks(Connection& connection);

/// Whether the file has what step 4 added to persons, instruments, trays and the workshop.
[[nodiscard]] Result<bool> has_own_values(Connection& connection);

/// Whether the file has the index of suffixes that a search reads.
[[nodiscard]] Result<bool> has_suffixes(Connection& connection);

/// Takes each step beyond the file's version, each with its version in one transaction: it is taken whole or not at
/// all. Code: `schema_step` (the place is the step's number, the sentence says what SQLite said).
[[nodiscard]] Result<void> take_steps(Connection& connection, const std::vector<SchemaStep>& steps);

/// The text of every table, index and trigger, by name: to be compared with that of a store made anew.
[[nodiscard]] Result<std::vector<Row>> schema_texts(Connection& connection);

}  // namespace shimwright::store
