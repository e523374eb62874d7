#pragma once

#include "float_spots.h"
#include "shimwright/metrology/uncertainty.h"
#include "shimwright/shim/disc_float.h"

namespace shimwright::shim {

[[nodiscard]] metrology::Indicator indicator_of(const FloatCase& disc_float);
[[nodiscard]] metrology::Limits limits_of(const FloatCase& disc_float);

/// Float, uncertainty, verdict, tilt and sensitivity of runs that raise no question.
[[nodiscard]] FloatJudgement judge_float(const FloatCase& disc_float, const SpotRuns& runs);

/// This instrument cannot decide these limits: the guard bands of a spot leave nothing between them.
[[nodiscard]] bool too_coarse(const FloatCase& disc_float, const FloatJudgement& judgement);
/// The runs of a spot lie further apart than max(3·√2·repeatability, 2·resolution).
[[nodiscard]] bool runs_disagree(const FloatCase& disc_float, const SpotRuns& runs);
/// Mm of float lost per mm of thicker shim, from the spec sheet and the workshop's own pairs.
[[nodiscard]] std::optional<metrology::SlopeEstimate> sensitivity_of(const FloatCase& disc_float);

}  // namespace shimwright::shim
