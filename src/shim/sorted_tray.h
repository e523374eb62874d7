#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "shimwright/shim/tray.h"

namespace shimwright::shim {

/// The tray thin to thick; the shims stay where they are.
[[nodiscard]] std::vector<const Shim*> thin_to_thick(const Tray& tray);
/// The place of this id in the sorted tray. The id is there: the case was checked.
[[nodiscard]] std::size_t index_of(const std::vector<const Shim*>& sorted, std::string_view id);

}  // namespace shimwright::shim
