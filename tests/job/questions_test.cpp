#include "shimwright/job/questions.h"

#include <catch2/catch.hpp>

#include "bench.h"
#include "shimwright/job/judgement.h"

/// Each question provoked at the bench, answered by confirming and by entering anew.
namespace shimwright::job::test {

namespace {

using Codes = std::vector<std::string>;

void check_asked(const Bench& bench, const std::string& step, const std::string& code) {
  CHECK(bench.questions(step) == Codes{code});
  CHECK(bench.step(step) == "held");
  const auto* held = std::get_if<Held>(&bench.state.step(step));
  REQUIRE(held != nullptr);
  const std::string sentence = held->questions.front().message.in_english();
  CHECK(sentence.find('{') == std::string::npos);
  CHECK(sentence.find("confirm") != std::string::npos);
  CHECK(bench.refusal(Confirm{step, "some_other", ""}) == "no_such_question");
}

std::string confirmed(Bench bench, const std::string& step, const std::string& code) {
  bench.take(Confirm{step, code, "looked twice"});
  CHECK(bench.questions(step).empty());
  return bench.step(step);
}

}  // namespace

TEST_CASE("Floats that may not be millimetres") {
  Bench bench;
  bench.answer_up_to("lower-float").runs("lower-float", {"55", "54", "56"});
  check_asked(bench, "lower-float", "unit_in_doubt");
  CHECK(bench.conclusion("lower-float") == "question");
  CHECK(confirmed(bench, "lower-float", "unit_in_doubt") == "held");  // 55 mm is still no float
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::measure_again}).answer("lower-float");
  CHECK(bench.step("lower-float") == "accepted");
}

TEST_CASE("A dial that ran backwards") {
  Bench bench;
  bench.answer_up_to("lower-float").float_twice("lower-float", {"-0.55", "-0.54", "-0.56"});
  check_asked(bench, "lower-float", "dial_reversed");
  CHECK(confirmed(bench, "lower-float", "dial_reversed") == "accepted");
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::measure_again}).answer("lower-float");
  CHECK(bench.step("lower-float") == "accepted");
}

TEST_CASE("What was confirmed of one series is asked again of the next") {
  Bench bench;
  bench.answer_up_to("lower-float").float_twice("lower-float", {"-0.55", "-0.54", "-0.56"});
  bench.take(Confirm{"lower-float", "dial_reversed", ""});
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::measure_again});
  bench.runs("lower-float", {"-0.55", "-0.54", "-0.56"});
  check_asked(bench, "lower-float", "dial_reversed");
}

TEST_CASE("A turn of the dial missed at one spot") {
  Bench bench;
  bench.answer_up_to("lower-float").runs("lower-float", {"0.55", "1.54", "0.56"});
  check_asked(bench, "lower-float", "turn_missed");
  CHECK(confirmed(bench, "lower-float", "turn_missed") == "held");  // the spread remains
  bench.take(BeginSeries{"lower-float", {2}, SeriesReason::measure_again});
  bench.take(EnterFloatRun{"lower-float", 2, "0", "0.54", "", "dial_gauge"});
  CHECK(bench.questions("lower-float").empty());
  bench.runs("lower-float", {"0.55", "0.54", "0.56"});
  CHECK(bench.step("lower-float") == "accepted");
}

TEST_CASE("A turn of the dial missed at every spot, against what the new shim promised") {
  Bench bench;
  bench.answer_up_to("lower-float").float_twice("lower-float", {"1.55", "1.54", "1.56"});
  CHECK(bench.questions("lower-float").empty());  // nothing to compare with yet
  bench.take(BeginAssembly{{Side::lower}, "too large"});
  bench.shim[Side::lower] = "1.65";
  bench.answer_up_to("lower-float").float_twice("lower-float", {"0.50", "0.49", "0.51"});
  check_asked(bench, "lower-float", "turn_missed");
  CHECK(bench.conclusion("lower-float") == "keep");
  CHECK(confirmed(bench, "lower-float", "turn_missed") == "accepted");
  bench.take(BeginSeries{"lower-float", {}, SeriesReason::measure_again});
  bench.float_twice("lower-float", {"1.50", "1.49", "1.51"});
  CHECK(bench.questions("lower-float").empty());
}

TEST_CASE("Large and small shim in each other's place") {
  Bench bench;
  bench.answer_up_to("lower-float").runs("lower-float", too_small);
  CHECK(bench.questions("lower-float").empty());
  for (const std::string id : {"hub-in", "hub-ring-new", "hub-ring-seated", "upper-dial-set"}) {
    bench.answer(id);
  }
  bench.answer("upper-float-temperature").runs("upper-float", too_large);
  check_asked(bench, "upper-float", "shims_exchanged");
  CHECK(confirmed(bench, "upper-float", "shims_exchanged") == "held");
  bench.take(BeginSeries{"upper-float", {}, SeriesReason::seated_again}).answer("upper-float");
  CHECK(bench.step("upper-float") == "accepted");
}

TEST_CASE("Floats off the same way, or as no exchange would make them, ask nothing of the kind") {
  for (const auto& [lower, upper] : {std::pair(too_large, too_large), std::pair(too_large, too_small)}) {
    Bench bench;
    bench.answer_up_to("lower-float").runs("lower-float", lower);
    for (const std::string id : {"hub-in", "hub-ring-new", "hub-ring-seated"}) {
      bench.answer(id);
    }
    bench.runs("upper-float", upper);
    CHECK(bench.questions("upper-float").empty());
  }
}

TEST_CASE("A new shim far from the one taken out") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  bench.try_shim("large-gauge-fit", "1.75", Fit::tight).try_shim("large-gauge-fit", "1.70", Fit::snug);
  bench.take(ChooseShim{"large-gauge-fit", "1.70", ""});
  check_asked(bench, "large-gauge-fit", "far_from_old_shim");
  CHECK(confirmed(bench, "large-gauge-fit", "far_from_old_shim") == "accepted");
  bench.take(ChooseShim{"large-gauge-fit", "1.65", "the seat looked worn"});
  CHECK(bench.step("large-gauge-fit") == "accepted");  // one step is no news
}

TEST_CASE("A shim measured that is not the one chosen") {
  Bench bench;
  bench.answer_up_to("large-shim-measured");
  bench.enter("large-shim-measured", "thickness", "1.75", "micrometer");
  check_asked(bench, "large-shim-measured", "not_the_chosen_shim");
  CHECK(confirmed(bench, "large-shim-measured", "not_the_chosen_shim") == "accepted");
  bench.enter("large-shim-measured", "thickness", "1.612", "micrometer");
  CHECK(bench.step("large-shim-measured") == "accepted");
  bench.enter("large-shim-measured", "thickness", "1.613", "micrometer");
  check_asked(bench, "large-shim-measured", "not_the_chosen_shim");
}

TEST_CASE("A stamp that is not the one read when the pack was unpacked") {
  Bench bench("D6-1.json");
  bench.answer_up_to("large-depth");
  bench.take(EnterDepths{"large-depth", {"5.05", "5.05"}, "2.90", "-0.02", "depth_gauge"});
  bench.take(ChooseShim{"large-depth", "1.80", ""});
  check_asked(bench, "large-depth", "stamp_differs");
  CHECK(confirmed(bench, "large-depth", "stamp_differs") == "accepted");
  bench.answer("large-depth");  // with the stamp as read before
  CHECK(bench.step("large-depth") == "accepted");
}

TEST_CASE("A pack that is not the one the last job left") {
  Bench bench;
  bench.context.previous_pack = PreviousPack{"HL-0977", "P-123", {}};
  bench.answer_up_to("old-pack-serial").take(WriteText{"old-pack-serial", "P-321"});
  check_asked(bench, "old-pack-serial", "other_pack");
  CHECK(confirmed(bench, "old-pack-serial", "other_pack") == "accepted");
  bench.take(WriteText{"old-pack-serial", "P-123"});
  CHECK(bench.step("old-pack-serial") == "accepted");
}

TEST_CASE("A float as found that is less than the last job left") {
  Bench bench;
  bench.context.previous_pack = PreviousPack{"HL-0977", "P-123", {{Side::lower, quantity::micrometres(600)}}};
  bench.answer_up_to("lower-float-as-found").runs("lower-float-as-found", {"0.50", "0.51", "0.52"});
  check_asked(bench, "lower-float-as-found", "less_than_left");
  CHECK(confirmed(bench, "lower-float-as-found", "less_than_left") == "accepted");
  bench.take(BeginSeries{"lower-float-as-found", {}, SeriesReason::measure_again});
  bench.runs("lower-float-as-found", {"0.60", "0.61", "0.62"});
  CHECK(bench.step("lower-float-as-found") == "accepted");
}

TEST_CASE("A number typed without its decimal mark") {
  Bench bench;
  bench.answer_up_to("face-to-shaft-end");
  bench.enter("face-to-shaft-end", "depth", "690", "depth_gauge");
  check_asked(bench, "face-to-shaft-end", "hundredths_in_doubt");
  CHECK(confirmed(bench, "face-to-shaft-end", "hundredths_in_doubt") == "held");  // 690 mm is over its limit
  bench.enter("face-to-shaft-end", "depth", "6,90", "depth_gauge");
  CHECK(bench.step("face-to-shaft-end") == "accepted");
}

TEST_CASE("A whole number that no decimal mark would bring within is not questioned") {
  const LimitUsed limit{quantity::Unit::millimetre, 250, 850, 2, ""};
  CHECK(hundredths_in_doubt(typed("62"), limit));
  CHECK_FALSE(hundredths_in_doubt(typed("20"), limit));   // 0.20 is too small as well
  CHECK_FALSE(hundredths_in_doubt(typed("620"), limit));  // 6.20 is too large as well
  CHECK_FALSE(hundredths_in_doubt(typed("62.0"), limit));
  CHECK_FALSE(hundredths_in_doubt(typed("0.62"), limit));
}

TEST_CASE("Without an old shim, a chosen one or a last job there is nothing to compare with") {
  const Bench bench;
  const auto tray = tray_of(bench.state, Side::lower, bench.context);
  CHECK_FALSE(far_from_old_shim(bench.state, Side::lower, quantity::micrometres(1950), tray));
  CHECK_FALSE(not_the_chosen_shim(bench.state, Side::lower, quantity::micrometres(1950), tray));
  CHECK_FALSE(stamp_differs(bench.state, Side::lower, quantity::micrometres(20)));
  CHECK_FALSE(other_pack(bench.state, "P-1", bench.context));
  CHECK(as_found_questions(bench.state, Side::lower, quantity::micrometres(100), bench.context).empty());
}

}  // namespace shimwright::job::test
