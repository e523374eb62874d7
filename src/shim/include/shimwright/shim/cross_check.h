#pragma once

#include <optional>
#include <string_view>

#include "shimwright/shim/disc_float.h"
#include "shimwright/shim/gauge_fit.h"
#include "shimwright/shim/tray.h"

/// Do trials and float agree. A disagreement is first a seating fault. docs/method.md, section 4.
namespace shimwright::shim {

enum class CrossCheckState { unknown, agree, disagree };
[[nodiscard]] std::string_view name_of(CrossCheckState state);
[[nodiscard]] std::optional<CrossCheckState> cross_check_state_named(std::string_view name);

struct CrossCheckAnswer {
  CrossCheckState state = CrossCheckState::unknown;
  std::optional<double> p_right;  ///< the belief of the trials in what the float advises; not where unknown
};

/// Pure. `disc_answer` is what advise_float said for `disc_float` with the same tray.
[[nodiscard]] CrossCheckAnswer cross_check(const Tray& tray, const GaugeFitCase& gauge_fit, const FloatCase& disc_float,
                                           const FloatAnswer& disc_answer);

}  // namespace shimwright::shim
