#include <algorithm>
#include <cmath>

#include "case_sections.h"

namespace shimwright::shim {

namespace {

void read_limits(Fields& section, FloatCase& disc_float) {
  const std::string place = section.place_of("limits_mm");
  const json::Array& limits = section.list("limits_mm");
  FirstFault& fault = section.fault();
  if (limits.size() != 2) {
    fault.note("wrong_type", place, SHIMWRIGHT_TEXT("shim", "Two lengths have to stand here, the lower limit first."));
    return;
  }
  disc_float.lower_limit = fault.take(read_length(limits[0], json::pointer(place, 0), any_number));
  disc_float.upper_limit = fault.take(read_length(limits[1], json::pointer(place, 1), any_number));
  if (disc_float.lower_limit >= disc_float.upper_limit) {
    fault.note("limits_order", place, SHIMWRIGHT_TEXT("shim", "The lower limit has to be below the upper one."));
  }
}

void read_target(Fields& section, FloatCase& disc_float) {
  disc_float.target = section.length_or_null("target_mm");
  if (disc_float.target &&
      (*disc_float.target < disc_float.lower_limit || *disc_float.target > disc_float.upper_limit)) {
    section.fault().note("outside_limits", section.place_of("target_mm"),
                         SHIMWRIGHT_TEXT("shim", "The target has to lie within the limits."));
  }
}

void read_indicator(Fields& section, FloatCase& disc_float) {
  Fields fields(section.value("indicator"), section.place_of("indicator"), section.fault(),
                {"resolution_mm", "mpe_mm"});
  disc_float.resolution_mm = fields.number("resolution_mm", more_than_zero);
  disc_float.mpe_mm = fields.number("mpe_mm", zero_or_more);
}

std::optional<SensitivityPrior> read_sensitivity(Fields& section) {
  if (section.value("sensitivity").is_null()) {
    return std::nullopt;
  }
  Fields fields(section.value("sensitivity"), section.place_of("sensitivity"), section.fault(), {"mean", "sd"});
  SensitivityPrior prior;
  prior.mean = fields.number("mean");
  prior.sd = fields.number("sd", more_than_zero);
  return prior;
}

std::vector<HistoryPair> read_history(Fields& section) {
  std::vector<HistoryPair> history;
  const json::Array& elements = section.list("history");
  for (std::size_t index = 0; index < elements.size() && !section.fault().any(); ++index) {
    Fields fields(elements[index], json::pointer(section.place_of("history"), index), section.fault(),
                  {"shim_change_mm", "float_change_mm"});
    HistoryPair pair;
    pair.shim_change = fields.length("shim_change_mm");
    pair.float_change = fields.length("float_change_mm");
    history.push_back(pair);
  }
  return history;
}

FloatSpot read_spot(const json::Value& value, const std::string& place, FirstFault& fault) {
  Fields fields(value, place, fault, {"angle_deg", "runs"});
  FloatSpot spot;
  spot.angle_deg = fields.number("angle_deg");
  const json::Array& runs = fields.filled_list("runs");
  for (std::size_t index = 0; index < runs.size() && !fault.any(); ++index) {
    Fields members(runs[index], json::pointer(fields.place_of("runs"), index), fault, {"rest_mm", "lifted_mm"});
    FloatRun run;
    run.rest = members.length("rest_mm");
    run.lifted = members.length("lifted_mm");
    spot.runs.push_back(run);
  }
  return spot;
}

/// Angles modulo a full turn, those within a rounding of each other counted once.
std::size_t different_angles(const std::vector<FloatSpot>& spots) {
  constexpr double full_turn = 360.0;
  constexpr double rounding = 1e-9;
  std::vector<double> turned;
  for (const auto& spot : spots) {
    const double rest = std::fmod(spot.angle_deg, full_turn);
    const double positive = rest < 0.0 ? rest + full_turn : rest;
    turned.push_back(full_turn - positive <= rounding ? 0.0 : positive);
  }
  std::sort(turned.begin(), turned.end());
  const auto same = [](double left, double right) { return right - left <= rounding; };
  return static_cast<std::size_t>(std::unique(turned.begin(), turned.end(), same) - turned.begin());
}

std::vector<FloatSpot> read_spots(Fields& section) {
  std::vector<FloatSpot> spots;
  const std::string place = section.place_of("spots");
  const json::Array& elements = section.list("spots");
  for (std::size_t index = 0; index < elements.size() && !section.fault().any(); ++index) {
    spots.push_back(read_spot(elements[index], json::pointer(place, index), section.fault()));
  }
  if (different_angles(spots) < 3) {
    section.fault().note("too_few_spots", place,
                         SHIMWRIGHT_TEXT("shim", "Measure at three spots or more, at three different angles."));
  }
  return spots;
}

}  // namespace

FloatCase read_float(const json::Value& value, const Tray& tray, FirstFault& fault) {
  Fields fields(
      value, "/float", fault,
      {"limits_mm", "target_mm", "max_spread_mm", "fitted_shim", "indicator", "repeatability_mm", "guard_factor",
       "unit_confirmed", "direction_confirmed", "sensitivity", "history_u_mm", "history", "spots"});
  FloatCase disc_float;
  read_limits(fields, disc_float);
  read_target(fields, disc_float);
  disc_float.max_spread = fields.length("max_spread_mm", more_than_zero);
  disc_float.fitted_shim = read_known_shim(fields, "fitted_shim", tray);
  read_indicator(fields, disc_float);
  disc_float.repeatability_mm = fields.number("repeatability_mm", zero_or_more);
  disc_float.guard_factor = fields.number("guard_factor", zero_or_more);
  disc_float.unit_confirmed = fields.flag("unit_confirmed");
  disc_float.direction_confirmed = fields.flag("direction_confirmed");
  disc_float.sensitivity = read_sensitivity(fields);
  disc_float.history_u_mm = fields.number("history_u_mm", more_than_zero);
  disc_float.history = read_history(fields);
  disc_float.spots = read_spots(fields);
  return disc_float;
}

}  // namespace shimwright::shim
