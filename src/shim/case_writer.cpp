#include <nlohmann/json.hpp>

#include "shimwright/shim/advise_case.h"

namespace shimwright::shim {

namespace {

using Json = nlohmann::ordered_json;

double mm(quantity::Length length) {
  return quantity::in_millimetres(length);
}

Json mm_or_null(const std::optional<quantity::Length>& length) {
  return length ? Json(mm(*length)) : Json();
}

Json tray_json(const Tray& tray) {
  Json list = Json::array();
  for (const auto& shim : tray) {
    list.push_back({{"id", shim.id}, {"thickness_mm", mm(shim.thickness)}, {"u_mm", shim.u_mm}});
  }
  return list;
}

Json gauge_fit_json(const GaugeFitCase& gauge_fit) {
  Json trials = Json::array();
  for (const auto& trial : gauge_fit.trials) {
    trials.push_back({{"shim", trial.shim}, {"fit", name_of(trial.fit)}});
  }
  Json prior;
  if (gauge_fit.prior) {
    prior = {{"mean_mm", gauge_fit.prior->mean_mm}, {"sd_mm", gauge_fit.prior->sd_mm}};
  }
  return {{"snug_band_mm", mm(gauge_fit.snug_band)},
          {"feel_u_mm", gauge_fit.feel_u_mm},
          {"prior", std::move(prior)},
          {"order", name_of(gauge_fit.order)},
          {"trials", std::move(trials)}};
}

Json bins_json(const std::optional<std::vector<DepthBin>>& bins) {
  if (!bins) {
    return {};
  }
  Json list = Json::array();
  for (const auto& bin : *bins) {
    list.push_back({{"from_mm", mm(bin.from)}, {"to_mm", mm(bin.to)}, {"shim", bin.shim}});
  }
  return list;
}

Json depth_json(const DepthCase& depth) {
  Json readings = Json::array();
  for (const auto reading : depth.readings) {
    readings.push_back(mm(reading));
  }
  Json constants = Json::array();
  for (const auto& constant : depth.constants) {
    constants.push_back({{"name", constant.name}, {"add_mm", mm(constant.add)}});
  }
  return {{"readings_mm", std::move(readings)},  {"reference_mm", mm(depth.reference)},
          {"constants", std::move(constants)},   {"stamp_used", depth.stamp_used},
          {"stamp_mm", mm_or_null(depth.stamp)}, {"max_spread_mm", mm(depth.max_spread)},
          {"u_reading_mm", depth.u_reading_mm},  {"bins", bins_json(depth.bins)}};
}

Json spots_json(const std::vector<FloatSpot>& spots) {
  Json list = Json::array();
  for (const auto& spot : spots) {
    Json runs = Json::array();
    for (const auto& run : spot.runs) {
      runs.push_back({{"rest_mm", mm(run.rest)}, {"lifted_mm", mm(run.lifted)}});
    }
    list.push_back({{"angle_deg", spot.angle_deg}, {"runs", std::move(runs)}});
  }
  return list;
}

Json float_json(const FloatCase& disc_float) {
  Json sensitivity;
  if (disc_float.sensitivity) {
    sensitivity = {{"mean", disc_float.sensitivity->mean}, {"sd", disc_float.sensitivity->sd}};
  }
  Json history = Json::array();
  for (const auto& pair : disc_float.history) {
    history.push_back({{"shim_change_mm", mm(pair.shim_change)}, {"float_change_mm", mm(pair.float_change)}});
  }
  return {{"limits_mm", Json::array({mm(disc_float.lower_limit), mm(disc_float.upper_limit)})},
          {"target_mm", mm_or_null(disc_float.target)},
          {"max_spread_mm", mm(disc_float.max_spread)},
          {"fitted_shim", disc_float.fitted_shim},
          {"indicator", {{"resolution_mm", disc_float.resolution_mm}, {"mpe_mm", disc_float.mpe_mm}}},
          {"repeatability_mm", disc_float.repeatability_mm},
          {"guard_factor", disc_float.guard_factor},
          {"unit_confirmed", disc_float.unit_confirmed},
          {"direction_confirmed", disc_float.direction_confirmed},
          {"sensitivity", std::move(sensitivity)},
          {"history_u_mm", disc_float.history_u_mm},
          {"history", std::move(history)},
          {"spots", spots_json(disc_float.spots)}};
}

}  // namespace

std::string write_case(const AdviseCase& advise_case) {
  Json written;
  written["tray"] = tray_json(advise_case.tray);
  if (advise_case.gauge_fit) {
    written["gauge_fit"] = gauge_fit_json(*advise_case.gauge_fit);
  }
  if (advise_case.depth) {
    written["depth"] = depth_json(*advise_case.depth);
  }
  if (advise_case.disc_float) {
    written["float"] = float_json(*advise_case.disc_float);
  }
  // Text that is not UTF-8 must not throw here; the check of a case notices that it was replaced.
  return written.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace shimwright::shim
