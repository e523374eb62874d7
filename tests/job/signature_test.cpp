#include <algorithm>

#include <catch2/catch.hpp>

#include "bench.h"

/// Between the two signatures: what was signed is what is there, or it is signed again.
namespace shimwright::job::test {

namespace {

Bench signed_by_technician() {
  Bench bench;
  bench.answer_up_to("sign-checker");
  return bench;
}

/// One of each kind of change, in a job that is signed by the technician.
std::vector<Command> changes(const Bench& bench) {
  return {
      DoStep{"gearbox-up"},
      CheckStep{"leaks-and-levels", true, ""},
      CheckStep{"leaks-and-levels", false, "a drop at the seal"},
      ChooseAnswer{"faults-after", "none"},
      EnterReadings{"supply-voltage", {{"voltage", "13.0", "multimeter"}}},
      EnterPeak{"press-peak", {"torque", "9.0", "torque_wrench"}},
      FitParts{"housing-bolts-new", {{"housing-bolts", "", 4, "B-2"}}},
      WriteText{"fluid-kinds", "another oil"},
      TryShim{"large-gauge-fit", "1.60", Fit::snug},
      ChooseShim{"large-gauge-fit", "1.60", ""},
      EnterFloatRun{"lower-float", 1, "0.00", "0.55", "0.00", "dial_gauge"},
      BeginSeries{"lower-float", {}, SeriesReason::measure_again},
      TryTeachIn{"teach-in-lower", false, {}, "0x21", "voltage fell"},
      Deviate{"leaks-and-levels", "as agreed"},
      SayNotRequired{"take-up-reset", "none on this unit"},
      Withdraw{bench.seq_of("leaks-and-levels", "checked"), "not looked at"},
      BeginAssembly{{}, "a noise"},
  };
}

}  // namespace

TEST_CASE("Any change after the technician's signature takes it back, and says so") {
  const Bench before = signed_by_technician();
  const auto signature = before.seq_of("sign-technician", "signed");
  for (const Command& change : changes(before)) {
    INFO("change " << change.index());
    Bench bench = before;
    bench.context.person = "JO";
    bench.take(change);
    CHECK(bench.step("sign-technician") == "open");
    CHECK(bench.state.withdrawn.count(signature) == 1);
    const auto& last = std::get<Withdrawn>(bench.state.entries.back().body);
    CHECK(last.entry == signature);
    CHECK(last.reason.find("changed after this signature") != std::string::npos);
    CHECK(bench.refusal(Sign{"sign-checker"}) != "");
    CHECK(bench.refusal(Deviate{"sign-checker", "alone today"}) != "");
  }
}

TEST_CASE("The technician signs again what was changed, then the checker signs") {
  Bench bench = signed_by_technician();
  bench.take(CheckStep{"leaks-and-levels", true, ""});
  CHECK(bench.refusal(Sign{"sign-checker"}) == "technician_first");
  bench.answer("sign-technician").answer("sign-checker");
  CHECK(bench.state.closed);
}

TEST_CASE("Once taken back a signature is not taken back again") {
  Bench bench = signed_by_technician();
  bench.take(CheckStep{"leaks-and-levels", true, ""});
  const auto entries = bench.last_seq();
  bench.take(CheckStep{"leaks-and-levels", true, ""});
  CHECK(bench.last_seq() == entries + 1);
}

TEST_CASE("What only accompanies a job leaves the signature as it is") {
  Bench bench = signed_by_technician();
  bench.take(Note{std::nullopt, "key is in the drawer"});
  const auto note = bench.last_seq();
  bench.take(AddPhoto{"odometer", std::string(64, 'b'), "image/png", 9, ""});
  bench.take(Withdraw{bench.last_seq(), "blurred"}).take(Withdraw{note, "hung up by now"});
  bench.take(Park{"the checker", ""}).take(TakeUp{}).take(HandOver{"RT", ""});
  CHECK(bench.step("sign-technician") == "accepted");
  Bench alone = bench;
  alone.take(Deviate{"sign-checker", "alone today"});
  bench.answer("sign-checker");
  for (const Bench* each : {&alone, &bench}) {
    CHECK(each->step("sign-technician") == "accepted");
    CHECK(each->state.closed);
  }
}

TEST_CASE("A signature taken back by hand is taken back once") {
  Bench bench = signed_by_technician();
  bench.take(Withdraw{bench.seq_of("sign-technician", "signed"), "signed the wrong job"});
  const auto& entries = bench.state.entries;
  CHECK(std::count_if(entries.begin(), entries.end(),
                      [](const Entry& each) { return std::holds_alternative<Withdrawn>(each.body); }) == 1);
}

TEST_CASE("Entries of a job changed between the signatures fold as they did before this rule") {
  Bench bench = signed_by_technician();
  auto entries = bench.state.entries;
  const auto add = [&](EntryBody body) {
    entries.push_back({static_cast<std::int64_t>(entries.size()) + 1, bench.context.now, "RT", std::move(body)});
  };
  add(Checked{{"leaks-and-levels", 1}, true, ""});
  add(Signed{{"sign-checker", 1}, sheet::Signer::checker});
  const JobState state = fold(bench.state.sheets, entries);
  CHECK(state.closed);
  CHECK(name_of(state.step("sign-technician")) == "accepted");
}

}  // namespace shimwright::job::test
