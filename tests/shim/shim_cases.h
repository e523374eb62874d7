#pragma once

#include <string>
#include <utility>
#include <vector>

#include <nlohmann/json.hpp>

#include "bench_cases.h"
#include "shimwright/shim/advise.h"

/// Cases the tests of the engine start from; everything in micrometres where it is whole.
namespace shimwright::shim::tests {

using Json = nlohmann::json;
using quantity::Length;
using reference::even_tray;
using reference::flat_case;

inline Length um(std::int64_t count) {
  return Length(count);
}

/// Twelve shims from 1.20 to 2.30.
inline Tray twelve() {
  return even_tray(12, 1200, 100);
}

/// Eighteen shims from 1.30 to 2.15.
inline Tray eighteen() {
  return even_tray(18, 1300, 50);
}

inline GaugeFitCase with_trials(GaugeFitCase gauge_fit, std::vector<Trial> trials) {
  gauge_fit.trials = std::move(trials);
  return gauge_fit;
}

/// A float case with one run at each of three spots, the limits 0.25 to 0.85 and the shim 1.60 of `eighteen` fitted.
inline FloatCase three_spots(std::int64_t first_um, std::int64_t second_um, std::int64_t third_um) {
  FloatCase disc_float;
  disc_float.lower_limit = um(250);
  disc_float.upper_limit = um(850);
  disc_float.max_spread = um(150);
  disc_float.fitted_shim = "1600";
  disc_float.resolution_mm = 0.01;
  disc_float.mpe_mm = 0.01;
  disc_float.repeatability_mm = 0.008;
  disc_float.guard_factor = 1.645;
  disc_float.sensitivity = SensitivityPrior{1.0, 0.1};
  disc_float.history_u_mm = 0.02;
  disc_float.spots = {
      {90.0, {{um(0), um(first_um)}}}, {210.0, {{um(0), um(second_um)}}}, {330.0, {{um(0), um(third_um)}}}};
  return disc_float;
}

/// The same floats measured twice.
inline FloatCase measured_twice(FloatCase disc_float) {
  for (auto& spot : disc_float.spots) {
    spot.runs.push_back(spot.runs.front());
  }
  return disc_float;
}

/// Thirteen shims from 1.05 to 2.85.
inline Tray thirteen() {
  return even_tray(13, 1050, 150);
}

/// A depth case that asks for exactly this length.
inline DepthCase required_um(std::vector<std::int64_t> readings_um) {
  DepthCase depth;
  for (const auto reading : readings_um) {
    depth.readings.push_back(um(reading));
  }
  depth.max_spread = um(100);
  depth.u_reading_mm = 0.010;
  return depth;
}

inline AdviseCase full_case() {
  DepthCase depth = required_um({5360, 5380});
  depth.reference = um(2400);
  depth.constants = {{"block", um(25000)}, {"nominal depth", um(-25120)}};
  depth.stamp_used = true;
  depth.stamp = um(-20);
  depth.bins = std::vector<DepthBin>{{um(2000), um(2500), "1500"}, {um(2500), um(3000), "1600"}};
  GaugeFitCase gauge_fit = with_trials(flat_case(50), {{"1700", Fit::tight}, {"1600", Fit::snug}});
  gauge_fit.prior = SeatPrior{1.72, 0.12};
  FloatCase disc_float = three_spots(930, 900, 960);
  disc_float.target = um(550);
  disc_float.history = {{um(200), um(-100)}, {um(-100), um(150)}};
  return {eighteen(), gauge_fit, depth, disc_float};
}

inline Json full_json() {
  return Json::parse(write_case(full_case()));
}

inline std::vector<std::string> names(const std::vector<GaugeFitFinding>& findings) {
  std::vector<std::string> list;
  for (const auto finding : findings) {
    list.emplace_back(name_of(finding));
  }
  return list;
}

inline bool holds(const FloatAnswer& answer, FloatFinding finding) {
  for (const auto each : answer.findings) {
    if (each == finding) {
      return true;
    }
  }
  return false;
}

}  // namespace shimwright::shim::tests
