#pragma once

#include <QSqlError>

#include "shimwright/quantity/error.h"

namespace shimwright::store {

/// What SQLite says went wrong, as one sentence with its remedy. Codes: `disk_full`, `disk_fault`, `store_busy`,
/// `look_only`, `not_a_store`, `store_damaged`, `cannot_open`, `kept_for_ever` (a trigger or a rule of the schema
/// refused), `store_fault` for what should not come.
[[nodiscard]] Error database_error(int sqlite_code, const QString& says);
[[nodiscard]] Error database_error(const QSqlError& error);

}  // namespace shimwright::store
