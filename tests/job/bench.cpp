#include "bench.h"

#include <algorithm>
#include <fstream>
#include <iterator>

#include <catch2/catch.hpp>

namespace shimwright::job::test {

namespace {

std::string file_text(const std::string& path) {
  std::ifstream file(std::string(SHIMWRIGHT_DATA_DIR) + "/" + path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

template <class Value>
Value found(Result<Value> result) {
  if (!result) {
    FAIL(result.error().in_english());
  }
  return *std::move(result);
}

constexpr std::int64_t minute_ms = 60'000;

}  // namespace

Sheets shipped_sheets(const std::string& spec_file) {
  auto job = found(sheet::read_job_sheet(file_text("sheets/dry-pack-renewal.json")));
  auto spec = found(sheet::read_spec_sheet(file_text("specs/" + spec_file)));
  return {std::make_shared<const sheet::JobSheet>(std::move(job)), "hash-of-sheet",
          std::make_shared<const sheet::SpecSheet>(std::move(spec)), "hash-of-spec"};
}

Sheets sheets_with_three_parts() {
  Sheets sheets = shipped_sheets();
  sheet::JobSheet job = *sheets.job;
  for (sheet::Stage& stage : job.stages) {
    for (sheet::Step& step : stage.steps) {
      if (step.id == "new-pack") {
        step.body = sheet::PartStep{{"clutch-pack", "lever-set", "guide-bolts"}};
      }
    }
  }
  sheets.job = std::make_shared<const sheet::JobSheet>(std::move(job));
  return sheets;
}

Context bench_context() {
  Context context;
  context.now = {1'795'421'400'000, 60, false};
  context.person = "MK";
  using sheet::InstrumentKind;
  for (const auto kind : {InstrumentKind::dial_gauge, InstrumentKind::depth_gauge, InstrumentKind::micrometer,
                          InstrumentKind::torque_wrench, InstrumentKind::thermometer, InstrumentKind::multimeter}) {
    const std::string name(sheet::name_of(kind));
    std::string words = name;
    std::replace(words.begin(), words.end(), '_', ' ');
    context.instruments.push_back({name, "the bench's " + words, kind, 10, 10, "2027-03-31", std::nullopt});
  }
  context.instruments.front().turn = quantity::micrometres(1000);
  return context;
}

OpenJob open_command() {
  OpenJob open;
  open.number = "HL-1042";
  open.vehicle_typed = "TESTVN009TA030417";
  return open;
}

quantity::TypedNumber typed(std::string_view text, quantity::Unit unit) {
  return found(quantity::read_number(text, unit));
}

Bench::Bench(const std::string& spec_file) : state(begin(shipped_sheets(spec_file))) {
  if (spec_file.rfind("D6", 0) == 0) {
    shim = {{Side::lower, "1.80"}, {Side::upper, "1.80"}};
  }
  take(open_command());
}

Bench& Bench::take(const Command& command) {
  auto entries = decide(state, command, context);
  if (!entries) {
    FAIL(entries.error().code + " at " + entries.error().in_english());
  }
  REQUIRE_FALSE(entries->empty());
  for (const Entry& entry : *entries) {
    state = evolve(std::move(state), entry);
  }
  context.now.at_ms += minute_ms;
  return *this;
}

std::optional<Error> Bench::error(const Command& command) const {
  const auto entries = decide(state, command, context);
  return entries ? std::nullopt : std::optional(entries.error());
}

std::string Bench::refusal(const Command& command) const {
  const auto refused = error(command);
  return refused ? refused->code : "";
}

Bench& Bench::try_shim(const std::string& step_id, const std::string& tried, Fit fit) {
  return take(TryShim{step_id, tried, fit});
}

Bench& Bench::runs(const std::string& step_id, const std::vector<std::string>& lifted) {
  int spot = 1;
  for (const std::string& each : lifted) {
    take(EnterFloatRun{step_id, spot++, "0.00", each, "0.00", "dial_gauge"});
  }
  return *this;
}

Bench& Bench::float_twice(const std::string& step_id, const std::vector<std::string>& lifted) {
  return runs(step_id, lifted).runs(step_id, lifted);
}

Bench& Bench::enter(const std::string& step_id, const std::string& channel, const std::string& text,
                    const std::string& instrument) {
  return take(EnterReadings{step_id, {{channel, text, instrument}}});
}

std::string Bench::step(const std::string& step_id) const {
  return std::string(name_of(state.step(step_id)));
}

std::vector<std::string> Bench::questions(const std::string& step_id) const {
  std::vector<std::string> codes;
  if (const auto* held = std::get_if<Held>(&state.step(step_id))) {
    for (const Question& each : held->questions) {
      codes.push_back(each.code);
    }
  }
  return codes;
}

const Advised& Bench::advice(const std::string& step_id) const {
  const auto* advised = latest<Advised>(state, step_id);
  if (advised == nullptr) {
    FAIL("no advice at " + step_id);
  }
  return *advised;
}

std::string Bench::conclusion(const std::string& step_id) const {
  return std::string(name_of(advice(step_id).conclusion));
}

std::int64_t Bench::seq_of(const std::string& step_id, std::string_view kind) const {
  std::int64_t seq = 0;
  for (const Entry* entry : state.live(step_id)) {
    seq = kind_of(entry->body) == kind ? entry->seq : seq;
  }
  return seq;
}

bool same_but_trace(const JobState& one, const JobState& other) {
  return one.opened == other.opened && one.steps == other.steps && one.assembly == other.assembly &&
         one.shims == other.shims && one.parked == other.parked && one.at_bench == other.at_bench &&
         one.closed == other.closed;
}

}  // namespace shimwright::job::test
