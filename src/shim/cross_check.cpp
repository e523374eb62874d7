#include "shimwright/shim/cross_check.h"

#include <limits>

#include "seat_belief.h"
#include "seat_model.h"
#include "trial_log.h"

namespace shimwright::shim {

namespace {

constexpr double disagreement_below = 0.05;
constexpr double no_bound = std::numeric_limits<double>::infinity();

/// Where the seat has to lie for this shim to be within a step of where the trials put it.
Stretch near_shim(const SeatModel& model, std::size_t shim) {
  const double twice_u = 2.0 * model.u_um[shim];
  Stretch stretch;
  stretch.from_um = shim == 0 ? -no_bound : static_cast<double>(model.thickness_um[shim - 1]) - twice_u;
  const auto upper = shim + 2 < model.size() ? model.thickness_um[shim + 2] : model.thickness_um.back() + model.band_um;
  stretch.to_um = static_cast<double>(upper) + twice_u;
  return stretch;
}

/// Where the seat has to lie for a step from the fitted shim to lead the right way.
Stretch beyond_step(const SeatModel& model, std::size_t fitted, std::size_t advised) {
  if (advised > fitted) {
    return {static_cast<double>(model.thickness_um[advised]) - 2.0 * model.u_um[advised], no_bound};
  }
  return {-no_bound, static_cast<double>(model.thickness_um[fitted]) + 2.0 * model.u_um[fitted]};
}

}  // namespace

CrossCheckAnswer cross_check(const Tray& tray, const GaugeFitCase& gauge_fit, const FloatCase& disc_float,
                             const FloatAnswer& disc_answer) {
  if (gauge_fit.trials.empty() || !disc_answer.shim) {
    return {};
  }
  const SeatModel model = seat_model(tray, gauge_fit);
  if (!contradictions(model, gauge_fit.trials).empty()) {
    return {};
  }
  const auto belief = SeatBelief::after_trials(model, gauge_fit);
  if (!belief) {
    return {};
  }
  const std::size_t advised = index_of(model.shims, *disc_answer.shim);
  const std::size_t fitted = index_of(model.shims, disc_float.fitted_shim);
  const Stretch right =
      disc_answer.advice == FloatAdvice::step ? beyond_step(model, fitted, advised) : near_shim(model, advised);
  const double p_right = belief->between(right);
  return {p_right < disagreement_below ? CrossCheckState::disagree : CrossCheckState::agree, p_right};
}

}  // namespace shimwright::shim
