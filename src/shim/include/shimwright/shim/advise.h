#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "shimwright/shim/advise_case.h"
#include "shimwright/shim/cross_check.h"
#include "shimwright/shim/depth.h"
#include "shimwright/shim/disc_float.h"
#include "shimwright/shim/gauge_fit.h"

/// The whole engine as one pure function.
namespace shimwright::shim {

struct AdviseAnswer {
  std::optional<GaugeFitAnswer> gauge_fit;
  std::optional<DepthAnswer> depth;
  std::optional<FloatAnswer> disc_float;
  std::optional<CrossCheckAnswer> cross_check;  ///< with both gauge fit and float
};

[[nodiscard]] AdviseAnswer advise(const CheckedCase& checked_case);

/// The answer as JSON, lengths as numbers in mm with all their digits; keys that have no value are left out.
[[nodiscard]] std::string write_answer(const AdviseAnswer& answer);

/// Changes whenever the same case may get another answer; kept beside every advice that was given.
[[nodiscard]] std::string_view engine_version();

}  // namespace shimwright::shim
