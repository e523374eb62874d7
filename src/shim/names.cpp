#include <string_view>

#include "name_table.h"
#include "shimwright/shim/cross_check.h"
#include "shimwright/shim/depth.h"
#include "shimwright/shim/disc_float.h"
#include "shimwright/shim/gauge_fit.h"

namespace shimwright::shim {

namespace {

constexpr NameTable<Fit, 3> fit_names({{
    {Fit::tight, "tight"},
    {Fit::snug, "snug"},
    {Fit::loose, "loose"},
}});

constexpr NameTable<TrialOrder, 2> trial_order_names({{
    {TrialOrder::fewest, "fewest"},
    {TrialOrder::thick_to_thin, "thick_to_thin"},
}});

constexpr NameTable<GaugeFitState, 5> gauge_fit_state_names({{
    {GaugeFitState::try_shim, "try"},
    {GaugeFitState::settled, "settled"},
    {GaugeFitState::tray_too_thick, "tray_too_thick"},
    {GaugeFitState::tray_too_thin, "tray_too_thin"},
    {GaugeFitState::contradiction, "contradiction"},
}});

constexpr NameTable<GaugeFitFinding, 2> gauge_fit_finding_names({{
    {GaugeFitFinding::feel_too_coarse, "feel_too_coarse"},
    {GaugeFitFinding::upper_side_untried, "upper_side_untried"},
}});

constexpr NameTable<DepthState, 6> depth_state_names({{
    {DepthState::tilted, "tilted"},
    {DepthState::impossible, "impossible"},
    {DepthState::outside, "outside"},
    {DepthState::far, "far"},
    {DepthState::edge, "edge"},
    {DepthState::shim, "shim"},
}});

constexpr NameTable<FloatFinding, 9> float_finding_names({{
    {FloatFinding::mixed_signs, "mixed_signs"},
    {FloatFinding::dial_reversed, "dial_reversed"},
    {FloatFinding::unit_in_doubt, "unit_in_doubt"},
    {FloatFinding::too_coarse, "too_coarse"},
    {FloatFinding::runs_disagree, "runs_disagree"},
    {FloatFinding::near_limit, "near_limit"},
    {FloatFinding::sensitivity_wrong_way, "sensitivity_wrong_way"},
    {FloatFinding::sensitivity_unsure, "sensitivity_unsure"},
    {FloatFinding::weak_advice, "weak_advice"},
}});

constexpr NameTable<FloatAdvice, 10> float_advice_names({{
    {FloatAdvice::zero_again, "zero_again"},
    {FloatAdvice::confirm_direction, "confirm_direction"},
    {FloatAdvice::confirm_unit, "confirm_unit"},
    {FloatAdvice::measure_again, "measure_again"},
    {FloatAdvice::seat_again, "seat_again"},
    {FloatAdvice::keep, "keep"},
    {FloatAdvice::decide, "decide"},
    {FloatAdvice::step, "step"},
    {FloatAdvice::no_shim, "no_shim"},
    {FloatAdvice::change, "change"},
}});

constexpr NameTable<SuggestedUnit, 4> suggested_unit_names({{
    {SuggestedUnit::mm, "mm"},
    {SuggestedUnit::hundredths, "hundredths"},
    {SuggestedUnit::thou, "thou"},
    {SuggestedUnit::inch, "inch"},
}});

constexpr NameTable<CrossCheckState, 3> cross_check_state_names({{
    {CrossCheckState::unknown, "unknown"},
    {CrossCheckState::agree, "agree"},
    {CrossCheckState::disagree, "disagree"},
}});

}  // namespace

std::string_view name_of(Fit fit) {
  return fit_names.name_of(fit);
}
std::optional<Fit> fit_named(std::string_view name) {
  return fit_names.named(name);
}

std::string_view name_of(TrialOrder order) {
  return trial_order_names.name_of(order);
}
std::optional<TrialOrder> trial_order_named(std::string_view name) {
  return trial_order_names.named(name);
}

std::string_view name_of(GaugeFitState state) {
  return gauge_fit_state_names.name_of(state);
}
std::optional<GaugeFitState> gauge_fit_state_named(std::string_view name) {
  return gauge_fit_state_names.named(name);
}

std::string_view name_of(GaugeFitFinding finding) {
  return gauge_fit_finding_names.name_of(finding);
}
std::optional<GaugeFitFinding> gauge_fit_finding_named(std::string_view name) {
  return gauge_fit_finding_names.named(name);
}

std::string_view name_of(DepthState state) {
  return depth_state_names.name_of(state);
}
std::optional<DepthState> depth_state_named(std::string_view name) {
  return depth_state_names.named(name);
}

std::string_view name_of(FloatFinding finding) {
  return float_finding_names.name_of(finding);
}
std::optional<FloatFinding> float_finding_named(std::string_view name) {
  return float_finding_names.named(name);
}

std::string_view name_of(FloatAdvice advice) {
  return float_advice_names.name_of(advice);
}
std::optional<FloatAdvice> float_advice_named(std::string_view name) {
  return float_advice_names.named(name);
}

std::string_view name_of(SuggestedUnit unit) {
  return suggested_unit_names.name_of(unit);
}
std::optional<SuggestedUnit> suggested_unit_named(std::string_view name) {
  return suggested_unit_names.named(name);
}

std::string_view name_of(CrossCheckState state) {
  return cross_check_state_names.name_of(state);
}
std::optional<CrossCheckState> cross_check_state_named(std::string_view name) {
  return cross_check_state_names.named(name);
}

}  // namespace shimwright::shim
