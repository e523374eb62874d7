#pragma once

#include <optional>

#include "shimwright/job/context.h"
#include "shimwright/job/state.h"
#include "shimwright/shim/advise.h"

namespace shimwright::job {

/// What the shim engine says of a gauge fit, depth or float step as it stands.
struct Judgement {
  shim::AdviseCase engine_case;
  shim::AdviseAnswer answer;
  Advised advised;  ///< what is kept of it
};

/// Nothing while readings are missing (a depth not read, a spot without a run) or for a step of another kind. A gauge
/// fit is judged before its first trial too: it says what to try first. Refused where the engine cannot take the case:
/// the tray is empty. Where no shim is known to be fitted under a disc, nothing is asked of the engine: the advice says
/// what is missing, its case and answer are blank.
[[nodiscard]] Result<std::optional<Judgement>> judge(const JobState& state, const sheet::Step& step,
                                                     const Context& context);

/// The tray of a side as it lies there today, else as the spec sheet has it.
[[nodiscard]] std::vector<TrayShim> tray_of(const JobState& state, Side side, const Context& context);

/// Per spot of a float step, the runs of its present series, in order.
[[nodiscard]] std::vector<std::vector<const FloatRun*>> present_runs(const JobState& state, const sheet::Step& step);

/// The series a spot's next run belongs to.
[[nodiscard]] int present_series(const JobState& state, const sheet::Step& step, int spot);

}  // namespace shimwright::job
