#pragma once

#include <string>
#include <utility>
#include <vector>

#include "shimwright/shim/advise_case.h"

namespace shimwright::reference {

/// A tray of `count` shims from `from_um` on, `step_um` apart, named by their thickness.
inline shim::Tray even_tray(int count, std::int64_t from_um, std::int64_t step_um, double u_mm = 0.003) {
  shim::Tray tray;
  for (int index = 0; index < count; ++index) {
    const std::int64_t thickness = from_um + index * step_um;
    tray.push_back({std::to_string(thickness), quantity::Length(thickness), u_mm});
  }
  return tray;
}

inline shim::GaugeFitCase flat_case(std::int64_t band_um, double feel_u_mm = 0.010) {
  shim::GaugeFitCase gauge_fit;
  gauge_fit.snug_band = quantity::Length(band_um);
  gauge_fit.feel_u_mm = feel_u_mm;
  return gauge_fit;
}

/// The cases of a working day on a tray of 40.
inline std::vector<std::pair<std::string, shim::AdviseCase>> forty_shim_cases() {
  shim::AdviseCase first{even_tray(40, 1000, 50), flat_case(50), {}, {}};
  shim::AdviseCase prior = first;
  prior.gauge_fit->prior = shim::SeatPrior{1.92, 0.15};
  shim::AdviseCase two_trials = first;
  two_trials.gauge_fit->trials = {{"2000", shim::Fit::tight}, {"1400", shim::Fit::loose}};
  shim::AdviseCase prior_two_trials = prior;
  prior_two_trials.gauge_fit->trials = {{"1950", shim::Fit::tight}, {"1850", shim::Fit::snug}};
  shim::AdviseCase uneven_band{even_tray(40, 1000, 50), flat_case(80), {}, {}};
  return {{"first trial, flat", first},
          {"first trial, with prior", prior},
          {"after two trials, flat", two_trials},
          {"after two trials, with prior", prior_two_trials},
          {"first trial, band of 1.6 steps", uneven_band}};
}

}  // namespace shimwright::reference
