#include "float_words.h"

#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

job::FloatRun run_of(std::int64_t rest, std::int64_t lifted, int decimals) {
  job::FloatRun run;
  run.rest = {rest, decimals, quantity::Unit::millimetre};
  run.lifted = {lifted, decimals, quantity::Unit::millimetre};
  return run;
}

sheet::FloatSpec limits() {
  sheet::FloatSpec spec;
  spec.least = quantity::Length(250);
  spec.most = quantity::Length(850);
  spec.guard_factor = 1.645;
  return spec;
}

}  // namespace

TEST_CASE("a run is told as exactly as it was typed") {
  CHECK(bench::run_words(run_of(10, 930, 2)) == "0.92");
  CHECK(bench::run_words(run_of(0, 930, 3)) == "0.930");
  CHECK(bench::run_words(run_of(0, -460, 2)) == QString::fromUtf8("\u22120.46"));
}

TEST_CASE("without a judgement the spots measured are plain ticks, without guard zones") {
  const auto one = run_of(0, 930, 2);
  const auto two = run_of(0, 950, 2);
  const auto view = bench::float_limits(limits(), {{&one, &two}, {}, {&one}}, std::nullopt);
  CHECK(view.guard_mm == 0.0);
  REQUIRE(view.marks.size() == 2);
  CHECK(view.marks[0].mm == Approx(0.94));
  CHECK(view.marks[0].mark == widgets::Mark::none);
  CHECK(view.marks[1].number == 3);
}

TEST_CASE("guard zones are as wide as the engine's uncertainty makes them") {
  job::Judgement judgement;
  judgement.answer.disc_float.emplace();
  judgement.answer.disc_float->judgement.emplace();
  auto& judged = *judgement.answer.disc_float->judgement;
  judged.float_mm = {0.93, 0.5, 0.1};
  judged.u_spot_mm = {0.01, 0.008, 0.01};
  judged.spot_verdicts = {metrology::Verdict::too_large, metrology::Verdict::within, metrology::Verdict::too_small};
  judged.verdict = metrology::Verdict::mixed;
  judged.mean_mm = 0.51;
  judgement.advised.conclusion = job::Conclusion::seat_again;
  const auto view = bench::float_limits(limits(), {}, judgement);
  CHECK(view.guard_mm == Approx(0.01645));
  CHECK(view.marks[2].mark == widgets::Mark::too_small);
  const auto strip = bench::float_strip(judgement, limits(), sheet::Side::upper);
  CHECK(strip.large == "Mixed: 0.10 to 0.93 mm");
  CHECK(strip.small == "upper disc, limits 0.25 to 0.85 mm");
  CHECK(strip.bad);
  judgement.advised.conclusion = job::Conclusion::for_information;
  CHECK(bench::float_limits(limits(), {}, judgement).guard_mm == 0.0);
  CHECK(bench::float_strip(judgement, limits(), sheet::Side::upper).mark == widgets::Mark::none);
}

TEST_CASE("the hint names the turn of the dial where it is known") {
  job::Instrument dial;
  dial.name = "dial 2";
  CHECK_FALSE(bench::dial_hint(dial).contains("turns"));
  dial.turn = quantity::Length(1000);
  CHECK(bench::dial_hint(dial).endsWith("one turn of dial 2 is 1.00 mm."));
}

TEST_CASE("spread and tilt have their unit, and where the float is largest is told from the first spot on") {
  job::Judgement judgement;
  judgement.answer.disc_float.emplace();
  judgement.answer.disc_float->judgement.emplace();
  auto& judged = *judgement.answer.disc_float->judgement;
  judged.spread_mm = 0.055;
  judged.tilt_mm = 0.032;
  judged.high_at_deg = 20.0;
  judgement.engine_case.disc_float.emplace();
  judgement.engine_case.disc_float->max_spread = quantity::Length(150);
  judgement.engine_case.disc_float->spots = {{30.0, {}}, {150.0, {}}, {270.0, {}}};
  judgement.advised.conclusion = job::Conclusion::for_information;
  CHECK(bench::float_facts(judgement) ==
        QString::fromUtf8("Spread 0.055 mm, allowed 0.15 mm; the float is largest at 350° clockwise from spot 1, "
                          "tilt 0.032 mm."));
  judged.u_spot_mm = {0.017, 0.016, 0.017};
  CHECK(bench::float_facts(judgement) ==
        "Spread 0.055 mm, allowed 0.15 mm: no tilt beyond what the readings are uncertain by.");
}

TEST_CASE("each bearing has its own sentence for being seated again") {
  job::Judgement judgement;
  judgement.advised.conclusion = job::Conclusion::seat_again;
  CHECK(bench::float_heading(judgement, sheet::Side::lower).startsWith("Seat the large bearing again"));
  CHECK(bench::float_heading(judgement, sheet::Side::upper).startsWith("Seat the small bearing again"));
}
