#pragma once

#include <optional>

#include <QString>

#include "shimwright/store/types.h"

namespace shimwright::workshop {

/// The bytes of a picture file with its media type by what it begins with; a file that cannot be read gives none.
[[nodiscard]] std::optional<store::Logo> logo_from(const QString& file);

}  // namespace shimwright::workshop
