#pragma once

#include <optional>

#include "shimwright/job/judgement.h"

namespace shimwright::job {

[[nodiscard]] Result<std::optional<Judgement>> judge_float(const JobState& state, const sheet::Step& step,
                                                           const Context& context);

[[nodiscard]] shim::Tray engine_tray(const std::vector<TrayShim>& tray);

/// The trials of a side that count now, as the engine wants them; nothing where that side's shim is found otherwise.
[[nodiscard]] std::optional<shim::GaugeFitCase> gauge_fit_case(const JobState& state, Side side);

[[nodiscard]] Advised advised_on(const JobState& state, const sheet::Step& step, const shim::AdviseCase& engine_case,
                                 const shim::AdviseAnswer& answer);

}  // namespace shimwright::job
