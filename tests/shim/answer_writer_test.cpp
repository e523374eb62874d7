#include <limits>

#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

Json written(const AdviseAnswer& answer) {
  return Json::parse(write_answer(answer));
}

std::vector<std::string> keys(const Json& object) {
  std::vector<std::string> list;
  for (const auto& member : object.items()) {
    list.push_back(member.key());
  }
  return list;
}

}  // namespace

TEST_CASE("an answer without sections is an empty object") {
  CHECK(write_answer({}) == "{}");
}

TEST_CASE("a contradiction has its pairs and nothing else, also without any") {
  GaugeFitAnswer contradiction;
  contradiction.state = GaugeFitState::contradiction;
  CHECK(written({contradiction, {}, {}, {}})["gauge_fit"].dump() == R"({"contradictions":[],"state":"contradiction"})");
  contradiction.contradictions = {{1, 0}};
  CHECK(written({contradiction, {}, {}, {}})["gauge_fit"]["contradictions"].dump() == "[[1,0]]");
}

TEST_CASE("a tilted depth has its state and spread only") {
  DepthAnswer tilted;
  tilted.state = DepthState::tilted;
  tilted.spread = um(540);
  CHECK(written({{}, tilted, {}, {}})["depth"].dump() == R"({"spread_mm":0.54,"state":"tilted"})");
}

TEST_CASE("only the sensitivity may be null") {
  FloatCase disc_float = three_spots(520, 550, 500);
  disc_float.sensitivity.reset();
  const Json answer = written({{}, {}, advise_float(eighteen(), disc_float), {}})["float"];
  CHECK(answer["sensitivity"].is_null());
  for (const auto& [key, value] : answer.items()) {
    INFO(key);
    CHECK((key == "sensitivity" || !value.is_null()));
  }
  CHECK(keys(answer) == std::vector<std::string>{"advice", "findings", "float_mm", "high_at_deg", "mean_mm", "p_within",
                                                 "sensitivity", "shim", "spot_verdicts", "spread_mm", "tilt_mm",
                                                 "u_mean_mm", "u_spot_mm", "verdict"});
}

TEST_CASE("what has no number is left out") {
  FloatCase level = three_spots(500, 500, 500);
  const Json answer = written({{}, {}, advise_float(eighteen(), level), {}})["float"];
  CHECK_FALSE(answer.contains("high_at_deg"));
  FloatAnswer endless;
  endless.ranking = FloatRanking{{}, std::numeric_limits<double>::infinity()};
  CHECK_FALSE(written({{}, {}, endless, {}})["float"].contains("ideal_mm"));
  CHECK(written({{}, {}, {}, CrossCheckAnswer{}})["cross_check"].dump() == R"({"state":"unknown"})");
}

TEST_CASE("numbers are written with all their digits") {
  CrossCheckAnswer answer{CrossCheckState::agree, 0.1 + 0.2};
  CHECK(written({{}, {}, {}, answer})["cross_check"]["p_right"].get<double>() == 0.1 + 0.2);
}
