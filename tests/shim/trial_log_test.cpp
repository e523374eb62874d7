#include "trial_log.h"

#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

std::vector<ContradictingTrials> found(std::vector<Trial> trials, double feel_u_mm = 0.010) {
  const Tray tray = twelve();
  return contradictions(seat_model(tray, flat_case(100, feel_u_mm)), trials);
}

std::vector<bool> proved(const Tray& tray, std::int64_t band_um, const std::vector<Trial>& trials) {
  const SeatModel model = seat_model(tray, flat_case(band_um));
  return trial_log(model, trials).proved_regions(model);
}

}  // namespace

TEST_CASE("trials contradict where their bounds cross by more than the feel allows") {
  using Pairs = std::vector<ContradictingTrials>;
  CHECK(found({{"1600", Fit::tight}, {"1800", Fit::snug}}) == Pairs{{1, 0}});
  CHECK(found({{"1700", Fit::snug}, {"1700", Fit::tight}}).empty());
  CHECK(found({{"1700", Fit::loose}, {"1700", Fit::tight}}) == Pairs{{0, 1}});
  CHECK(found({{"1700", Fit::loose}, {"1700", Fit::tight}}, 0.100).empty());
  CHECK(found({{"1700", Fit::loose}, {"1700", Fit::snug}}).empty());
  CHECK(found({{"1500", Fit::snug}, {"1700", Fit::loose}}) == Pairs{{1, 0}});
  CHECK(found({{"1900", Fit::loose}, {"1500", Fit::tight}, {"1600", Fit::snug}, {"1800", Fit::snug}}) ==
        Pairs{{0, 1}, {0, 2}, {0, 3}, {2, 1}, {3, 1}, {3, 2}});
}

TEST_CASE("a contradiction begins just over three times the joint uncertainty") {
  const Tray tray{{"a", um(1000), 0.003}, {"b", um(1044), 0.003}, {"c", um(1045), 0.003}};
  const SeatModel model = seat_model(tray, flat_case(100));  // 3·√2·√109 = 44.29 µm
  CHECK(contradictions(model, {{"a", Fit::tight}, {"b", Fit::snug}}).empty());
  CHECK(contradictions(model, {{"a", Fit::tight}, {"c", Fit::snug}}).size() == 1);
}

TEST_CASE("a region is proved by its shim felt snug, or loose with nothing thicker that could go in") {
  const Tray tray = even_tray(3, 1000, 100);
  using Regions = std::vector<bool>;
  CHECK(proved(tray, 60, {}) == Regions{false, false, false, false, false});
  CHECK(proved(tray, 60, {{"1100", Fit::snug}}) == Regions{false, false, true, false, false});
  CHECK(proved(tray, 60, {{"1100", Fit::loose}}) == Regions{false, false, true, false, false});
  CHECK(proved(tray, 100, {{"1100", Fit::loose}}) == Regions{false, false, false, false, false});
  CHECK(proved(tray, 60, {{"1200", Fit::loose}}) == Regions{false, false, false, false, true});
  CHECK(proved(tray, 60, {{"1200", Fit::snug}}) == Regions{false, false, false, true, false});
  CHECK(proved(tray, 60, {{"1000", Fit::tight}}) == Regions{true, false, false, false, false});
  CHECK(proved(tray, 60, {{"1000", Fit::snug}, {"1000", Fit::tight}}) == Regions{true, false, false, false, false});
  CHECK(proved(tray, 60, {{"1100", Fit::tight}}) == Regions{false, false, false, false, false});
}

TEST_CASE("a log counts trials, keeps the last feel and knows what is still below") {
  const Tray tray = twelve();
  const SeatModel model = seat_model(tray, flat_case(100));
  const TrialLog log = trial_log(model, {{"1700", Fit::snug}, {"1500", Fit::snug}, {"1700", Fit::tight}});
  CHECK(log.times_tried[5] == 2);
  CHECK(log.last_fit[5] == Fit::tight);
  CHECK_FALSE(log.all_tight());
  CHECK(log.still_below() == std::vector<std::size_t>{0, 1, 2, 4});
  CHECK(log.lowest_upper_bound_um(model) == 1600);
  const TrialLog none = trial_log(model, {});
  CHECK(none.all_tight());
  CHECK(none.still_below().size() == 12);
  CHECK_FALSE(none.lowest_upper_bound_um(model));
  CHECK_FALSE(trial_log(model, {{"1200", Fit::loose}}).lowest_upper_bound_um(model));
  CHECK(trial_log(model, {{"1200", Fit::tight}}).still_below().empty());
}
