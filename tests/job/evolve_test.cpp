#include <set>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "bench.h"
#include "random_entry.h"
#include "shimwright/job/standing.h"

namespace shimwright::job::test {

namespace {

std::vector<std::string> step_ids() {
  std::vector<std::string> ids = {"", "no-such-step"};
  const auto sheets = shipped_sheets();
  for (const sheet::Step* step : sheets.job->steps()) {
    ids.push_back(step->id);
  }
  return ids;
}

/// A random body moved to a step of the sheet, or to none of it.
EntryBody misplaced_body(const std::vector<std::string>& ids) {
  EntryBody body = body_of(*rc::gen::inRange<std::size_t>(0, std::variant_size_v<EntryBody>));
  const StepRef at{ids.at(*rc::gen::inRange<std::size_t>(0, ids.size())), *rc::gen::inRange(-1, 4)};
  std::visit(
      [&](auto& payload) {
        if constexpr (requires { payload.at; }) {
          payload.at = at;
        }
      },
      body);
  if (auto* withdrawn = std::get_if<Withdrawn>(&body)) {
    withdrawn->entry = *rc::gen::inRange<std::int64_t>(-1, 30);
  }
  if (auto* taken = std::get_if<TakenUp>(&body)) {
    taken->unproven = {at.step, "large-shim-laid"};
  }
  return body;
}

std::vector<Entry> random_entries(const std::vector<std::string>& ids) {
  std::vector<Entry> entries;
  for (int left = *rc::gen::inRange(0, 25); left > 0; --left) {
    entries.push_back({static_cast<std::int64_t>(entries.size()) + 1, {}, "MK", misplaced_body(ids)});
  }
  return entries;
}

JobState with(const Bench& bench, const EntryBody& body) {
  return evolve(bench.state, Entry{bench.state.next_seq(), {}, "MK", body});
}

}  // namespace

TEST_CASE("Any entries in any order fold, always to the same job") {
  const auto sheets = shipped_sheets();
  const auto ids = step_ids();
  CHECK(rc::check([&] {
    const auto entries = random_entries(ids);
    const JobState once = fold(sheets, entries);
    const JobState again = fold(sheets, entries);
    RC_ASSERT(once.entries == entries);
    RC_ASSERT(once.withdrawn == again.withdrawn);
    RC_ASSERT(same_but_trace(once, again));
    RC_ASSERT(once.steps.size() == sheets.job->steps().size());
  }));
}

TEST_CASE("A fold gives what entry after entry gave, withdrawals and all") {
  const auto sheets = shipped_sheets();
  const auto ids = step_ids();
  CHECK(rc::check([&] {
    auto entries = random_entries(ids);
    JobState grown = fold(sheets, entries);
    const Entry last{grown.next_seq(), {}, "MK", Withdrawn{0, "of nothing"}};  // makes it fold anew
    const JobState anew = evolve(grown, last);
    RC_ASSERT(same_but_trace(grown, anew));
  }));
}

TEST_CASE("A job begins with every step open, but for the method its gearbox does not use") {
  const JobState state = begin(shipped_sheets());
  CHECK(name_of(state.step("dust-away")) == "open");
  CHECK(name_of(state.step("large-depth")) == "not_asked");
  CHECK(name_of(state.step("large-gauge-fit")) == "open");
  CHECK_FALSE(state.opened);
  CHECK(state.next_seq() == 1);
}

TEST_CASE("A step that the sheet no longer has joins the trace only") {
  const Bench bench;
  const JobState state = with(bench, Done{{"step-of-an-old-sheet", 1}});
  CHECK(state.entries.size() == bench.state.entries.size() + 1);
  CHECK(same_but_trace(state, bench.state));
}

TEST_CASE("A withdrawal of an entry that is still to come has no effect") {
  Bench bench;
  const auto next = bench.state.next_seq();
  bench.state = with(bench, Withdrawn{next + 1, "odd"});
  bench.state = with(bench, Done{{"dust-away", 1}});
  CHECK(bench.step("dust-away") == "accepted");
  bench.state = with(bench, Withdrawn{1000, "odd"});
  CHECK(bench.step("dust-away") == "accepted");
}

TEST_CASE("Photos count until there are enough") {
  Bench bench;
  const AddPhoto photo{"received-photos", std::string(64, '0'), "image/png", 7, ""};
  bench.take(photo);
  CHECK(bench.step("received-photos") == "in_work");
  bench.take(photo);
  CHECK(bench.step("received-photos") == "accepted");
  bench.take(AddPhoto{"odometer", std::string(64, '0'), "image/png", 7, "the dash"});
  CHECK(bench.step("odometer") == "open");
}

TEST_CASE("Parts renewed in any order and any portions make the step done exactly when none is missing") {
  const Sheets sheets = sheets_with_three_parts();
  const std::vector<std::string> parts = {"clutch-pack", "lever-set", "guide-bolts"};
  CHECK(rc::check("for any portions", [&] {
    Bench bench(sheets);
    std::set<std::string> renewed;
    for (int at = *rc::gen::inRange(0, 5); at > 0; --at) {
      PartsFitted fitted{{"new-pack", 1}, {}};
      for (const std::string& part : parts) {
        if (*rc::gen::arbitrary<bool>()) {
          fitted.parts.push_back({part, "N", 1, ""});
          renewed.insert(part);
        }
      }
      bench.state = with(bench, fitted);
      RC_ASSERT(bench.step("new-pack") == (renewed.size() == parts.size() ? "accepted" : "in_work"));
    }
    RC_ASSERT(parts_to_renew(bench.state, *sheets.job->find("new-pack")).size() == parts.size() - renewed.size());
  }));
}

TEST_CASE("A step of two readings is done when both are there") {
  Bench bench;
  bench.answer_up_to("large-temperature");
  bench.enter("large-temperature", "box", "21", "thermometer");
  CHECK(bench.step("large-temperature") == "in_work");
  bench.enter("large-temperature", "gauge", "35", "thermometer");
  CHECK(bench.step("large-temperature") == "held");
  bench.enter("large-temperature", "gauge", "22", "thermometer");
  CHECK(bench.step("large-temperature") == "accepted");
  bench.enter("large-temperature", "box", "12", "thermometer");
  CHECK(bench.step("large-temperature") == "held");
}

TEST_CASE("A new assembly asks again what belongs to it and keeps the other side's shim") {
  Bench bench;
  bench.answer_up_to("pack-lowered");
  const JobState state = with(bench, AssemblyBegun{2, {Side::upper}, "upper too small"});
  CHECK(name_of(state.step("small-gauge-fit")) == "open");
  CHECK(name_of(state.step("small-depth")) == "not_asked");
  CHECK(name_of(state.step("large-gauge-fit")) == "accepted");
  CHECK(name_of(state.step("large-shim-laid")) == "open");
  CHECK(name_of(state.step("puller-set")) == "open");
  CHECK(name_of(state.step("input-shaft-seals")) == "accepted");
  CHECK(state.shims == std::map<Side, std::string>{{Side::lower, "1.60"}});
}

TEST_CASE("A teach-in is accepted when it completed with its values within") {
  Bench bench;
  const auto value = [](ReadingVerdict verdict) {
    Reading reading;
    reading.verdict = verdict;
    return AttemptValue{"touch-point", std::nullopt, reading};
  };
  const TeachInTried good{{"teach-in-lower", 1}, 1, true, {value(ReadingVerdict::within)}, "", ""};
  CHECK(name_of(with(bench, good).step("teach-in-lower")) == "accepted");
  TeachInTried far = good;
  far.values = {value(ReadingVerdict::too_large)};
  CHECK(name_of(with(bench, far).step("teach-in-lower")) == "held");
  TeachInTried aborted = good;
  aborted.completed = false;
  CHECK(name_of(with(bench, aborted).step("teach-in-lower")) == "held");
}

TEST_CASE("A job is closed by its last signature") {
  Bench bench;
  CHECK_FALSE(with(bench, Signed{{"sign-technician", 1}, sheet::Signer::technician}).closed);
  CHECK(with(bench, Signed{{"sign-checker", 1}, sheet::Signer::checker}).closed);
}

TEST_CASE("A job handed over names who is at the bench") {
  Bench bench;
  bench.take(HandOver{"RT", "ring is missing"});
  CHECK(bench.state.at_bench == "RT");
}

}  // namespace shimwright::job::test
