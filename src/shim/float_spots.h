#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "shimwright/shim/disc_float.h"

namespace shimwright::shim {

/// The runs of a case as floats in micrometres, spot by spot.
using SpotRuns = std::vector<std::vector<std::int64_t>>;

[[nodiscard]] SpotRuns spot_runs(const FloatCase& disc_float);
/// Every run without its sign: a dial that ran backwards.
[[nodiscard]] SpotRuns sizes_of(SpotRuns runs);
/// The mean of the runs of each spot, in mm.
[[nodiscard]] std::vector<double> spot_floats_mm(const SpotRuns& runs);

/// The questions that come before any judgement: signs, direction, unit. Writes findings, and where a question is open
/// its advice and suggestions, into `answer`. The runs to judge, or nothing while a question is open.
[[nodiscard]] std::optional<SpotRuns> runs_without_question(const FloatCase& disc_float, FloatAnswer& answer);

}  // namespace shimwright::shim
