#pragma once

#include <functional>

#include "connection.h"

/// How a backup takes the place of a store.
namespace shimwright::store {

struct Replacement {
  QString kept;  ///< name of what was there; empty where nothing was
  std::int64_t entries = 0;
};

/// Lays a copy of `source` in the place of the store, for whose writing the caller has the right. What is there is kept
/// beside it, byte for byte, as `<store><ending>1` and so on. The copy is changed by `last_touch`, then every entry of
/// it is compared with that of `source`, hash for hash, and once more when it lies in its place. Until the last step
/// nothing is changed. Codes: those of lay_copy(), `restore_differs`, `disk_full`, `disk_fault`.
[[nodiscard]] Result<Replacement> replace_store(Connection& source, const QString& store_path, const QString& ending,
                                                const std::function<Result<void>(Connection& copy)>& last_touch = {});

}  // namespace shimwright::store
