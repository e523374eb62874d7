#pragma once

#include <map>
#include <string>
#include <vector>

#include "shimwright/job/context.h"
#include "shimwright/job/state.h"

namespace shimwright::job {

/// What one side of a job may still take out of its tray.
struct SideWants {
  std::map<std::string, double> chances;  ///< by shim: that it will be this one, 0 to 1; adds up to 1 at most
  bool no_belief = false;                 ///< a shim is still to be chosen, and nothing is known of which
};

/// By the belief of the job as it stands, for the sides whose shim is still to be chosen or is to be changed:
/// of trials the belief in each shim being the right one (before the first one that of the sheet's prior), of depths
/// the shim or the shims of the border in equal parts, of a float the shim it advises. A shim that is laid and stays, a
/// closed job and a side that is not shimmed want nothing.
[[nodiscard]] std::map<Side, SideWants> shims_wanted(const JobState& state, const Context& context);

}  // namespace shimwright::job
