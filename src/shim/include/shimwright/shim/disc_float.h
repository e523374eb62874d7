#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/metrology/slope.h"
#include "shimwright/metrology/verdict.h"
#include "shimwright/quantity/quantity.h"
#include "shimwright/shim/tray.h"

/// Is the disc free within its limits, and if not, what to do. The formulas and their sources are in docs/method.md,
/// section 3.
namespace shimwright::shim {

struct FloatRun {
  quantity::Length rest;
  quantity::Length lifted;

  friend bool operator==(const FloatRun&, const FloatRun&) = default;
};

struct FloatSpot {
  double angle_deg = 0.0;
  std::vector<FloatRun> runs;  ///< at least one

  friend bool operator==(const FloatSpot&, const FloatSpot&) = default;
};

/// What one change of shim did to the float.
struct HistoryPair {
  quantity::Length shim_change;
  quantity::Length float_change;

  friend bool operator==(const HistoryPair&, const HistoryPair&) = default;
};

/// mm of float lost per mm of thicker shim, as the spec sheet states it.
struct SensitivityPrior {
  double mean = 0.0;
  double sd = 0.0;  ///< more than 0

  friend bool operator==(const SensitivityPrior&, const SensitivityPrior&) = default;
};

struct FloatCase {
  quantity::Length lower_limit;  ///< below the upper one
  quantity::Length upper_limit;
  std::optional<quantity::Length> target;  ///< within the limits; nothing means their middle
  quantity::Length max_spread;             ///< more than 0
  std::string fitted_shim;
  double resolution_mm = 0.0;  ///< of the indicator, more than 0
  double mpe_mm = 0.0;         ///< of the indicator, at least 0
  double repeatability_mm = 0.0;
  double guard_factor = 0.0;
  bool unit_confirmed = false;
  bool direction_confirmed = false;
  std::optional<SensitivityPrior> sensitivity;
  double history_u_mm = 0.0;  ///< more than 0
  std::vector<HistoryPair> history;
  std::vector<FloatSpot> spots;  ///< at least three, at three different angles or more

  friend bool operator==(const FloatCase&, const FloatCase&) = default;
};

enum class FloatFinding {
  mixed_signs,
  dial_reversed,
  unit_in_doubt,
  too_coarse,
  runs_disagree,
  near_limit,
  sensitivity_wrong_way,
  sensitivity_unsure,
  weak_advice,
};
[[nodiscard]] std::string_view name_of(FloatFinding finding);
[[nodiscard]] std::optional<FloatFinding> float_finding_named(std::string_view name);

enum class FloatAdvice {
  zero_again,
  confirm_direction,
  confirm_unit,
  measure_again,
  seat_again,
  keep,
  decide,
  step,
  no_shim,
  change,
};
[[nodiscard]] std::string_view name_of(FloatAdvice advice);
[[nodiscard]] std::optional<FloatAdvice> float_advice_named(std::string_view name);

/// What the numbers may have been meant in.
enum class SuggestedUnit { mm, hundredths, thou, inch };
[[nodiscard]] std::string_view name_of(SuggestedUnit unit);
[[nodiscard]] std::optional<SuggestedUnit> suggested_unit_named(std::string_view name);

/// The floats as they would be in that unit, one per spot. Nothing is converted before a person says so.
struct UnitSuggestion {
  SuggestedUnit unit = SuggestedUnit::mm;
  std::vector<double> float_mm;
};

/// What this shim would give.
struct RankedShim {
  std::string shim;
  double predicted_mm = 0.0;
  double u_mm = 0.0;
  double p_within = 0.0;
};

/// What the readings say once no question is open.
struct FloatJudgement {
  std::vector<double> float_mm;  ///< one per spot
  double mean_mm = 0.0;
  double spread_mm = 0.0;
  double tilt_mm = 0.0;
  std::optional<double> high_at_deg;
  std::vector<double> u_spot_mm;
  double u_mean_mm = 0.0;
  std::vector<metrology::Verdict> spot_verdicts;
  metrology::Verdict verdict = metrology::Verdict::on_limit;
  double p_within = 0.0;
  std::optional<metrology::SlopeEstimate> sensitivity;  ///< of the float lost per thicker shim, so positive as a rule
};

struct FloatRanking {
  std::vector<RankedShim> shims;  ///< best first, every shim of the tray
  double ideal_mm = 0.0;          ///< the thickness that would hit the target; infinite where no thickness does
};

struct FloatAnswer {
  std::vector<FloatFinding> findings;
  FloatAdvice advice = FloatAdvice::measure_again;
  std::vector<UnitSuggestion> suggest;      ///< with confirm_direction and confirm_unit
  std::optional<FloatJudgement> judgement;  ///< not while a question is open
  std::optional<std::string> shim;          ///< with keep, step, change
  std::optional<FloatRanking> ranking;
};

/// Pure. Tray and case must have passed the check of advise_case.h.
[[nodiscard]] FloatAnswer advise_float(const Tray& tray, const FloatCase& disc_float);

}  // namespace shimwright::shim
