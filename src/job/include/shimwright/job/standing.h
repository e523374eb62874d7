#pragma once

#include <string>
#include <vector>

#include "shimwright/job/state.h"

/// What counts now at a step, above all at one that finds or judges a shim: what was taken back or belongs to an
/// earlier round does not.
namespace shimwright::job {

/// All live entries of a step that still count, in order: those since it was last asked again.
[[nodiscard]] std::vector<const Entry*> present_entries(const JobState& state, const sheet::Step& step);

/// The trials of a gauge fit step, in order; each holds a ShimTried.
[[nodiscard]] std::vector<const Entry*> present_trials(const JobState& state, const sheet::Step& step);

/// The parts of a part step that were not renewed since it was last asked, in the sheet's order: all of them where they
/// may have moved since; none of another step.
[[nodiscard]] std::vector<std::string> parts_to_renew(const JobState& state, const sheet::Step& step);

/// The depths read last at a depth step; nullptr before they are read.
[[nodiscard]] const DepthsRead* present_depths(const JobState& state, const sheet::Step& step);

/// Floats of the series before the present one: the advice given on them last; nullptr where nothing was measured
/// again.
[[nodiscard]] const Advised* advice_before_series(const JobState& state, const sheet::Step& step);

/// What the latest advice says of the shim of this step's side: that of the step itself, else of its float in the
/// assembly before.
[[nodiscard]] const Advised* standing_advice(const JobState& state, const sheet::Step& step);

/// Whether a spot of a float step has fewer runs in its present series than the spec sheet asks for; one is enough as
/// found.
[[nodiscard]] bool runs_missing(const JobState& state, const sheet::Step& step);

/// Whether `advised` (may be nullptr) names that shim as one to be taken: taking another one needs a reason.
[[nodiscard]] bool advises(const Advised* advised, const std::string& shim);

}  // namespace shimwright::job
