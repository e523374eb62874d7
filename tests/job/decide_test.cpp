#include "shimwright/job/decide.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

namespace {

/// Words a person may type anywhere, right or wrong.
std::string word() {
  static const std::vector<std::string> words = {"",
                                                 " ",
                                                 "0",
                                                 "0.55",
                                                 "0,93",
                                                 "62",
                                                 "-0.12",
                                                 "+0.02",
                                                 "1.60",
                                                 "1.65",
                                                 "1e9",
                                                 "1.2.3",
                                                 "x",
                                                 "mm",
                                                 "2100",
                                                 "5.05",
                                                 "99999999999",
                                                 "9007199254740993",
                                                 "-0",
                                                 "2 in",
                                                 "box",
                                                 "gauge",
                                                 "torque",
                                                 "thickness",
                                                 "stamp",
                                                 "depth",
                                                 "oil",
                                                 "pack",
                                                 "dry",
                                                 "other_pack",
                                                 "dial_reversed",
                                                 "unit_in_doubt",
                                                 "2026-02-30",
                                                 "RT",
                                                 "MK",
                                                 "clutch-pack",
                                                 "dial_gauge",
                                                 "thermometer",
                                                 "micrometer"};
  return words.at(*rc::gen::inRange<std::size_t>(0, words.size()));
}
std::string step_id() {
  static const std::vector<const sheet::Step*> steps = [] {
    static const Sheets sheets = shipped_sheets();
    return sheets.job->steps();
  }();
  const auto at = *rc::gen::inRange<std::size_t>(0, steps.size() + 1);
  return at == steps.size() ? "no-such-step" : steps[at]->id;
}
int small() {
  return *rc::gen::inRange(-1, 5);
}
bool yes() {
  return *rc::gen::arbitrary<bool>();
}
Side side() {
  return yes() ? Side::lower : Side::upper;
}

Command answering_command(int kind, const std::string& step) {
  switch (kind) {
    case 0:
      return DoStep{step};
    case 1:
      return CheckStep{step, yes(), word()};
    case 2:
      return ChooseAnswer{step, word()};
    case 3:
      return EnterReadings{step, {{word(), word(), word()}, {word(), word(), word()}}};
    case 4:
      return EnterPeak{step, {word(), word(), word()}};
    case 5:
      return FitParts{step, {{word(), word(), small(), word()}}};
    case 6:
      return AddPhoto{step, word(), word(), small(), word()};
    case 7:
      return WriteText{step, word()};
    case 8:
      return TryShim{step, word(), static_cast<Fit>(*rc::gen::inRange(0, 3))};
    case 9:
      return EnterDepths{step, {word(), word()}, word(), word(), "depth_gauge"};
    case 10:
      return EnterFloatRun{step, small(), "0", word(), word(), "dial_gauge"};
    default:
      return BeginSeries{step, {small(), small()}, SeriesReason::seated_again};
  }
}

Command other_command(int kind, const std::string& step) {
  switch (kind) {
    case 0:
      return Confirm{step, word(), word()};
    case 1:
      return ChooseShim{step, word(), word()};
    case 2:
      return TryTeachIn{step, yes(), {{word(), word(), word()}}, word(), word()};
    case 3:
      return Sign{step};
    case 4:
      return Deviate{step, word()};
    case 5:
      return SayNotRequired{step, word()};
    case 6:
      return Withdraw{*rc::gen::inRange<std::int64_t>(-1, 200), word()};
    case 7:
      return Note{step, word()};
    case 8:
      return Park{word(), word()};
    case 9:
      return TakeUp{};
    case 10:
      return HandOver{word(), word()};
    case 11:
      return BeginAssembly{{side(), side()}, word()};
    default:
      return open_command();
  }
}

Command any_command() {
  const int kind = *rc::gen::inRange(0, 25);
  const std::string step = step_id();
  return kind < 12 ? answering_command(kind, step) : other_command(kind - 12, step);
}

void decide_at_random(JobState state, const Context& context) {
  for (int left = 30; left > 0; --left) {
    const auto entries = decide(state, any_command(), context);
    if (!entries) {
      RC_ASSERT(!entries.error().code.empty());
      RC_ASSERT(entries.error().message.in_english().find('{') == std::string::npos);
      continue;
    }
    RC_ASSERT(!entries->empty());
    for (const Entry& entry : *entries) {
      RC_ASSERT(entry.seq == state.next_seq());
      RC_ASSERT(entry.person == context.person);
      state = evolve(std::move(state), entry);
    }
  }
  RC_ASSERT(same_but_trace(state, fold(state.sheets, state.entries)));
}

}  // namespace

TEST_CASE("Whatever is asked of a job at any time is decided or refused") {
  Bench early;
  Bench shims;
  shims.answer_up_to("large-temperature");
  Bench floats;
  floats.answer_up_to("lower-float");
  for (const Bench* bench : {&early, &shims, &floats}) {
    CHECK(rc::check([&] { decide_at_random(bench->state, bench->context); }));
  }
}

TEST_CASE("Entries are numbered, dated and signed by who is at the bench") {
  Bench bench;
  bench.answer_up_to("large-gauge-fit");
  const auto entries = decide(bench.state, TryShim{"large-gauge-fit", "1.60", Fit::snug}, bench.context);
  REQUIRE(entries);
  REQUIRE(entries->size() == 3);
  for (std::size_t at = 0; at < entries->size(); ++at) {
    CHECK((*entries)[at].seq == bench.state.next_seq() + static_cast<std::int64_t>(at));
    CHECK((*entries)[at].moment == bench.context.now);
    CHECK((*entries)[at].person == "MK");
  }
}

TEST_CASE("Deciding changes nothing and always decides the same") {
  Bench bench;
  bench.answer_up_to("lower-float").runs("lower-float", too_large);
  const auto before = bench.state.entries;
  const Command command = EnterFloatRun{"lower-float", 1, "0", "0.94", "", "dial_gauge"};
  CHECK(decide(bench.state, command, bench.context) == decide(bench.state, command, bench.context));
  CHECK(bench.state.entries == before);
}

TEST_CASE("The personal texts of a command are those of an opening") {
  OpenJob open = open_command();
  CHECK(private_texts_of(open).empty());
  open.plate = PrivateText{"p", "aa", "HL 1", "d1"};
  open.customer_reference = PrivateText{"r", "bb", "K 9", "d2"};
  open.complaint = PrivateText{"c", "cc", "judders cold", "d3"};
  const auto texts = private_texts_of(open);
  REQUIRE(texts.size() == 3);
  CHECK(texts[2].text == "judders cold");
  CHECK(private_texts_of(Note{}).empty());
}

}  // namespace shimwright::job::test
