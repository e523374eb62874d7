#include "float_spots.h"

#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

struct Asked {
  std::optional<SpotRuns> runs;
  FloatAnswer answer;
};

Asked asked(const FloatCase& disc_float) {
  Asked asked;
  asked.runs = runs_without_question(disc_float, asked.answer);
  return asked;
}

}  // namespace

TEST_CASE("a run is what the dial moved, a spot the mean of its runs") {
  FloatCase disc_float = three_spots(520, 550, 500);
  disc_float.spots[0].runs = {{um(100), um(620)}, {um(-10), um(511)}};
  const SpotRuns runs = spot_runs(disc_float);
  CHECK(runs[0] == std::vector<std::int64_t>{520, 521});
  CHECK(spot_floats_mm(runs)[0] == Approx(0.5205));
}

TEST_CASE("plausible floats raise no question") {
  const auto plain = asked(three_spots(520, 550, 500));
  CHECK(plain.runs);
  CHECK(plain.answer.findings.empty());
  CHECK(plain.answer.suggest.empty());
}

TEST_CASE("signs both ways ask for the zero again, from more than two hundredths on") {
  const auto mixed = asked(three_spots(520, -550, 500));
  CHECK_FALSE(mixed.runs);
  CHECK(mixed.answer.advice == FloatAdvice::zero_again);
  CHECK(mixed.answer.findings == std::vector<FloatFinding>{FloatFinding::mixed_signs});
  CHECK(asked(three_spots(520, -21, 500)).answer.advice == FloatAdvice::zero_again);
  CHECK(asked(three_spots(520, -20, 500)).runs);
}

TEST_CASE("a dial that runs backwards is asked about, then its sizes are used") {
  FloatCase backwards = three_spots(-520, -550, 15);
  const auto open = asked(backwards);
  CHECK_FALSE(open.runs);
  CHECK(open.answer.advice == FloatAdvice::confirm_direction);
  CHECK(open.answer.findings == std::vector<FloatFinding>{FloatFinding::dial_reversed});
  REQUIRE(open.answer.suggest.size() == 1);
  CHECK(open.answer.suggest[0].unit == SuggestedUnit::mm);
  CHECK(open.answer.suggest[0].float_mm == std::vector<double>{0.52, 0.55, 0.015});
  backwards.direction_confirmed = true;
  const auto confirmed = asked(backwards);
  REQUIRE(confirmed.runs);
  CHECK((*confirmed.runs)[0] == std::vector<std::int64_t>{520});
  CHECK(confirmed.answer.findings == std::vector<FloatFinding>{FloatFinding::dial_reversed});
}

TEST_CASE("a unit that makes no sense is asked about with every unit that would") {
  // Limits 0.25 to 0.85, window -0.05 to 1.15.
  const auto hundredths = asked(three_spots(62000, 66000, 64000));
  CHECK_FALSE(hundredths.runs);
  CHECK(hundredths.answer.advice == FloatAdvice::confirm_unit);
  CHECK(hundredths.answer.findings == std::vector<FloatFinding>{FloatFinding::unit_in_doubt});
  REQUIRE(hundredths.answer.suggest.size() == 1);
  CHECK(hundredths.answer.suggest[0].unit == SuggestedUnit::hundredths);
  CHECK(hundredths.answer.suggest[0].float_mm[1] == Approx(0.66));
  const auto both = asked(three_spots(22000, 22000, 22000));
  REQUIRE(both.answer.suggest.size() == 2);
  CHECK(both.answer.suggest[0].unit == SuggestedUnit::hundredths);
  CHECK(both.answer.suggest[1].unit == SuggestedUnit::thou);
  CHECK(both.answer.suggest[1].float_mm[0] == Approx(0.5588));
  const auto inch = asked(three_spots(20, 22, 24));
  REQUIRE(inch.answer.suggest.size() == 1);
  CHECK(inch.answer.suggest[0].unit == SuggestedUnit::inch);
  CHECK(inch.answer.suggest[0].float_mm[1] == Approx(0.5588));
}

TEST_CASE("a unit is not asked about inside, without a better one, or once it is confirmed") {
  CHECK(asked(three_spots(4250, 4250, 4250)).runs);  // five times the upper limit and no more
  CHECK_FALSE(asked(three_spots(4251, 4251, 4251)).runs);
  CHECK(asked(three_spots(900000, 900000, 900000)).runs);  // in no unit plausible
  CHECK(asked(three_spots(0, 0, 0)).runs);
  CHECK(asked(three_spots(84, 84, 84)).runs);  // over a third of the lower limit
  FloatCase confirmed = three_spots(62000, 66000, 64000);
  confirmed.unit_confirmed = true;
  CHECK(asked(confirmed).runs);
}

TEST_CASE("direction is asked before unit, and both findings stay") {
  FloatCase both = three_spots(-62000, -66000, -64000);
  CHECK(asked(both).answer.advice == FloatAdvice::confirm_direction);
  both.direction_confirmed = true;
  const auto second = asked(both);
  CHECK(second.answer.advice == FloatAdvice::confirm_unit);
  CHECK(second.answer.findings == std::vector<FloatFinding>{FloatFinding::dial_reversed, FloatFinding::unit_in_doubt});
}
