#pragma once

#include "connection.h"
#include "shimwright/store/photo_shelf.h"

namespace shimwright::store {

/// The photos that `names_of` names, from beside the store `from` to beside the store `to`, each compared with its
/// hash. Codes: `stopped`, `disk_full`, `disk_fault`.
[[nodiscard]] Result<PhotosBrought> bring_photos(Connection& names_of, const QString& from, const QString& to,
                                                 const BackupWatch& watch = {});

}  // namespace shimwright::store
