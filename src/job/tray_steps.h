#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/job/context.h"

namespace shimwright::job {

[[nodiscard]] const TrayShim* shim_with_id(const std::vector<TrayShim>& tray, std::string_view id);

/// The smaller of the steps from the shim nearest to `thickness` to its neighbours; nothing in a tray of one.
[[nodiscard]] std::optional<quantity::Length> step_beside(const std::vector<TrayShim>& tray,
                                                          quantity::Length thickness);

/// Puts a shim that has left the tray back into it, in order of thickness; gives the mark it goes by there: that of a
/// shim as thick where the tray has one.
[[nodiscard]] std::string keep_in_tray(std::vector<TrayShim>& tray, const TrayShim& shim);

[[nodiscard]] const TrayShim* nearest_shim(const std::vector<TrayShim>& tray, quantity::Length thickness);

}  // namespace shimwright::job
