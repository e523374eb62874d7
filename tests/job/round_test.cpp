#include <catch2/catch.hpp>

#include "bench.h"
#include "round.h"

namespace shimwright::job::test {

namespace {

const sheet::Step& step_of_sheet(const Bench& bench, const std::string& id) {
  return *bench.state.sheets.job->find(id);
}

int starts(const Bench& bench, const std::string& id) {
  return round_start(bench.state, step_of_sheet(bench, id));
}

}  // namespace

TEST_CASE("Parts renewed in an earlier assembly are missing in the next where the step is asked again") {
  Bench bench;
  bench.answer_up_to("hub-ring-seated");
  CHECK(parts_missing(bench.state, step_of_sheet(bench, "pack-ring-new")).empty());
  bench.take(BeginAssembly{{}, "ring not home"});
  CHECK(parts_missing(bench.state, step_of_sheet(bench, "pack-ring-new")) == std::vector<std::string>{"pack-ring"});
  CHECK(parts_missing(bench.state, step_of_sheet(bench, "new-pack")).empty());
  CHECK(parts_missing(bench.state, step_of_sheet(bench, "hub-out")).empty());
}

TEST_CASE("From which assembly on a step's answers count") {
  Bench bench;
  bench.answer_up_to("hub-in");
  for (const std::string id : {"dust-away", "hub-out", "large-shim-laid", "large-gauge-fit"}) {
    CHECK(starts(bench, id) == 1);
  }
  bench.take(BeginAssembly{{Side::lower}, "too large"});
  CHECK(starts(bench, "dust-away") == 1);
  CHECK(starts(bench, "hub-out") == 2);
  CHECK(starts(bench, "large-shim-laid") == 2);
  CHECK(starts(bench, "large-gauge-fit") == 2);
  CHECK(starts(bench, "small-gauge-fit") == 1);
  bench.shim[Side::lower] = "1.65";
  bench.answer_up_to("hub-in").take(BeginAssembly{{Side::upper}, "too small"});
  CHECK(starts(bench, "large-gauge-fit") == 2);
  CHECK(starts(bench, "small-gauge-fit") == 3);
  CHECK(starts(bench, "hub-out") == 3);
  bench.take(Withdraw{bench.last_seq(), "not needed"});
  CHECK(starts(bench, "small-gauge-fit") == 1);
  CHECK(starts(bench, "hub-out") == 2);
}

TEST_CASE("Entries of a round leave out those of assemblies before") {
  Bench bench;
  bench.answer_up_to("hub-in");
  const auto& press = step_of_sheet(bench, "press-peak");
  CHECK(round_entries(bench.state, press).size() == 1);
  bench.take(BeginAssembly{{}, "ring not home"});
  CHECK(round_entries(bench.state, press).empty());
  CHECK(bench.state.live("press-peak").size() == 1);
}

TEST_CASE("Each channel counts with its latest reading") {
  Bench bench;
  bench.answer_up_to("large-temperature");
  const auto& step = step_of_sheet(bench, "large-temperature");
  bench.enter("large-temperature", "box", "20", "thermometer");
  CHECK(channel_readings(bench.state, step).by_channel.size() == 1);
  bench.take(EnterReadings{"large-temperature", {{"box", "21", "thermometer"}, {"gauge", "22", "thermometer"}}});
  bench.enter("large-temperature", "gauge", "23", "thermometer");
  const auto readings = channel_readings(bench.state, step);
  CHECK(readings.by_channel.at("box")->number.base == typed("21", quantity::Unit::degree_celsius).base);
  CHECK(readings.by_channel.at("gauge")->number.base == typed("23", quantity::Unit::degree_celsius).base);
  CHECK(readings.questions.empty());
  CHECK(latest_reading(bench.state, "large-temperature", "gauge")->number == readings.by_channel.at("gauge")->number);
  CHECK(latest_reading(bench.state, "large-temperature", "none") == nullptr);
}

TEST_CASE("A question of one channel goes when that channel is entered anew") {
  Bench bench;
  bench.answer_up_to("large-temperature");
  bench.take(EnterReadings{"large-temperature", {{"box", "2100", "thermometer"}, {"gauge", "22", "thermometer"}}});
  CHECK(bench.questions("large-temperature") == std::vector<std::string>{"hundredths_in_doubt"});
  bench.enter("large-temperature", "gauge", "23", "thermometer");
  CHECK(bench.questions("large-temperature") == std::vector<std::string>{"hundredths_in_doubt"});
  bench.enter("large-temperature", "box", "21", "thermometer");
  CHECK(bench.step("large-temperature") == "accepted");
}

TEST_CASE("A question is open until it is confirmed after it was asked") {
  Bench bench;
  const std::vector<Question> asked = {{"far_from_old_shim", {}}, {"stamp_differs", {}}};
  const auto seq = bench.last_seq();
  CHECK(still_open(bench.state, "large-gauge-fit", seq, asked).size() == 2);
  bench.state = evolve(bench.state, {seq + 1, {}, "MK", Confirmed{{"large-gauge-fit", 1}, "stamp_differs", ""}});
  CHECK(still_open(bench.state, "large-gauge-fit", seq, asked) == std::vector<Question>{asked.front()});
  CHECK(still_open(bench.state, "large-gauge-fit", seq + 1, asked).size() == 2);
  CHECK(still_open(bench.state, "small-gauge-fit", seq, asked).size() == 2);
}

TEST_CASE("Steps are found by role and side") {
  const auto sheets = shipped_sheets();
  CHECK(step_with_role(*sheets.job, sheet::Role::stamp, Side::upper)->id == "stamp-upper");
  CHECK(step_with_role(*sheets.job, sheet::Role::old_shim, Side::lower)->id == "old-shim-lower");
  CHECK(step_with_role(*sheets.job, sheet::Role::old_pack_serial)->id == "old-pack-serial");
  CHECK(step_with_role(*sheets.job, sheet::Role::old_pack_serial, Side::lower) == nullptr);
}

}  // namespace shimwright::job::test
