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

struct Played {
  job::JobState state;
  cli::TrueGearbox gearbox;
  cli::TrueGearbox left;
};

std::vector<job::AddPhoto> photos_at_hand() {
  std::vector<job::AddPhoto> photos;
  for (const char* step : {"received-photos", "strip-photos"}) {
    for (const char digit : {'a', 'b', 'c'}) {
      photos.push_back({step, std::string(64, digit), "image/png", 100, "seen"});
    }
  }
  return photos;
}

Played gone_through(const std::string& spec_name, std::uint64_t seed,
                    std::vector<job::AddPhoto> photos = photos_at_hand()) {
  job::JobState state = job::begin(sheets_of(spec_name));
  job::Context context = context_of_a_bench();
  cli::Dice dice(seed);
  const cli::TrueGearbox gearbox = cli::draw_gearbox(*state.sheets.spec, dice);
  cli::DemoTechnician technician(gearbox, std::move(photos), dice);
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
  cli::TrueGearbox left = cli::left_by(state, gearbox, context);
  return {std::move(state), gearbox, std::move(left)};
}

job::JobState played(const std::string& spec_name, std::uint64_t seed) {
  return gone_through(spec_name, seed).state;
}

template <class Payload>
std::vector<const Payload*> all_at(const job::JobState& state, const std::string& step) {
  std::vector<const Payload*> found;
  for (const job::Entry* entry : state.live(step)) {
    if (const auto* each = std::get_if<Payload>(&entry->body)) {
      found.push_back(each);
    }
  }
  return found;
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

TEST_CASE("a teach-in that broke off is tried again before it is left") {
  int tried_again = 0;
  int left_out = 0;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const job::JobState state = played("D7-3", seed);
    for (const char* step : {"teach-in-lower", "teach-in-upper"}) {
      INFO(step << " seed " << seed);
      const auto tries = all_at<job::TeachInTried>(state, step);
      const bool left = !all_at<job::Deviated>(state, step).empty();
      REQUIRE_FALSE(tries.empty());
      CHECK(tries.size() <= 2);
      CHECK(tries.back()->completed != left);
      CHECK((!left || tries.size() == 2));
      tried_again += tries.size() == 2 ? 1 : 0;
      left_out += left ? 1 : 0;
    }
  }
  CHECK(tried_again >= 5);
  CHECK(left_out <= tried_again / 3);
}

TEST_CASE("the reason for taking the pack off again is what was done") {
  int seen = 0;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const job::JobState state = played("D7-3", seed);
    bool seated_again = false;
    for (const job::Entry* entry : state.live()) {
      if (const auto* series = std::get_if<job::SeriesBegun>(&entry->body)) {
        seated_again = seated_again || series->reason == job::SeriesReason::seated_again;
      }
      if (const auto* begun = std::get_if<job::AssemblyBegun>(&entry->body)) {
        INFO("seed " << seed << ": " << begun->reason);
        CHECK((begun->reason.find("after seating again") != std::string::npos) == seated_again);
        seated_again = false;
        ++seen;
      }
    }
  }
  CHECK(seen >= 2);
}

TEST_CASE("photos are taken, each picture once, or the technician says that there is no camera") {
  int without = 0;
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const job::JobState state = played("D6-2", seed);
    for (const char* step : {"received-photos", "strip-photos"}) {
      INFO(step << " seed " << seed);
      const auto photos = all_at<job::PhotoTaken>(state, step);
      CHECK(photos.empty() != all_at<job::Deviated>(state, step).empty());
      CHECK((photos.size() < 2 || photos[0]->sha256 != photos[1]->sha256));
      without += photos.empty() ? 1 : 0;
    }
  }
  CHECK(without <= 10);
  const job::JobState bare = gone_through("D6-2", 1, {}).state;
  CHECK(all_at<job::Deviated>(bare, "received-photos").size() == 1);
}

TEST_CASE("what a job leaves in the vehicle is its last shims and its own pack") {
  for (const char* spec : {"D7-3", "D6-2"}) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
      const Played job = gone_through(spec, seed);
      CHECK(job.left.old_pack_serial == job.gearbox.pack_serial);
      CHECK(job.left.lower.old_shim > 1000);
      CHECK(job.left.lower.found_float == job.gearbox.lower.float_with(job.left.lower.old_shim));
      CHECK(job.left.upper.found_float == job.gearbox.upper.float_with(job.left.upper.old_shim));
    }
  }
}

TEST_CASE("oil is drained by the litre") {
  const job::JobState state = played("D6-2", 3);
  const auto read = all_at<job::Read>(state, "oil-drained");
  REQUIRE(read.size() == 1);
  CHECK(read.front()->readings.front().number.base > 1'000'000);
  CHECK(read.front()->readings.front().number.base < 2'500'000);
}
