#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/quantity/quantity.h"
#include "shimwright/shim/tray.h"

/// Which shim seats the gauge snug: the belief in the seat S (the thickest shim that still lets the gauge in) after the
/// trials so far, and the next trial. The formulas and their sources are in docs/method.md, section 1.
namespace shimwright::shim {

enum class Fit { tight, snug, loose };
[[nodiscard]] std::string_view name_of(Fit fit);
[[nodiscard]] std::optional<Fit> fit_named(std::string_view name);

/// `fewest` trials on average, or down from the thickest.
enum class TrialOrder { fewest, thick_to_thin };
[[nodiscard]] std::string_view name_of(TrialOrder order);
[[nodiscard]] std::optional<TrialOrder> trial_order_named(std::string_view name);

struct Trial {
  std::string shim;  ///< its id
  Fit fit = Fit::snug;

  friend bool operator==(const Trial&, const Trial&) = default;
};

/// What is known of the seat before the first trial.
struct SeatPrior {
  double mean_mm = 0.0;
  double sd_mm = 0.0;  ///< at least 0.01

  friend bool operator==(const SeatPrior&, const SeatPrior&) = default;
};

struct GaugeFitCase {
  quantity::Length snug_band;  ///< how much thinner than the seat a shim may be and still feel snug; more than 0
  double feel_u_mm = 0.0;      ///< standard uncertainty of the feel, at least 0.001
  std::optional<SeatPrior> prior;
  TrialOrder order = TrialOrder::fewest;
  std::vector<Trial> trials;  ///< in the order they were made

  friend bool operator==(const GaugeFitCase&, const GaugeFitCase&) = default;
};

/// `try_shim` is written `try`.
enum class GaugeFitState { try_shim, settled, tray_too_thick, tray_too_thin, contradiction };
[[nodiscard]] std::string_view name_of(GaugeFitState state);
[[nodiscard]] std::optional<GaugeFitState> gauge_fit_state_named(std::string_view name);

enum class GaugeFitFinding { feel_too_coarse, upper_side_untried };
[[nodiscard]] std::string_view name_of(GaugeFitFinding finding);
[[nodiscard]] std::optional<GaugeFitFinding> gauge_fit_finding_named(std::string_view name);

/// The chance that this shim is the one that fits.
struct ShimChance {
  std::string shim;
  double p = 0.0;
};

/// Two trials (their indices) that cannot both be right: one says the seat is at least so thick, the other that it is
/// less.
struct ContradictingTrials {
  std::size_t at_least = 0;
  std::size_t below = 0;

  friend bool operator==(const ContradictingTrials&, const ContradictingTrials&) = default;
};

/// The belief in the seat.
struct SeatEstimate {
  double mean_mm = 0.0;
  double low_mm = 0.0;             ///< 2.5 %
  double high_mm = 0.0;            ///< 97.5 %
  std::vector<ShimChance> p_best;  ///< every shim of the tray, thin to thick
  double p_tray_too_thick = 0.0;
  double p_tray_too_thin = 0.0;
  double expected_trials_left = 0.0;   ///< with the order `fewest`, outcomes taken as exact
  double step_down_trials_left = 0.0;  ///< going down from the thickest
};

struct GaugeFitAnswer {
  GaugeFitState state = GaugeFitState::try_shim;
  std::optional<std::string> shim;   ///< to try, or settled on
  std::optional<SeatEstimate> seat;  ///< not on a contradiction
  std::vector<GaugeFitFinding> findings;
  std::vector<ContradictingTrials> contradictions;  ///< sorted; only on a contradiction, and may be empty there
};

/// Pure. Tray and case must have passed the check of advise_case.h.
[[nodiscard]] GaugeFitAnswer advise_gauge_fit(const Tray& tray, const GaugeFitCase& gauge_fit);

}  // namespace shimwright::shim
