#include "job_words.h"

#include <catch2/catch.hpp>
#include <set>
#include <vector>

#include "ui_bench.h"

using namespace shimwright;

TEST_CASE("every state of a step has a mark of its own") {
  const std::vector<job::StepState> states{job::Open{},
                                           job::InWork{},
                                           job::Accepted{1},
                                           job::Held{1, {}, false},
                                           job::DeviationTaken{1},
                                           job::SaidNotRequired{1},
                                           job::Unproven{1}};
  std::set<widgets::Mark> marks;
  for (const job::StepState& state : states) {
    marks.insert(bench::mark_of(state));
  }
  CHECK(marks.size() == states.size());
}

TEST_CASE("stages tell how far they are, without the steps that are not asked") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  const job::JobState& state = bench.workbench().state();
  const sheet::Stage* stage = state.sheets.job->stage_of("large-gauge-fit");
  REQUIRE(stage != nullptr);
  const auto progress = bench::progress_of(state, *stage);
  CHECK(progress.asked == 4);  // the depth step is not asked for this gearbox
  CHECK(progress.passed == 2);
  CHECK(progress.mark == widgets::Mark::in_work);
  CHECK(bench::progress_of(state, state.sheets.job->stages.front()).mark == widgets::Mark::done);
  CHECK(bench::progress_of(state, state.sheets.job->stages.back()).mark == widgets::Mark::open);
}

TEST_CASE("the way goes from step to step, past those that are not asked") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  const job::JobState& state = bench.workbench().state();
  const sheet::Step* after = bench::step_after(state, "large-bearing-seated");
  REQUIRE(after != nullptr);
  CHECK(after->id == "large-gauge-fit");
  const sheet::Step* before = bench::step_before(state, "large-shim-measured");
  REQUIRE(before != nullptr);
  CHECK(before->id == "large-gauge-fit");
  CHECK(bench::step_before(state, state.sheets.job->stages.front().steps.front().id) == nullptr);
  const sheet::Step* entrance = bench::entrance_of(state, "shim-large");
  REQUIRE(entrance != nullptr);
  CHECK(entrance->id == "large-gauge-fit");
  const sheet::Step* done = bench::entrance_of(state, "receive");
  REQUIRE(done != nullptr);
  CHECK(done->id == "complaint-read-back");
}

TEST_CASE("four numbers say where the job stands") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  auto numbers = bench::panel_numbers(bench.workbench().state());
  REQUIRE(numbers.size() == 4);
  CHECK(numbers[0].value == QString::fromUtf8("–"));
  CHECK(numbers[2].value == QString::fromUtf8("–"));
}

TEST_CASE("all four numbers stand at the end of a job") {
  test::UiBench bench;
  bench.go_to("");
  for (const auto& number : bench::panel_numbers(bench.workbench().state())) {
    CHECK(number.value != QString::fromUtf8("–"));
    CHECK_FALSE(number.bad);
  }
}

TEST_CASE("parts that are still to be fitted make a list for an order") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  const auto lines = bench::parts_to_order(bench.workbench().state(), "en");
  CHECK_FALSE(lines.empty());
  test::UiBench done;
  done.go_to("");
  CHECK(bench::parts_to_order(done.workbench().state(), "en").empty());
}

TEST_CASE("every entry of a whole job can be said in a few words") {
  test::UiBench bench;
  bench.go_to("");
  for (const job::Entry& entry : bench.workbench().state().entries) {
    CHECK_FALSE(bench::entry_words(bench.workbench().state(), entry, "en").isEmpty());
  }
  const auto words = [&](const job::EntryBody& body) {
    return bench::entry_words(bench.workbench().state(), {1, {}, {}, body}, "en");
  };
  CHECK(words(job::Sealed{std::string(64, 'a'), {}}) == "Sealed");
  CHECK(words(job::AddendumAdded{"found later", "oil topped up"}) == "Added after sealing: found later");
}

TEST_CASE("times are those of the place where the entry was made") {
  CHECK(bench::time_text({1795421400000, 60, false}).contains("09:10"));
  CHECK(bench::time_text({1795421400000, 0, false}).contains("08:10"));
}

TEST_CASE("a shim's number is said to be a shim, a float has its unit") {
  test::UiBench bench;
  bench.go_to("");
  const auto numbers = bench::panel_numbers(bench.workbench().state());
  CHECK(numbers[0].title == "shim, large bearing");
  CHECK(numbers[1].title == "shim, small bearing");
  CHECK(numbers[0].value == "1.95");
  CHECK(numbers[2].value.endsWith(" mm"));
  CHECK(numbers[3].value.endsWith(" mm"));
}

TEST_CASE("on the border of two sizes both stand above the drawing") {
  test::UiBench bench("03-sum-on-the-border");
  bench.go_to("large-depth");
  std::string gauge;
  for (const auto& each : bench.workbench().context().instruments) {
    gauge = each.kind == sheet::InstrumentKind::depth_gauge ? each.id : gauge;
  }
  REQUIRE(bench.workbench().send(job::EnterDepths{"large-depth", {"5.12", "5.13"}, "2.93", "-0.12", gauge}));
  CHECK(bench::panel_numbers(bench.workbench().state())[0].value == "1.65 / 1.80 ?");
}
