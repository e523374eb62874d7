#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "sheet_files.h"
#include "shimwright/shim/advise_case.h"

/// No value of a spec sheet that is read makes the shim engine refuse a case.
using namespace shimwright;
using namespace shimwright::sheet;
using nlohmann::json;

namespace {

shim::Tray tray_of(const SideSpec& side) {
  shim::Tray tray;
  for (const SpecShim& each : side.tray) {
    tray.push_back({each.id, each.thickness, each.u_mm});
  }
  return tray;
}

shim::GaugeFitCase gauge_fit_of(const GaugeFitSpec& spec) {
  shim::GaugeFitCase question;
  question.snug_band = spec.snug_band;
  question.feel_u_mm = spec.feel_u_mm;
  if (spec.prior) {
    question.prior = shim::SeatPrior{spec.prior->mean_mm, spec.prior->sd_mm};
  }
  question.order = spec.thick_to_thin ? shim::TrialOrder::thick_to_thin : shim::TrialOrder::fewest;
  return question;
}

shim::DepthCase depth_of(const DepthSpec& spec) {
  shim::DepthCase question;
  question.readings.assign(static_cast<std::size_t>(spec.places), quantity::micrometres(5140));
  question.reference = quantity::micrometres(2900);
  for (const DepthConstant& constant : spec.constants) {
    question.constants.push_back({constant.name, constant.add});
  }
  question.stamp_used = spec.stamp_used;
  if (spec.stamp_used) {
    question.stamp = quantity::micrometres(0);
  }
  question.max_spread = spec.max_spread;
  question.u_reading_mm = spec.u_reading_mm;
  if (spec.bins) {
    question.bins.emplace();
    for (const DepthBin& bin : *spec.bins) {
      question.bins->push_back({bin.from, bin.to, bin.shim});
    }
  }
  return question;
}

shim::FloatCase float_of(const FloatSpec& spec, const std::string& fitted) {
  shim::FloatCase question;
  question.lower_limit = spec.least;
  question.upper_limit = spec.most;
  question.target = spec.target;
  question.max_spread = spec.max_spread;
  question.fitted_shim = fitted;
  question.resolution_mm = 0.01;
  question.mpe_mm = 0.01;
  question.repeatability_mm = spec.repeatability_mm;
  question.guard_factor = spec.guard_factor;
  if (spec.sensitivity) {
    question.sensitivity = shim::SensitivityPrior{spec.sensitivity->mean, spec.sensitivity->sd};
  }
  question.history_u_mm = spec.history_u_mm;
  for (const double angle : spec.spot_angles_deg) {
    question.spots.push_back({angle, {{quantity::micrometres(0), quantity::micrometres(550)}}});
  }
  return question;
}

/// Nothing where the engine takes the side, else its refusal.
std::string refusal_of(const SideSpec& side) {
  shim::AdviseCase question;
  question.tray = tray_of(side);
  if (side.gauge_fit) {
    question.gauge_fit = gauge_fit_of(*side.gauge_fit);
  }
  if (side.depth) {
    question.depth = depth_of(*side.depth);
  }
  question.disc_float = float_of(side.disc_float, side.tray.front().id);
  const auto checked = shim::checked(question);
  if (!checked) {
    return checked.error().in_english();
  }
  const auto read = shim::read_case(shim::write_case(question));
  return read ? std::string() : "as JSON: " + read.error().in_english();
}

/// Decimals about the borders of every range.
json some_number() {
  return *rc::gen::element<std::string>("0", "0.000001", "0.000999", "0.001", "0.009999", "0.01", "0.5", "1", "1.65",
                                        "2.5", "5", "5.001", "10", "10.000001", "49.999", "50", "50.001", "100",
                                        "359.999999", "360", "9999.999", "-0.001", "-9999.999");
}

const std::vector<std::string>& number_places() {
  static const std::vector<std::string> places{"/lower/tray/shims/0/thickness_mm",
                                               "/lower/tray/shims/2/thickness_mm",
                                               "/lower/tray/shims/1/u_mm",
                                               "/lower/gauge_fit/snug_band_mm",
                                               "/lower/gauge_fit/feel_u_mm",
                                               "/lower/gauge_fit/prior/mean_mm",
                                               "/lower/gauge_fit/prior/sd_mm",
                                               "/lower/float/least_mm",
                                               "/lower/float/most_mm",
                                               "/lower/float/target_mm",
                                               "/lower/float/max_spread_mm",
                                               "/lower/float/repeatability_mm",
                                               "/lower/float/guard_factor",
                                               "/lower/float/sensitivity/mean",
                                               "/lower/float/sensitivity/sd",
                                               "/lower/float/history_u_mm",
                                               "/lower/float/spot_angles_deg/1",
                                               "/upper/depth/constants/0/add_mm",
                                               "/upper/depth/max_spread_mm",
                                               "/upper/depth/u_reading_mm",
                                               "/upper/depth/bins/0/from_mm",
                                               "/upper/depth/bins/0/to_mm",
                                               "/upper/depth/bins/1/to_mm",
                                               "/upper/tray/shims/1/thickness_mm",
                                               "/upper/float/target_mm"};
  return places;
}

}  // namespace

TEST_CASE("The engine takes every shipped spec sheet") {
  for (const std::string& name : test::shipped_specs()) {
    INFO(name);
    const SpecSheet spec = test::good_spec_sheet(test::shipped_file(name));
    CHECK(refusal_of(spec.lower).empty());
    CHECK(refusal_of(spec.upper).empty());
  }
}

TEST_CASE("The engine takes whatever number a spec sheet is read with, at the ends of its range too") {
  std::size_t taken = 0;
  for (const std::string& place : number_places()) {
    for (const char* number : {"0", "0.000001", "0.001", "0.01", "0.25", "0.85", "1", "5", "10", "50", "100",
                               "359.999999", "-0.001", "-9999.999", "9999.999"}) {
      INFO(place << " " << number);
      const auto changed = json::array({json{{"op", "replace"}, {"path", place}, {"value", number}}});
      const auto spec = read_spec_sheet(test::small_spec_sheet().patch(changed).dump());
      if (spec) {
        ++taken;
        CHECK(refusal_of(spec->lower).empty());
        CHECK(refusal_of(spec->upper).empty());
      }
    }
  }
  CHECK(taken > number_places().size());
}

TEST_CASE("The engine takes any mixture of numbers that a spec sheet is read with") {
  CHECK(rc::check("mixtures", [] {
    json file = test::small_spec_sheet();
    const auto changes = *rc::gen::inRange(1, 4);
    for (int change = 0; change < changes; ++change) {
      file[json::json_pointer(*rc::gen::elementOf(number_places()))] = some_number();
    }
    const auto spec = read_spec_sheet(file.dump());
    RC_PRE(spec.has_value());
    RC_ASSERT(refusal_of(spec->lower) == "");
    RC_ASSERT(refusal_of(spec->upper) == "");
  }));
}
