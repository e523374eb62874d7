#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

EnterReadings one(const std::string& step, const std::string& channel, const std::string& text,
                  const std::string& instrument = "") {
  return {step, {{channel, text, instrument}}};
}

EnterPeak press(const std::string& torque) {
  return {"press-peak", {"torque", torque, "torque_wrench"}};
}

TryTeachIn teach_in(bool completed, const std::string& after, const std::string& reason = "") {
  return {"teach-in-lower", completed, {{"touch-point", "9.1", after}}, completed ? "" : "0x21", reason};
}

std::vector<int> attempts(const Bench& bench) {
  std::vector<int> found;
  for (const Entry* entry : bench.state.live("press-peak")) {
    if (const auto* peak = std::get_if<PeakRead>(&entry->body)) {
      found.push_back(peak->attempt);
    }
  }
  return found;
}

}  // namespace

TEST_CASE("A stamp has a sign, unless it is nought") {
  Bench bench;
  bench.answer_up_to("stamp-lower");
  CHECK(bench.refusal(one("stamp-lower", "stamp", "0.12")) == "sign_missing");
  CHECK(bench.refusal(one("stamp-lower", "stamp", "")) != "");
  for (const std::string text : {"0", "0.00", "+0.12", "-0,12", "−0.12", " -0.12"}) {
    INFO(text);
    CHECK(bench.refusal(one("stamp-lower", "stamp", text)).empty());
  }
  bench.take(one("stamp-lower", "stamp", "−0.12"));
  CHECK(latest<Read>(bench.state, "stamp-lower")->readings.front().number.base == -120);
}

TEST_CASE("A reading is of a channel of its step, once, and is there") {
  Bench bench;
  CHECK(bench.refusal(one("odometer", "speed", "12")) == "unknown_channel");
  CHECK(bench.refusal(EnterReadings{"odometer", {{"distance", "12", ""}, {"distance", "13", ""}}}) ==
        "unknown_channel");
  CHECK(bench.refusal(EnterReadings{"odometer", {}}) == "empty");
  const auto refused = bench.error(one("odometer", "distance", "12 kg"));
  REQUIRE(refused);
  CHECK(refused->place == "odometer/distance");
  bench.take(one("odometer", "distance", "88120"));
  CHECK(bench.step("odometer") == "accepted");
}

TEST_CASE("A reading is kept with its limit, its instrument and its verdict") {
  Bench bench;
  bench.answer_up_to("face-to-shaft-end");
  CHECK(bench.refusal(one("face-to-shaft-end", "depth", "6.90")) == "unknown_instrument");
  CHECK(bench.refusal(one("face-to-shaft-end", "depth", "6.90", "micrometer")) == "wrong_instrument");
  bench.take(one("face-to-shaft-end", "depth", "7.10", "depth_gauge"));
  const Reading& reading = latest<Read>(bench.state, "face-to-shaft-end")->readings.front();
  CHECK(reading.verdict == ReadingVerdict::too_large);
  CHECK(reading.limit->most == 7000);
  CHECK(reading.instrument->id == "depth_gauge");
  CHECK(bench.step("face-to-shaft-end") == "held");
}

TEST_CASE("A count has to equal the count before") {
  Bench bench;
  bench.answer_up_to("locks-in").enter("locks-in", "locks", "3").answer_up_to("locks-out");
  bench.enter("locks-out", "locks", "2");
  CHECK(bench.step("locks-out") == "held");
  CHECK(latest<Read>(bench.state, "locks-out")->readings.front().verdict == ReadingVerdict::not_equal);
  bench.enter("locks-out", "locks", "3");
  CHECK(bench.step("locks-out") == "accepted");
}

TEST_CASE("A peak over its limit is held; a second attempt is accepted and the first stays") {
  Bench bench;
  bench.answer_up_to("press-peak").take(press("12.5"));
  CHECK(bench.step("press-peak") == "held");
  bench.take(press("11.0"));
  CHECK(bench.step("press-peak") == "accepted");
  CHECK(attempts(bench) == std::vector<int>{1, 2});
  CHECK(std::get<PeakRead>(bench.state.live("press-peak").front()->body).reading.verdict == ReadingVerdict::too_large);
}

TEST_CASE("Attempts are counted over the job, and those over the limit are held") {
  Bench bench;
  bench.answer_up_to("press-peak").take(press("12.5")).take(press("11.0"));
  bench.answer_up_to("pack-ring-seated").take(BeginAssembly{{}, "ring not home"}).answer_up_to("press-peak");
  bench.take(press("11.0"));
  CHECK(bench.step("press-peak") == "accepted");
  bench.take(press("11.0"));
  CHECK(attempts(bench) == std::vector<int>{1, 2, 3, 4});
  CHECK(latest<PeakRead>(bench.state, "press-peak")->most_attempts == 3);
  CHECK(bench.step("press-peak") == "held");
  bench.take(Deviate{"press-peak", "the maker's support allows a fourth"});
  CHECK(bench.step("press-peak") == "deviation");
}

TEST_CASE("Four pressings are allowed by the first issue of the D7, two on the D6") {
  for (const auto& [spec, most] : {std::pair("D7-1.json", 4), std::pair("D6-1.json", 2)}) {
    Bench bench(spec);
    bench.answer_up_to("press-peak");
    for (int attempt = 1; attempt <= most + 1; ++attempt) {
      bench.take(press("11.0"));
      CHECK(bench.step("press-peak") == (attempt <= most ? "accepted" : "held"));
    }
  }
}

TEST_CASE("A teach-in that broke off says why; one that completed has its value") {
  Bench bench;
  bench.answer_up_to("teach-in-lower");
  CHECK(bench.refusal(teach_in(false, "")) == "reason_missing");
  CHECK(bench.refusal(teach_in(true, "")) == "value_missing");
  CHECK(bench.refusal(TryTeachIn{"teach-in-lower", true, {}, "", ""}) == "value_missing");
  bench.take(teach_in(false, "", "clutch at its travel limit"));
  CHECK(bench.step("teach-in-lower") == "held");
  bench.take(teach_in(true, "14.0"));
  CHECK(bench.step("teach-in-lower") == "held");  // over its limit
  bench.take(teach_in(true, "10.2"));
  CHECK(bench.step("teach-in-lower") == "accepted");
  const auto* last = latest<TeachInTried>(bench.state, "teach-in-lower");
  CHECK(last->attempt == 3);
  CHECK(last->values.front().before->base == 9100);
  CHECK(bench.state.live("teach-in-lower").size() == 3);
}

TEST_CASE("A number that cannot be read is refused at its field") {
  Bench bench;
  bench.answer_up_to("teach-in-lower");
  CHECK(bench.error(teach_in(true, "ten"))->place == "teach-in-lower/touch-point");
  TryTeachIn odd = teach_in(true, "10.2");
  odd.values.front().before = "9.1.1";
  CHECK(bench.error(odd)->place == "teach-in-lower/touch-point/before");
}

}  // namespace shimwright::job::test
