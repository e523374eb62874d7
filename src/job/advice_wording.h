#pragma once

#include "shimwright/job/entry.h"
#include "shimwright/quantity/quantity.h"
#include "shimwright/shim/advise.h"

/// The one sentence that goes with a conclusion.
namespace shimwright::job {

[[nodiscard]] std::string bearing_name(Side side);  ///< `large bearing`, `small bearing`

/// For a shim that was tried or is named by the spec sheet, and is not in the tray today.
[[nodiscard]] Message gone_reason(const std::string& shim);
/// For a float that cannot be judged yet.
[[nodiscard]] Message no_shim_known_reason(Side side);
/// For a tray or an instrument the engine refuses.
[[nodiscard]] Message not_reckonable_reason();

[[nodiscard]] Message gauge_fit_reason(const shim::GaugeFitAnswer& answer);
[[nodiscard]] Message depth_reason(const shim::DepthAnswer& answer, const shim::DepthCase& depth);
/// `conclusion` is what the answer came to once trials and rounds were looked at.
[[nodiscard]] Message float_reason(Conclusion conclusion, const shim::FloatAnswer& answer,
                                   const shim::FloatCase& disc_float, Side side, bool trials_disagree);

}  // namespace shimwright::job
