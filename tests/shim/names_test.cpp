#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;

namespace {

/// Every value up to the last has a name of its own that leads back to it.
template <class Enumeration, class Named>
void check_names(Enumeration last, Named named) {
  for (int index = 0; index <= static_cast<int>(last); ++index) {
    const auto value = static_cast<Enumeration>(index);
    INFO(index << " is " << name_of(value));
    CHECK_FALSE(name_of(value).empty());
    CHECK(named(name_of(value)) == value);
  }
  CHECK_FALSE(named("no such name"));
  CHECK_FALSE(named(""));
}

}  // namespace

TEST_CASE("every name in files leads back to its value") {
  check_names(Fit::loose, fit_named);
  check_names(TrialOrder::thick_to_thin, trial_order_named);
  check_names(GaugeFitState::contradiction, gauge_fit_state_named);
  check_names(GaugeFitFinding::upper_side_untried, gauge_fit_finding_named);
  check_names(DepthState::shim, depth_state_named);
  check_names(FloatFinding::weak_advice, float_finding_named);
  check_names(FloatAdvice::change, float_advice_named);
  check_names(SuggestedUnit::inch, suggested_unit_named);
  check_names(CrossCheckState::disagree, cross_check_state_named);
  CHECK(name_of(GaugeFitState::try_shim) == "try");
}
