#include "float_judgement.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;
using shimwright::metrology::Verdict;

namespace {

FloatJudgement judged(const FloatCase& disc_float) {
  return judge_float(disc_float, spot_runs(disc_float));
}

}  // namespace

TEST_CASE("a judgement states mean, spread, tilt and uncertainty") {
  const auto judgement = judged(three_spots(520, 550, 500));
  CHECK(judgement.mean_mm == Approx(0.523333333));
  CHECK(judgement.spread_mm == Approx(0.05));
  CHECK(judgement.tilt_mm == Approx(0.029059326290));
  REQUIRE(judgement.high_at_deg);
  CHECK(*judgement.high_at_deg == Approx(186.58677555));
  CHECK(judgement.u_spot_mm.size() == 3);
  CHECK(judgement.u_spot_mm[0] == Approx(0.010677078252));
  CHECK(judgement.u_mean_mm == Approx(0.0077602978178));
  CHECK(judgement.verdict == Verdict::within);
  CHECK(judgement.p_within == Approx(1.0));
}

TEST_CASE("each spot has the guard of its own number of runs") {
  // Guard 1.645·u: 0.01756 mm with one run, 0.01412 with two.
  FloatCase disc_float = three_spots(835, 835, 500);
  disc_float.spots[1].runs.push_back(disc_float.spots[1].runs.front());
  const auto judgement = judged(disc_float);
  CHECK(judgement.spot_verdicts == std::vector<Verdict>{Verdict::on_limit, Verdict::within, Verdict::within});
  CHECK(judgement.verdict == Verdict::on_limit);
}

TEST_CASE("an instrument is too coarse where its guards meet") {
  FloatCase disc_float = three_spots(520, 550, 500);
  CHECK_FALSE(too_coarse(disc_float, judged(disc_float)));
  disc_float.repeatability_mm = 0.2;
  CHECK(too_coarse(disc_float, judged(disc_float)));
}

TEST_CASE("runs of one spot disagree beyond three times their scatter or two divisions") {
  // 3·√2·0.008 = 33.9 µm.
  FloatCase disc_float = three_spots(520, 550, 500);
  disc_float.spots[0].runs.push_back({um(0), um(553)});
  CHECK_FALSE(runs_disagree(disc_float, spot_runs(disc_float)));
  disc_float.spots[0].runs.push_back({um(0), um(554)});
  CHECK(runs_disagree(disc_float, spot_runs(disc_float)));
  disc_float.resolution_mm = 0.017;
  CHECK_FALSE(runs_disagree(disc_float, spot_runs(disc_float)));
}

TEST_CASE("pairs teach the sensitivity, those without a change of shim do not") {
  FloatCase disc_float = three_spots(520, 550, 500);
  disc_float.history = {{um(200), um(-100)}, {um(100), um(-150)}, {um(300), um(-360)}, {um(0), um(50)}};
  const auto estimate = sensitivity_of(disc_float);
  REQUIRE(estimate);
  CHECK(estimate->slope.mean == Approx(1.0166666667));
  CHECK(estimate->slope.sd == Approx(0.21107455824));
  CHECK(estimate->pairs == 3);
  disc_float.sensitivity.reset();
  disc_float.history.clear();
  CHECK_FALSE(sensitivity_of(disc_float));
}

TEST_CASE("exchanging the spots changes no verdict") {
  CHECK(rc::check("spots in another order", [] {
    const auto draw = [] { return *rc::gen::inRange<std::int64_t>(100, 1000); };
    FloatCase disc_float = three_spots(draw(), draw(), draw());
    FloatCase turned = disc_float;
    std::rotate(turned.spots.begin(), turned.spots.begin() + *rc::gen::inRange(0, 3), turned.spots.end());
    if (*rc::gen::arbitrary<bool>()) {
      std::swap(turned.spots[0], turned.spots[1]);
    }
    const auto plain = judged(disc_float);
    const auto other = judged(turned);
    RC_ASSERT(plain.verdict == other.verdict);
    RC_ASSERT(std::abs(plain.p_within - other.p_within) < 1e-9);
    RC_ASSERT(std::abs(plain.tilt_mm - other.tilt_mm) < 1e-9);
    RC_ASSERT(advise_float(eighteen(), disc_float).advice == advise_float(eighteen(), turned).advice);
    RC_ASSERT(advise_float(eighteen(), disc_float).shim == advise_float(eighteen(), turned).shim);
  }));
}

TEST_CASE("a tenth of nothing as uncertainty leaves plain comparisons") {
  CHECK(rc::check("exact verdicts", [] {
    const auto value = *rc::gen::inRange<std::int64_t>(1, 1200);
    RC_PRE(value != 250 && value != 850);
    FloatCase disc_float = three_spots(value, value, value);
    disc_float.resolution_mm = 1e-12;
    disc_float.mpe_mm = 0.0;
    disc_float.repeatability_mm = 0.0;
    const auto judgement = judged(disc_float);
    const Verdict wanted = value < 250 ? Verdict::too_small : value > 850 ? Verdict::too_large : Verdict::within;
    RC_ASSERT(judgement.verdict == wanted);
    RC_ASSERT(judgement.p_within == (wanted == Verdict::within ? 1.0 : 0.0));
  }));
}
