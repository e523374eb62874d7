#include "float_ranking.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "float_judgement.h"
#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

FloatRanking ranked(const Tray& tray, const FloatCase& disc_float, double sensitivity, double sd) {
  return rank_shims(tray, disc_float, judge_float(disc_float, spot_runs(disc_float)), {sensitivity, sd});
}

std::vector<std::string> order(const FloatRanking& ranking, std::size_t count) {
  std::vector<std::string> ids;
  for (std::size_t place = 0; place < count; ++place) {
    ids.push_back(ranking.shims[place].shim);
  }
  return ids;
}

}  // namespace

TEST_CASE("the nearest to the target comes first among those that are as good as sure") {
  const auto ranking = ranked(eighteen(), three_spots(930, 900, 960), 1.0, 0.1);
  CHECK(ranking.ideal_mm == Approx(1.98));
  CHECK(order(ranking, 3) == std::vector<std::string>{"2000", "1950", "2050"});
  CHECK(ranking.shims.size() == 18);
  CHECK(ranking.shims[0].predicted_mm == Approx(0.53));
  CHECK(ranking.shims[0].u_mm == Approx(0.0409661106553));
}

TEST_CASE("a target of its own moves the order") {
  FloatCase disc_float = three_spots(930, 930, 930);
  disc_float.target = um(700);
  const auto ranking = ranked(eighteen(), disc_float, 1.0, 0.1);
  CHECK(ranking.ideal_mm == Approx(1.83));
  CHECK(order(ranking, 2) == std::vector<std::string>{"1850", "1800"});
}

TEST_CASE("at equal distance the smaller change comes first, then the thinner shim") {
  // Target 0.55 from 0.925: 1.975 would be ideal, 1.95 and 2.00 are as far from it.
  CHECK(order(ranked(eighteen(), three_spots(925, 925, 925), 1.0, 0.01), 2) ==
        std::vector<std::string>{"1950", "2000"});
  // The fitted shim hits the target: a step either way is as far and as large a change.
  CHECK(order(ranked(eighteen(), three_spots(550, 550, 550), 1.0, 0.01), 3) ==
        std::vector<std::string>{"1600", "1550", "1650"});
}

TEST_CASE("chances equal to a millionth are ordered by distance") {
  // Nothing is sure: with no certainty in the sensitivity all far shims have hardly any chance.
  FloatCase disc_float = three_spots(5000, 5000, 5000);
  const auto ranking = ranked(eighteen(), disc_float, 1.0, 0.01);
  CHECK(ranking.shims.front().p_within < 1e-6);
  CHECK(order(ranking, 2) == std::vector<std::string>{"2150", "2100"});
}

TEST_CASE("the fitted shim is as uncertain as its reading and no more") {
  const FloatCase disc_float = three_spots(500, 510, 520);
  const auto judgement = judge_float(disc_float, spot_runs(disc_float));
  for (const auto& each : rank_shims(eighteen(), disc_float, judgement, {1.0, 0.1}).shims) {
    if (each.shim == "1600") {
      CHECK(each.u_mm == judgement.u_mean_mm);
      CHECK(each.predicted_mm == judgement.mean_mm);
    } else {
      CHECK(each.u_mm > judgement.u_mean_mm);
    }
  }
}

TEST_CASE("a thicker shim never predicts more float") {
  CHECK(rc::check("predictions fall from thin to thick", [] {
    const auto draw = [] { return *rc::gen::inRange<std::int64_t>(100, 1500); };
    const double sensitivity = *rc::gen::inRange(1, 3000) / 1000.0;
    const auto ranking = ranked(eighteen(), three_spots(draw(), draw(), draw()), sensitivity, 0.1);
    auto shims = ranking.shims;
    std::sort(shims.begin(), shims.end(),
              [](const auto& left, const auto& right) { return std::stoll(left.shim) < std::stoll(right.shim); });
    for (std::size_t place = 1; place < shims.size(); ++place) {
      RC_ASSERT(shims[place].predicted_mm < shims[place - 1].predicted_mm);
    }
  }));
}

TEST_CASE("with next to no uncertainty the best shim is the one nearest to the target") {
  CHECK(rc::check("nearest of those inside", [] {
    const auto value = *rc::gen::inRange<std::int64_t>(860, 1100);
    FloatCase disc_float = three_spots(value, value, value);
    disc_float.resolution_mm = 1e-9;
    disc_float.mpe_mm = 0.0;
    disc_float.repeatability_mm = 0.0;
    const auto ranking = ranked(even_tray(18, 1300, 50, 1e-9), disc_float, 1.0, 1e-9);
    const auto ideal_um = 1600 + value - 550;
    RC_ASSERT(std::abs(std::stoll(ranking.shims.front().shim) - ideal_um) <= 25);
  }));
}
