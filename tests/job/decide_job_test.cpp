#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

Bench unopened() {
  return Bench(shipped_sheets());
}

const std::vector<std::string> laid = {"large-shim-laid", "small-shim-laid",   "bearings-seated", "splines-greased",
                                       "pack-lowered",    "face-to-shaft-end", "press-peak"};

std::vector<std::string> unproven(const Bench& bench) {
  return std::get<TakenUp>(bench.state.entries.back().body).unproven;
}

}  // namespace

TEST_CASE("A job is opened with what was typed, on the sheets at hand") {
  Bench bench = unopened();
  OpenJob open = open_command();
  open.odometer = "88120";
  open.gearbox_serial = "G-77";
  open.build_date = "2019-04-30";
  open.plate = PrivateText{"p-1", "ab", "HL 123", "digest"};
  CHECK(private_texts_of(open).size() == 1);
  CHECK(private_texts_of(TakeUp{}).empty());
  bench.take(open);
  const Opened& opened = *bench.state.opened;
  CHECK(opened.vehicle_key == "TESTVN009TA030417");
  CHECK(opened.gearbox == "D7");
  CHECK(opened.odometer->base == typed("88120", quantity::Unit::kilometre).base);
  CHECK(opened.gearbox_serial == "G-77");
  CHECK(opened.build_date == "2019-04-30");
  CHECK(opened.plate == PrivateReference{"p-1", "digest"});
  CHECK(opened.spec_hash == "hash-of-spec");
  CHECK(opened.spec_id == bench.state.sheets.spec->id);
}

TEST_CASE("What a job is not opened with") {
  const Bench bench = unopened();
  const auto refused = [&](auto change) {
    OpenJob open = open_command();
    change(open);
    return bench.error(open).value_or(Error{});
  };
  CHECK(refused([](OpenJob& open) { open.number = " "; }).code == "number_missing");
  CHECK(refused([](OpenJob& open) { open.vehicle_typed = "TESTVN009TA03041"; }).code == "length");
  CHECK(refused([](OpenJob& open) { open.vehicle_typed = "TESTVN009TA03041O"; }).place == "vehicle");
  CHECK(refused([](OpenJob& open) { open.odometer = "far"; }).place == "odometer");
  for (const std::string date : {"2019-02-30", "30.04.2019", "2019-4-30", "2019-04-3x"}) {
    CHECK(refused([&](OpenJob& open) { open.build_date = date; }).code == "bad_date");
  }
  CHECK(refused([](OpenJob& open) { open.chassis_reason = ""; }).code == "reason_missing");
  CHECK(refused([](OpenJob&) {}).code.empty());
}

TEST_CASE("A number that is no VIN is taken with a reason") {
  Bench bench = unopened();
  OpenJob open = open_command();
  open.vehicle_typed = "hl-7";
  open.chassis_reason = "gearbox came without its vehicle";
  bench.take(open);
  CHECK(bench.state.opened->chassis_reason == open.chassis_reason);
}

TEST_CASE("Parked, a job takes up, notes and changes hands, nothing else") {
  Bench bench;
  CHECK(bench.refusal(Park{"", ""}) == "reason_missing");
  CHECK(bench.refusal(Park{"rings", "tomorrow"}) == "bad_date");
  bench.take(Park{"rings", "2026-11-30"});
  CHECK(bench.state.parked->due == "2026-11-30");
  CHECK(bench.refusal(CheckStep{"vehicle-number", true, ""}) == "parked");
  CHECK(bench.refusal(Park{"rings", ""}) == "parked");
  CHECK(bench.refusal(Withdraw{1, "no"}) == "parked");
  CHECK(bench.error(DoStep{"dust-away"})->message.in_english().find("rings") != std::string::npos);
  bench.take(Note{std::nullopt, "rings come on Monday"}).take(HandOver{"RT", ""}).take(TakeUp{});
  CHECK_FALSE(bench.state.parked);
  CHECK(bench.refusal(TakeUp{}) == "not_parked");
  CHECK(unproven(bench).empty());
}

TEST_CASE("Parked between the shims and the ring: what may have moved is asked again") {
  Bench bench;
  bench.answer_up_to("pack-ring-new").take(Park{"a ring", ""}).take(TakeUp{});
  CHECK(unproven(bench) == laid);
  for (const std::string& id : laid) {
    CHECK(bench.step(id) == "unproven");
  }
  CHECK(bench.state.next_step()->id == laid.front());
  bench.answer("pack-ring-new").answer("pack-ring-seated");
  bench.answer("large-shim-laid");
  CHECK(bench.step("large-shim-laid") == "accepted");
  bench.take(Deviate{"press-peak", "the pack was pressed home and stayed"});
  for (const std::string id :
       {"lock-as-specified", "lower-dial-set", "lower-float-temperature", "lower-float", "hub-in", "hub-ring-new",
        "hub-ring-seated", "upper-float", "free-movement", "before-start", "no-open-hold-point", "no-unread-fault"}) {
    bench.answer(id);
  }
  const auto refused = bench.error(Sign{"sign-technician"});
  REQUIRE(refused);
  CHECK(refused->code == "open_points");
  CHECK(refused->message.in_english().find("Lower the pack and mesh both splines") != std::string::npos);
  bench.answer_up_to("sign-technician");
  CHECK(bench.refusal(Sign{"sign-technician"}).empty());
}

TEST_CASE("Parked after the ring is home nothing has moved") {
  Bench bench;
  bench.answer_up_to("lock-as-specified").take(Park{"the night", ""}).take(TakeUp{});
  CHECK(unproven(bench).empty());
  CHECK(bench.state.next_step()->id == "lock-as-specified");
}

TEST_CASE("A step left with a reason is unproven as well, an open one is not") {
  Bench bench;
  bench.answer_up_to("large-shim-laid").take(Deviate{"large-shim-laid", "laid by RT, seen by nobody"});
  bench.take(Park{"grease", ""}).take(TakeUp{});
  CHECK(unproven(bench) == std::vector<std::string>{"large-shim-laid"});
}

TEST_CASE("Two people: handed over, and the checker is the other one") {
  Bench bench;
  CHECK(bench.refusal(HandOver{"MK", ""}) == "no_person");
  CHECK(bench.refusal(HandOver{" ", ""}) == "no_person");
  bench.take(HandOver{"RT", "floats are left"});
  bench.context.person = "RT";
  bench.answer_up_to("sign-technician");
  bench.context.person = "RT";
  CHECK(bench.refusal(Sign{"sign-checker"}) == "technician_first");
  CHECK(bench.refusal(Deviate{"sign-checker", "alone today"}) == "technician_first");
  CHECK(bench.refusal(Deviate{"sign-technician", "no time"}) == "must_be_signed");
  bench.take(Sign{"sign-technician"});
  CHECK(bench.refusal(Sign{"sign-checker"}) == "same_person");
  bench.context.person = "MK";
  bench.take(Sign{"sign-checker"});
  CHECK(bench.state.closed);
  CHECK(bench.refusal(Note{std::nullopt, "one thing more"}) == "closed");
  CHECK(bench.refusal(Withdraw{3, "one thing more"}) == "closed");
}

TEST_CASE("Where nobody else is there to check, a reason closes the job") {
  Bench bench;
  bench.answer_up_to("sign-checker").take(Deviate{"sign-checker", "alone in the workshop"});
  CHECK(bench.state.closed);
  CHECK(bench.step("sign-checker") == "deviation");
}

TEST_CASE("Nothing is signed over a reading against its limit") {
  Bench bench;
  bench.answer_up_to("sign-technician").enter("gear-oil", "oil", "2.5");
  CHECK(bench.refusal(Sign{"sign-technician"}) == "open_points");
  bench.take(Deviate{"gear-oil", "drained again, weighed"});
  CHECK(bench.refusal(Sign{"sign-technician"}).empty());
}

TEST_CASE("Steps that may be not required say so on the sheet") {
  Bench bench;
  CHECK(bench.refusal(SayNotRequired{"vehicle-number", "known"}) == "required");
  CHECK(bench.refusal(SayNotRequired{"road-test-before", " "}) == "reason_missing");
  bench.take(SayNotRequired{"road-test-before", "towed in"});
  CHECK(bench.step("road-test-before") == "not_required");
  CHECK(bench.refusal(Deviate{"odometer", ""}) == "reason_missing");
}

TEST_CASE("Notes are of the job or of a step") {
  const Bench bench;
  CHECK(bench.refusal(Note{std::nullopt, " "}) == "text_missing");
  CHECK(bench.refusal(Note{"no-such-step", "x"}) == "unknown_step");
  CHECK(bench.refusal(Note{"sign-checker", "RT is in on Friday"}).empty());
}

TEST_CASE("An assembly begins when the one before was begun") {
  Bench bench;
  bench.answer_up_to("large-shim-laid");
  CHECK(bench.refusal(BeginAssembly{{Side::lower}, "too large"}) == "not_assembled");
  bench.answer("large-shim-laid");
  CHECK(bench.refusal(BeginAssembly{{Side::lower}, ""}) == "reason_missing");
  bench.take(BeginAssembly{{Side::upper, Side::lower, Side::upper}, "both off"});
  CHECK(std::get<AssemblyBegun>(bench.state.entries.back().body).sides == std::vector<Side>{Side::lower, Side::upper});
  CHECK(bench.state.assembly == 2);
  CHECK(bench.refusal(BeginAssembly{{}, "again"}) == "not_assembled");
}

TEST_CASE("What can be taken back, and what cannot") {
  Bench bench;
  bench.answer_up_to("hub-in");
  CHECK(bench.refusal(Withdraw{1, "wrong car"}) == "not_withdrawable");
  CHECK(bench.refusal(Withdraw{bench.seq_of("lower-float", "advised"), "no"}) == "not_withdrawable");
  CHECK(bench.refusal(Withdraw{0, "no"}) == "unknown_entry");
  CHECK(bench.refusal(Withdraw{bench.last_seq() + 1, "no"}) == "unknown_entry");
  const auto peak = bench.seq_of("press-peak", "peak_read");
  CHECK(bench.refusal(Withdraw{peak, ""}) == "reason_missing");
  bench.take(Withdraw{peak, "was the other wrench"});
  CHECK(bench.step("press-peak") == "open");
  CHECK(bench.refusal(Withdraw{peak, "twice"}) == "unknown_entry");
  CHECK(bench.refusal(Withdraw{bench.last_seq(), "of a withdrawal"}) == "not_withdrawable");
}

TEST_CASE("An assembly is taken back before anything stands on it") {
  Bench bench;
  bench.answer_up_to("hub-in").take(BeginAssembly{{Side::lower}, "too large"});
  const auto begun = bench.last_seq();
  Bench other = bench;
  bench.take(Withdraw{begun, "read the wrong disc"});
  CHECK(bench.state.assembly == 1);
  CHECK(bench.step("lower-float") == "accepted");
  CHECK(bench.state.shims.size() == 2);
  other.answer("hub-ring-off");
  CHECK(other.refusal(Withdraw{begun, "read the wrong disc"}) == "built_on");
}

TEST_CASE("What advice does not stand on is taken back without a new one") {
  Bench bench;
  bench.answer_up_to("large-shim-measured").take(AddPhoto{"large-gauge-fit", std::string(64, '1'), "image/png", 9, ""});
  const auto photo = bench.last_seq();
  bench.take(Withdraw{photo, "blurred"});
  CHECK(bench.last_seq() == photo + 1);
  CHECK(bench.step("large-gauge-fit") == "accepted");
  CHECK(bench.state.shims.at(Side::lower) == "1.60");
}

}  // namespace shimwright::job::test
