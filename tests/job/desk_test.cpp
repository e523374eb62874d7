#include "desk.h"

#include <algorithm>

#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

template <class Value>
std::string code_of(const Result<Value>& result) {
  return result ? "" : result.error().code;
}

/// 30 March 2027, 23:30 UTC: the 31st an hour and more to the east.
constexpr std::int64_t late_evening_ms = 1'806'449'400'000;

}  // namespace

TEST_CASE("The way to a step") {
  const Bench bench;
  const Desk desk{bench.state, bench.context};
  CHECK(code_of(open_way_to(desk, "no-such-step")) == "unknown_step");
  CHECK(code_of(open_way_to(desk, "large-depth")) == "not_asked");
  CHECK(code_of(open_way_to(desk, "dust-away")) == "hold_point");
  CHECK(code_of(open_way_to(desk, "odometer")).empty());
  CHECK(code_of(step_of_kind<sheet::ReadStep>(desk, "odometer")).empty());
  CHECK(code_of(step_of_kind<sheet::TextStep>(desk, "odometer")) == "wrong_kind");
}

TEST_CASE("Blank is blank, whatever white space it is of") {
  CHECK(is_blank(""));
  CHECK(is_blank(" \t\r\n"));
  CHECK_FALSE(is_blank(" 0 "));
  CHECK(code_of(reason_given("here", " \n")) == "reason_missing");
  CHECK(*reason_given("here", "late") == "late");
}

TEST_CASE("A number is refused with its place") {
  const auto refused = number_typed("odometer/distance", "12.3.4", quantity::Unit::kilometre);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().place == "odometer/distance");
  CHECK(number_typed("here", "0,62", quantity::Unit::millimetre)->base == 620);
}

TEST_CASE("An instrument is one of the workshop's, of the kind asked for") {
  const Bench bench;
  const Desk desk{bench.state, bench.context};
  const auto dial = sheet::InstrumentKind::dial_gauge;
  CHECK(code_of(instrument_used(desk, "here", "", dial)) == "unknown_instrument");
  CHECK(code_of(instrument_used(desk, "here", "micrometer", dial)) == "wrong_instrument");
  const auto used = instrument_used(desk, "here", "dial_gauge", dial);
  REQUIRE(used);
  CHECK(used->resolution == 10);
  CHECK(used->calibrated_to == "2027-03-31");
  CHECK_FALSE(used->overdue);
}

TEST_CASE("Every kind of instrument is called as people call it") {
  using sheet::InstrumentKind;
  CHECK(instrument_word(InstrumentKind::dial_gauge) == "dial gauge");
  for (const auto kind : {InstrumentKind::dial_gauge, InstrumentKind::depth_gauge, InstrumentKind::micrometer,
                          InstrumentKind::torque_wrench, InstrumentKind::thermometer, InstrumentKind::multimeter,
                          InstrumentKind::pressure_gauge, InstrumentKind::scale}) {
    std::string spelled(sheet::name_of(kind));
    std::replace(spelled.begin(), spelled.end(), '_', ' ');
    CHECK(instrument_word(kind) == spelled);
  }
  CHECK(answer_words(sheet::StepBody(sheet::DepthStep{})) == "depths");
}

TEST_CASE("An instrument is overdue from the day after, by the day where it is used") {
  Bench bench;
  const auto overdue = [&](std::int64_t at_ms, int offset_min) {
    bench.context.now = {at_ms, offset_min, false};
    const Desk desk{bench.state, bench.context};
    const bool used = instrument_used(desk, "here", "dial_gauge", sheet::InstrumentKind::dial_gauge)->overdue;
    CHECK(used == job::calibration_overdue(bench.context.instruments.front(), bench.context.now));
    return used;
  };
  constexpr std::int64_t day_ms = 86'400'000;
  CHECK_FALSE(overdue(late_evening_ms, 0));
  CHECK_FALSE(overdue(late_evening_ms, 60));
  CHECK_FALSE(overdue(late_evening_ms + day_ms, 0));
  CHECK(overdue(late_evening_ms + day_ms, 60));
  CHECK_FALSE(overdue(late_evening_ms + day_ms + 3'600'000, -120));
  bench.context.instruments.front().calibrated_to = std::nullopt;
  CHECK_FALSE(overdue(late_evening_ms + 400 * day_ms, 0));
}

TEST_CASE("A reading is judged by its limit, ends included") {
  const Bench bench;
  const Desk desk{bench.state, bench.context};
  const sheet::Step& step = *bench.state.sheets.job->find("gear-oil");
  const auto& channel = std::get<sheet::ReadStep>(step.body).channels.front();
  const auto verdict = [&](const std::string& text) {
    const auto judged = judged_reading(desk, step, channel, {"oil", text, ""});
    return judged ? name_of(judged->reading.verdict) : "refused";
  };
  CHECK(verdict("1.69") == "too_small");
  CHECK(verdict("1.70") == "within");
  CHECK(verdict("1,90") == "within");
  CHECK(verdict("1901 ml") == "too_large");
  CHECK(verdict("1.8 kg") == "refused");
}

TEST_CASE("Advice follows bodies where nothing is missing") {
  const Bench bench;
  const Desk desk{bench.state, bench.context};
  const auto& gauge = *bench.state.sheets.job->find("large-gauge-fit");
  CHECK(with_advice(desk, gauge, {})->size() == 1);
  const auto& disc_float = *bench.state.sheets.job->find("lower-float");
  CHECK(with_advice(desk, disc_float, {}).value_or(std::vector<EntryBody>(9)).empty());
}

TEST_CASE("Nothing read is refused for a tray or an instrument that nothing can be reckoned with") {
  const auto spoilt = [](Bench& bench) {
    for (const Side side : {Side::lower, Side::upper}) {
      bench.context.trays[side] = {{"1.60", quantity::Length(1600), 0.0, std::nullopt},
                                   {"1.65", quantity::Length(1600), 0.003, std::nullopt},
                                   {"1.75", quantity::Length(1750), 0.003, std::nullopt}};
    }
    for (Instrument& each : bench.context.instruments) {
      each.resolution = 0;
    }
  };
  Bench trials;
  trials.answer_up_to("large-gauge-fit");
  spoilt(trials);
  trials.take(TryShim{"large-gauge-fit", "1.60", Fit::snug});
  CHECK(trials.conclusion("large-gauge-fit") == "question");
  Bench floats;
  floats.answer_up_to("lower-float");
  spoilt(floats);
  floats.runs("lower-float", {"0.55", "0.55", "0.55"});
  CHECK(floats.conclusion("lower-float") == "question");
  CHECK(floats.advice("lower-float").reason.in_english().find("workshop's lists") != std::string::npos);
  floats.context = bench_context();
  floats.runs("lower-float", {"0.55", "0.55", "0.55"});
  CHECK(floats.conclusion("lower-float") == "keep");
  Bench depths("D6-1.json");
  depths.answer_up_to("large-depth");
  spoilt(depths);
  depths.take(EnterDepths{"large-depth", {"5.05", "5.05"}, "2.90", "+0.02", "depth_gauge"});
  CHECK(depths.conclusion("large-depth") == "question");
}

TEST_CASE("An instrument is overdue from the day after the one it is calibrated to") {
  Instrument dial;
  dial.calibrated_to = "2026-11-23";
  const Moment evening{1795475400000, 0, false};  // 2026-11-23 23:50 UTC
  CHECK_FALSE(calibration_overdue(dial, evening));
  CHECK(calibration_overdue(dial, {evening.at_ms, 60, false}));
  dial.calibrated_to.reset();
  CHECK_FALSE(calibration_overdue(dial, evening));
}

TEST_CASE("A step is titled in English") {
  CHECK(title_of(*shipped_sheets().job->find("pack-lowered")) == "Lower the pack and mesh both splines");
}

}  // namespace shimwright::job::test
