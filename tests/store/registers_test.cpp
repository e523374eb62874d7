#include "shimwright/store/registers.h"

#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* dial_id = "01930000-0000-7000-8000-000000000011";

}  // namespace

TEST_CASE("an item comes back as it was put, and its history stays") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  const Person with_pin{mk, "Mara Kern-Vale", "MK", "a hash", false};
  went(registers.put(with_pin, by_mk(5)));
  CHECK(got(registers.persons()) == std::vector<Person>{with_pin, {rt, "Rui Tavares", "RT", std::nullopt, true}});
  const auto changes = got(registers.changes("person", mk));
  REQUIRE(changes.size() == 2);
  CHECK(changes[0].body.find("Mara Kern\"") != std::string::npos);
  CHECK(changes[1].body.find("Kern-Vale") != std::string::npos);
  CHECK(changes[1].body.find("a hash") == std::string::npos);
  CHECK(changes[1].by.person == mk);
  CHECK(changes[1].by.moment == by_mk(5).moment);
  CHECK(changes[0].position < changes[1].position);
}

TEST_CASE("an instrument keeps what it may leave out") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  job::Instrument dial{dial_id,      "Dial gauge 2",        sheet::InstrumentKind::depth_gauge, 10, 13,
                       "2027-03-31", quantity::Length(1000)};
  went(registers.put(dial, by_mk()));
  auto kept = got(registers.instruments());
  REQUIRE(kept.size() == 1);
  CHECK(kept[0].kind == sheet::InstrumentKind::depth_gauge);
  CHECK(kept[0].calibrated_to == dial.calibrated_to);
  CHECK(kept[0].turn == dial.turn);
  dial.calibrated_to.reset();
  dial.turn.reset();
  went(registers.put(dial, by_mk()));
  kept = got(registers.instruments());
  REQUIRE(kept.size() == 1);
  CHECK_FALSE(kept[0].calibrated_to);
  CHECK_FALSE(kept[0].turn);
}

TEST_CASE("a tray is put as it lies there now") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  Tray tray{"01930000-0000-7000-8000-000000000041",
            "large",
            {{"1.70", quantity::Length(1701), 0.0025, {}}, {"1.65", quantity::Length(1652), 0.002, 0}}};
  went(registers.put(tray, by_mk()));
  auto kept = got(registers.tray_named("large"));
  REQUIRE(kept);
  REQUIRE(kept->shims.size() == 2);
  CHECK(kept->shims[0].id == "1.65");
  CHECK(kept->shims[0].count == std::optional<int>(0));
  CHECK(kept->shims[0].u_mm == 0.002);
  CHECK_FALSE(kept->shims[1].count);
  tray.shims.pop_back();
  went(registers.put(tray, by_mk()));
  CHECK(got(registers.trays()).front().shims.size() == 1);
  CHECK_FALSE(got(registers.tray_named("small")));
  CHECK(got(registers.changes("tray", tray.id)).size() == 2);
}

TEST_CASE("a tray has at most 200 shims") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  Tray tray{"01930000-0000-7000-8000-000000000041", "large", {}};
  for (int each = 0; each < 200; ++each) {
    tray.shims.push_back({std::to_string(1000 + each), quantity::Length(1000 + each), 0.002, {}});
  }
  went(registers.put(tray, by_mk()));
  tray.shims.push_back({"1200", quantity::Length(1200), 0.002, {}});
  CHECK(code_of(registers.put(tray, by_mk())) == "too_many");
  CHECK(got(registers.trays()).front().shims.size() == 200);
}

TEST_CASE("the workshop is one") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  CHECK_FALSE(got(registers.workshop()));
  const Workshop workshop{"01930000-0000-7000-8000-000000000051", "Hollow Lane Gearboxes", "1 Hollow Lane"};
  went(registers.put(workshop, by_mk()));
  CHECK(got(registers.workshop()) == std::optional(workshop));
}

TEST_CASE("an item without a name or with a made-up id is refused, and leaves no history") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  CHECK(code_of(registers.put(Person{"mk", "Mara Kern", "XX", {}, true}, by_mk())) == "bad_id");
  for (const char* blank : {"", " ", "\t\xC2\xA0"}) {
    CHECK(code_of(registers.put(Person{dial_id, blank, "XX", {}, true}, by_mk())) == "bad_item");
    CHECK(code_of(registers.put(Person{dial_id, "Nell Norden", blank, {}, true}, by_mk())) == "bad_item");
  }
  CHECK(code_of(registers.put(Person{dial_id, "\xff", "XX", {}, true}, by_mk())) == "not_utf8");
  CHECK(got(registers.persons()).size() == 2);
  CHECK(got(registers.changes("person", dial_id)).empty());
  bench.open(Mode::look_only);
  CHECK(code_of(bench.store().registers().put(Person{dial_id, "Ann Other", "AO", {}, true}, by_mk())) == "look_only");
}

TEST_CASE("no text of a register is longer than what fits on a record: text_too_long") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  const std::string longest(1000, 'x');
  const std::string too_long = longest + "x";
  CHECK(code_of(registers.put(Person{dial_id, too_long, "XX", {}, true}, by_mk())) == "text_too_long");
  CHECK(code_of(registers.put(Workshop{"01930000-0000-7000-8000-000000000051", "W", too_long}, by_mk())) ==
        "text_too_long");
  CHECK(got(registers.changes("person", dial_id)).empty());
  went(registers.put(Workshop{"01930000-0000-7000-8000-000000000051", "W", longest}, by_mk()));
}

TEST_CASE("a person keeps role, day of leaving and feel") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  const Person left{mk, "Mara Kern", "MK", "a hash", false, PersonRole::checker, "2026-11-30", 9000, "2026-11-20"};
  went(registers.put(left, by_mk(5)));
  CHECK(got(registers.persons()).front() == left);
  const std::string body = got(registers.changes("person", mk)).back().body;
  CHECK(body.find("\"role\":\"checker\"") != std::string::npos);
  CHECK(body.find("\"left_on\":\"2026-11-30\"") != std::string::npos);
  Person wrong = left;
  wrong.left_on = "30.11.2026";
  const auto refused = registers.put(wrong, by_mk(6));
  CHECK(code_of(refused) == "bad_date");
  CHECK(got(registers.persons()).front() == left);
}

TEST_CASE("two people at work do not share initials; those of one who left may come again") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  CHECK(code_of(registers.put(Person{dial_id, "Rosa Tint", "RT", {}, true}, by_mk())) == "initials_taken");
  went(registers.put(Person{rt, "Rui Tavares", "RT", {}, false}, by_mk(1)));
  went(registers.put(Person{dial_id, "Rosa Tint", "RT", {}, true}, by_mk(2)));
  CHECK(code_of(registers.put(Person{rt, "Rui Tavares", "RT", {}, true}, by_mk(3))) == "initials_taken");
}

TEST_CASE("the last person at work does not leave") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  std::vector<Person> persons = got(registers.persons());
  REQUIRE(persons.size() >= 2);
  for (std::size_t at = 0; at + 1 < persons.size(); ++at) {
    persons[at].active = false;
    went(registers.put(persons[at], by_mk()));
  }
  Person last = persons.back();
  last.active = false;
  last.left_on = "2026-11-30";
  CHECK(code_of(registers.put(last, by_mk())) == "last_person");
  persons.front().active = true;
  went(registers.put(persons.front(), by_mk()));
  went(registers.put(last, by_mk()));
}

TEST_CASE("an instrument keeps its repeat test and its calibration, and one out of use is kept aside") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  KeptInstrument dial{{dial_id, "Dial gauge 2", sheet::InstrumentKind::dial_gauge, 10, 13, "2027-03-31",
                       quantity::Length(1000), "2026-03-31", 4200},
                      true,
                      "2026-11-20"};
  went(registers.put(dial, by_mk()));
  const auto kept = got(registers.kept_instruments()).front();
  CHECK(kept.instrument.calibrated_on == dial.instrument.calibrated_on);
  CHECK(kept.instrument.repeatability == dial.instrument.repeatability);
  CHECK(kept.repeatability_on == dial.repeatability_on);
  dial.in_use = false;
  went(registers.put(dial, by_mk(1)));
  CHECK(got(registers.instruments()).empty());
  CHECK_FALSE(got(registers.kept_instruments()).front().in_use);
  const auto refused = [&](const auto& change) {
    KeptInstrument wrong = dial;
    change(wrong);
    const auto put = registers.put(wrong, by_mk(2));
    return put ? std::string() : put.error().code + " " + put.error().place;
  };
  CHECK(refused([](auto& each) { each.instrument.calibrated_to = "soon"; }) == "bad_date instrument/calibrated_to");
  CHECK(refused([](auto& each) { each.instrument.calibrated_on = "2026-02-30"; }) ==
        "bad_date instrument/calibrated_on");
  CHECK(refused([](auto& each) { each.instrument.resolution = -1; }) == "bad_amount instrument/resolution");
  CHECK(refused([](auto& each) { each.instrument.permissible_error = -1; }) ==
        "bad_amount instrument/permissible_error");
  CHECK(refused([](auto& each) { each.instrument.turn = quantity::Length(0); }) == "bad_amount instrument/turn");
}

TEST_CASE("an instrument that shows no step is refused with what to do") {
  Workbench bench;
  job::Instrument dial{
      "01930000-0000-7000-8000-000000000013", "dial 2", sheet::InstrumentKind::dial_gauge, 0, 10, std::nullopt, {}};
  const auto refused = bench.store().registers().put(dial, by_mk());
  REQUIRE_FALSE(refused);
  CHECK(refused.error().place == "instrument/resolution");
  CHECK(refused.error().message.in_english() ==
        "Every instrument has a smallest step that it shows: enter that of dial 2.");
  dial.resolution = 10;
  went(bench.store().registers().put(dial, by_mk()));
}

}  // namespace shimwright::store
