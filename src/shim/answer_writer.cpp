#include <cmath>

#include <nlohmann/json.hpp>

#include "shimwright/shim/advise.h"

namespace shimwright::shim {

namespace {

using Json = nlohmann::ordered_json;

template <class Named>
Json names_json(const std::vector<Named>& list) {
  Json names = Json::array();
  for (const auto each : list) {
    names.push_back(name_of(each));
  }
  return names;
}

void put_seat(const SeatEstimate& seat, Json& written) {
  written["seat_mean_mm"] = seat.mean_mm;
  written["seat_low_mm"] = seat.low_mm;
  written["seat_high_mm"] = seat.high_mm;
  for (const auto& chance : seat.p_best) {
    written["p_best"][chance.shim] = chance.p;
  }
  written["p_tray_too_thick"] = seat.p_tray_too_thick;
  written["p_tray_too_thin"] = seat.p_tray_too_thin;
  written["expected_trials_left"] = seat.expected_trials_left;
  written["step_down_trials_left"] = seat.step_down_trials_left;
}

Json gauge_fit_json(const GaugeFitAnswer& answer) {
  Json written;
  written["state"] = name_of(answer.state);
  if (answer.shim) {
    written["shim"] = *answer.shim;
  }
  if (answer.state == GaugeFitState::contradiction) {
    written["contradictions"] = Json::array();
    for (const auto& pair : answer.contradictions) {
      written["contradictions"].push_back({pair.at_least, pair.below});
    }
    return written;
  }
  if (answer.seat) {
    put_seat(*answer.seat, written);
  }
  written["findings"] = names_json(answer.findings);
  return written;
}

Json depth_json(const DepthAnswer& answer) {
  Json written;
  written["state"] = name_of(answer.state);
  written["spread_mm"] = quantity::in_millimetres(answer.spread);
  if (answer.required_mm) {
    written["required_mm"] = *answer.required_mm;
  }
  if (answer.u_required_mm) {
    written["u_required_mm"] = *answer.u_required_mm;
  }
  if (answer.shim) {
    written["shim"] = *answer.shim;
  }
  if (!answer.candidates.empty()) {
    written["candidates"] = answer.candidates;
  }
  return written;
}

void put_judgement(const FloatJudgement& judgement, Json& written) {
  written["float_mm"] = judgement.float_mm;
  written["mean_mm"] = judgement.mean_mm;
  written["spread_mm"] = judgement.spread_mm;
  written["tilt_mm"] = judgement.tilt_mm;
  if (judgement.high_at_deg) {
    written["high_at_deg"] = *judgement.high_at_deg;
  }
  written["u_spot_mm"] = judgement.u_spot_mm;
  written["u_mean_mm"] = judgement.u_mean_mm;
  written["spot_verdicts"] = names_json(judgement.spot_verdicts);
  written["verdict"] = name_of(judgement.verdict);
  written["p_within"] = judgement.p_within;
  written["sensitivity"] = nullptr;
  if (judgement.sensitivity) {
    const auto& estimate = *judgement.sensitivity;
    written["sensitivity"] = {{"mean", estimate.slope.mean}, {"sd", estimate.slope.sd}, {"pairs", estimate.pairs}};
  }
}

void put_ranking(const FloatRanking& ranking, Json& written) {
  written["ranking"] = Json::array();
  for (const auto& each : ranking.shims) {
    written["ranking"].push_back(
        {{"shim", each.shim}, {"predicted_mm", each.predicted_mm}, {"u_mm", each.u_mm}, {"p_within", each.p_within}});
  }
  // A shim that hardly changes anything has an ideal beyond all numbers; JSON has no word for it.
  if (std::isfinite(ranking.ideal_mm)) {
    written["ideal_mm"] = ranking.ideal_mm;
  }
}

Json float_json(const FloatAnswer& answer) {
  Json written;
  written["findings"] = names_json(answer.findings);
  if (answer.judgement) {
    put_judgement(*answer.judgement, written);
  }
  written["advice"] = name_of(answer.advice);
  for (const auto& suggestion : answer.suggest) {
    written["suggest"].push_back({{"unit", name_of(suggestion.unit)}, {"float_mm", suggestion.float_mm}});
  }
  if (answer.shim) {
    written["shim"] = *answer.shim;
  }
  if (answer.ranking) {
    put_ranking(*answer.ranking, written);
  }
  return written;
}

Json cross_check_json(const CrossCheckAnswer& answer) {
  Json written;
  written["state"] = name_of(answer.state);
  if (answer.p_right) {
    written["p_right"] = *answer.p_right;
  }
  return written;
}

}  // namespace

std::string write_answer(const AdviseAnswer& answer) {
  Json written = Json::object();
  if (answer.gauge_fit) {
    written["gauge_fit"] = gauge_fit_json(*answer.gauge_fit);
  }
  if (answer.depth) {
    written["depth"] = depth_json(*answer.depth);
  }
  if (answer.disc_float) {
    written["float"] = float_json(*answer.disc_float);
  }
  if (answer.cross_check) {
    written["cross_check"] = cross_check_json(*answer.cross_check);
  }
  return written.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace shimwright::shim
