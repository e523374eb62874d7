#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "shimwright/job/context.h"

namespace shimwright::job {

[[nodiscard]] const TrayShim* shim_with_id(const std::vector<TrayShim>& tray, std::string_view id);

/// The smaller of the steps from the shim nearest to `thickness` to its neighbours; nothing in a tray of one.
[[nodiscard]] std::optional<quantity::Length> step_beside(const std::vector<TrayShim>& tray,
                                                          quantity::Length thickness);

[[nodiscard]] const TrayShim* nearest_shim(const std::vector<TrayShim>& tray, quantity::Length thickness);

}  // namespace shimwright::job
