#include "shimwright/job/to_decide.h"

#include <algorithm>

#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

std::optional<PointKind> kind_at(const Bench& bench, const std::string& step) {
  for (const OpenPoint& point : to_decide(bench.state)) {
    if (point.step == step) {
      return point.kind;
    }
  }
  return std::nullopt;
}

}  // namespace

TEST_CASE("A job just opened has every step of its sheet before it, in order, but those not asked") {
  const Bench bench;
  const auto points = to_decide(bench.state);
  std::vector<std::string> open;
  for (const sheet::Step* step : bench.state.sheets.job->steps()) {
    if (!passed(bench.state.step(step->id))) {
      open.push_back(step->id);
    }
  }
  REQUIRE(points.size() == open.size());
  for (std::size_t index = 0; index < points.size(); ++index) {
    CHECK(points[index].step == open[index]);
    CHECK(points[index].message.in_english().find('{') == std::string::npos);
  }
  CHECK(kind_at(bench, "sign-technician") == PointKind::signature);
  CHECK(kind_at(bench, "odometer").has_value());
  CHECK(signers_of(bench.state).empty());
}

TEST_CASE("A finding, a reading off its limit and an unproven step keep from sealing") {
  Bench bench;
  bench.answer_up_to("sign-technician").take(CheckStep{"leaks-and-levels", false, "a drop at the seal"});
  CHECK(kind_at(bench, "leaks-and-levels") == PointKind::finding);
  const auto points = to_decide(bench.state);
  CHECK(std::any_of(points.begin(), points.end(), keeps_from_sealing));
  bench.take(Deviate{"leaks-and-levels", "as agreed"});
  CHECK_FALSE(kind_at(bench, "leaks-and-levels"));
}

TEST_CASE("A question not answered is a point of its own") {
  Bench bench;
  bench.answer_up_to("lower-float");
  bench.state.steps["lower-float"] = Held{1, {Question{"unit_in_doubt", {}}}, true};
  CHECK(kind_at(bench, "lower-float") == PointKind::question);
  bench.state.steps["lower-float"] = Unproven{1};
  CHECK(kind_at(bench, "lower-float") == PointKind::unproven);
}

TEST_CASE("What is only missing does not keep from sealing") {
  for (const PointKind kind :
       {PointKind::hold_point, PointKind::question, PointKind::finding, PointKind::unproven, PointKind::signature}) {
    CHECK(keeps_from_sealing({kind, "", {}}));
  }
  CHECK_FALSE(keeps_from_sealing({PointKind::missing, "", {}}));
}

TEST_CASE("Those sign who signed the job, and a checker left out with a reason is none") {
  Bench both;
  both.answer_up_to("sign-checker");
  CHECK(signers_of(both.state) == std::vector<std::string>{"MK"});
  Bench alone = both;
  both.answer("sign-checker");
  REQUIRE(signers_of(both.state).size() == 2);
  CHECK(signers_of(both.state).front() == "MK");
  CHECK(signers_of(both.state).back() != "MK");
  alone.take(Deviate{"sign-checker", "alone today"});
  CHECK(signers_of(alone.state) == std::vector<std::string>{"MK"});
  for (const Bench* each : {&both, &alone}) {
    const auto points = to_decide(each->state);
    CHECK_FALSE(std::any_of(points.begin(), points.end(), keeps_from_sealing));
  }
}

}  // namespace shimwright::job::test
