#include "demo_bench.h"

#include <catch2/catch.hpp>
#include <memory>

#include "sheets.h"
#include "shimwright/job/decide.h"
#include "shimwright/job/evolve.h"

using namespace shimwright;

namespace {

job::Sheets sheets_of(const std::string& spec_name) {
  auto sheet = sheet::read_job_sheet(*cli::shipped_job_sheet("dry-pack-renewal"));
  auto spec = sheet::read_spec_sheet(*cli::shipped_spec_sheet(spec_name));
  REQUIRE(sheet);
  REQUIRE(spec);
  return {std::make_shared<const sheet::JobSheet>(*std::move(sheet)), "s",
          std::make_shared<const sheet::SpecSheet>(*std::move(spec)), "p"};
}

job::Context context_of_a_bench() {
  job::Context context;
  context.person = "MK";
  context.now = {1'700'000'000'000, 0, false};
  using Kind = sheet::InstrumentKind;
  for (const Kind kind : {Kind::dial_gauge, Kind::depth_gauge, Kind::micrometer, Kind::torque_wrench, Kind::thermometer,
                          Kind::multimeter}) {
    context.instruments.push_back({std::string(sheet::name_of(kind)), "one", kind, 10, 10, std::nullopt, std::nullopt});
  }
  return context;
}

job::JobState played(const std::string& spec_name, std::uint64_t seed) {
  job::JobState state = job::begin(sheets_of(spec_name));
  job::Context context = context_of_a_bench();
  cli::Dice dice(seed);
  cli::DemoTechnician technician(cli::draw_gearbox(*state.sheets.spec, dice), dice);
  job::OpenJob open;
  open.number = "1";
  open.vehicle_typed = "TESTVN0020A000123";
  open.odometer = "90000";
  std::optional<job::Command> command = open;
  for (int turn = 0; command && turn < 1000; ++turn) {
    const auto* sign = std::get_if<job::Sign>(&*command);
    context.person = sign != nullptr && sign->step == "sign-checker" ? "RT" : "MK";
    const auto entries = job::decide(state, *command, context);
    INFO((entries ? "" : entries.error().in_english()));
    REQUIRE(entries);
    for (const job::Entry& entry : *entries) {
      state = job::evolve(std::move(state), entry);
    }
    command = technician.next(state, context);
  }
  return state;
}

}  // namespace

TEST_CASE("the simulated technician brings a job of either gearbox to its end") {
  for (const char* spec : {"D7-3", "D6-2"}) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
      INFO(spec << " seed " << seed);
      const job::JobState state = played(spec, seed);
      CHECK(state.closed);
      CHECK(state.shims.size() == 2);
    }
  }
}

TEST_CASE("some jobs need a second assembly and most do not") {
  int second = 0;
  constexpr int jobs = 40;
  for (std::uint64_t seed = 100; seed < 100 + jobs; ++seed) {
    second += played("D7-3", seed).assembly > 1 ? 1 : 0;
  }
  CHECK(second >= 1);
  CHECK(second <= jobs / 3);
}

TEST_CASE("the dice fall the same for the same seed, and about their mean") {
  cli::Dice one(7);
  cli::Dice other(7);
  double sum = 0;
  for (int draw = 0; draw < 1000; ++draw) {
    const double value = one.bell(1.0);
    CHECK(value == other.bell(1.0));
    sum += value;
  }
  CHECK(std::abs(sum / 1000.0) < 0.15);
  CHECK(one.between(3, 3) == 3);
}
