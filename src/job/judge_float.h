#pragma once

#include <optional>

#include "shimwright/job/judgement.h"

namespace shimwright::job {

[[nodiscard]] Result<std::optional<Judgement>> judge_float(const JobState& state, const sheet::Step& step,
                                                           const Context& context);

[[nodiscard]] shim::Tray engine_tray(const std::vector<TrayShim>& tray);

/// The trials of a side that count now, as the engine wants them; nothing where that side's shim is found otherwise. A
/// shim that was tried and has left the tray since is put back into `tray`: the trial stands on it.
[[nodiscard]] std::optional<shim::GaugeFitCase> gauge_fit_case(const JobState& state, Side side,
                                                               std::vector<TrayShim>& tray);

/// Advice for a shim that the tray does not have today says so.
void say_where_gone(Advised& advised, const std::vector<TrayShim>& tray_today);

/// Measuring is never refused for what is missing elsewhere: what was read is kept, and the advice says what is
/// missing.
[[nodiscard]] Advised not_judged(const JobState& state, const sheet::Step& step, Message reason);

[[nodiscard]] Advised advised_on(const JobState& state, const sheet::Step& step, const shim::AdviseCase& engine_case,
                                 const shim::AdviseAnswer& answer);

}  // namespace shimwright::job
