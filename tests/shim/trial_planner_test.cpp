#include "trial_planner.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "reference_gauge_fit.h"
#include "shim_cases.h"
#include "trial_log.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

TrialPlanner::Plan planned(const Tray& tray, const GaugeFitCase& gauge_fit) {
  const SeatModel model = seat_model(tray, gauge_fit);
  const auto belief = SeatBelief::after_trials(model, gauge_fit);
  REQUIRE(belief);
  const auto proved = trial_log(model, gauge_fit.trials).proved_regions(model);
  return TrialPlanner(model, *belief, proved).plan();
}

/// An even belief over exactly `count` regions without noise: one shim more at each end, the lower felt loose, the
/// upper tight, the band as wide as the step, and steps against which the least feel allowed is nothing.
double trials_over(int count) {
  constexpr int step_um = 5000;
  const Tray tray = even_tray(count + 2, 10000, step_um, 0.0001);
  const GaugeFitCase gauge_fit =
      with_trials(flat_case(step_um, 0.001), {{tray.back().id, Fit::tight}, {tray.front().id, Fit::loose}});
  return planned(tray, gauge_fit).expected_trials;
}

/// Mean depth of the nodes of a complete binary tree, the root counted as one.
double mean_depth(int nodes) {
  int sum = 0;
  for (int node = 1; node <= nodes; ++node) {
    for (int ancestor = node; ancestor > 0; ancestor /= 2) {
      ++sum;
    }
  }
  return static_cast<double>(sum) / nodes;
}

}  // namespace

TEST_CASE("without noise the planner is the best search tree") {
  // D. E. Knuth, The Art of Computer Programming, vol. 3, 6.2.1: binary search is optimal where all are as likely; the
  // mean number of probes is the internal path length of the complete binary tree (root counted) over its nodes.
  struct Row {
    int shims;
    double trials;
  };
  for (const auto& row : {Row{7, 17.0 / 7.0}, Row{10, 2.9}, Row{13, 41.0 / 13.0}, Row{15, 49.0 / 15.0}, Row{20, 3.7}}) {
    INFO(row.shims << " shims");
    CHECK(mean_depth(row.shims) == Approx(row.trials));
    CHECK(trials_over(row.shims) == Approx(row.trials).margin(0.002));
  }
}

TEST_CASE("one trial of a region that holds nearly everything is left, none once it is proved") {
  const Tray tray = twelve();
  const std::vector<Trial> bracket{{"1800", Fit::tight}, {"1600", Fit::loose}};
  const auto open = planned(tray, with_trials(flat_case(100), bracket));
  CHECK(open.qualifies);
  CHECK_FALSE(open.proved);
  CHECK(open.expected_trials == 1.0);
  CHECK(open.next_shim == 5);
  auto trials = bracket;
  trials.push_back({"1700", Fit::snug});
  const auto closed = planned(tray, with_trials(flat_case(100), trials));
  CHECK(closed.proved);
  CHECK(closed.expected_trials == 0.0);
}

TEST_CASE("equal plans go to the thicker shim") {
  // Two regions and the two outer ones, all as likely: either shim may come first.
  const Tray tray = even_tray(2, 1000, 1000, 0.0001);
  CHECK(planned(tray, flat_case(1000, 0.001)).next_shim == 1);
}

namespace {

struct Drawn {
  Tray tray;
  GaugeFitCase gauge_fit;
};

Drawn drawn_case() {
  Drawn drawn;
  std::int64_t thickness = 1000;
  const int count = *rc::gen::inRange(1, 8);
  for (int shim = 0; shim < count; ++shim) {
    drawn.tray.push_back({std::to_string(thickness), um(thickness), *rc::gen::inRange(1, 12) / 1000.0});
    thickness += *rc::gen::inRange(10, 150);
  }
  drawn.gauge_fit = flat_case(*rc::gen::inRange(5, 250), *rc::gen::inRange(1, 50) / 1000.0);
  if (*rc::gen::arbitrary<bool>()) {
    drawn.gauge_fit.prior = SeatPrior{*rc::gen::inRange(900, 1600) / 1000.0, *rc::gen::inRange(10, 300) / 1000.0};
  }
  const int trials = *rc::gen::inRange(0, 4);
  for (int trial = 0; trial < trials; ++trial) {
    const auto shim = static_cast<std::size_t>(*rc::gen::inRange(0, count));
    drawn.gauge_fit.trials.push_back({drawn.tray[shim].id, *rc::gen::element(Fit::tight, Fit::snug, Fit::loose)});
  }
  return drawn;
}

}  // namespace

TEST_CASE("the planner agrees with a word-for-word implementation") {
  CHECK(rc::check("same plan, same expected trials", [] {
    const Drawn drawn = drawn_case();
    const SeatModel model = seat_model(drawn.tray, drawn.gauge_fit);
    RC_PRE(contradictions(model, drawn.gauge_fit.trials).empty());
    const auto belief = SeatBelief::after_trials(model, drawn.gauge_fit);
    RC_PRE(belief.has_value());
    const auto proved = trial_log(model, drawn.gauge_fit.trials).proved_regions(model);
    const auto plan = TrialPlanner(model, *belief, proved).plan();
    const auto wanted = shimwright::reference::GaugeFit(drawn.tray, drawn.gauge_fit).plan();
    RC_ASSERT(plan.qualifies == wanted.qualifies);
    RC_ASSERT(plan.proved == wanted.proved);
    RC_ASSERT(std::abs(plan.expected_trials - wanted.expected_trials) < 1e-6);
    RC_ASSERT(static_cast<int>(plan.next_shim) + 1 == wanted.next_shim);
    if (plan.qualifies) {
      RC_ASSERT(static_cast<int>(plan.region) == wanted.region);
    }
  }));
}
