#include "demo_vehicles.h"

#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "sheets.h"

using namespace shimwright;

namespace {

constexpr std::int64_t day_in_ms = std::int64_t{24} * 60 * 60 * 1000;

sheet::SpecSheet spec_of(const std::string& name) {
  auto spec = sheet::read_spec_sheet(*cli::shipped_spec_sheet(name));
  REQUIRE(spec);
  return *std::move(spec);
}

}  // namespace

TEST_CASE("some vehicles come back: the same gearbox, driven further, half a year later at least") {
  const sheet::SpecSheet by_gauge = spec_of("D7-3");
  const sheet::SpecSheet by_depth = spec_of("D6-2");
  cli::DemoVehicles vehicles;
  cli::Dice dice(1);
  std::map<std::string, cli::DemoVehicle> last;
  std::set<std::int64_t> odometers;
  int back = 0;
  constexpr int visits = 600;
  for (int visit = 0; visit < visits; ++visit) {
    const std::int64_t now = visit * 4 * day_in_ms;
    cli::DemoVehicle& vehicle = vehicles.next(now, {by_gauge, by_depth}, dice);
    CHECK_FALSE(vehicle.left_at_ms);
    CHECK(odometers.insert(vehicle.kilometres).second);
    if (const auto before = last.find(vehicle.vin); before != last.end()) {
      ++back;
      CHECK(vehicle.by_depth == before->second.by_depth);
      CHECK(vehicle.kilometres > before->second.kilometres);
      CHECK(now - *before->second.left_at_ms >= 180 * day_in_ms);
      CHECK(vehicle.gearbox.old_pack_serial == before->second.gearbox.old_pack_serial);
      CHECK(vehicle.gearbox.lower.old_shim == before->second.gearbox.lower.old_shim);
      CHECK(vehicle.gearbox.lower.found_float > before->second.gearbox.lower.found_float);
    }
    vehicle.gearbox = cli::left_with(vehicle.gearbox, 1500, 1800);
    vehicle.left_at_ms = now + day_in_ms;
    last[vehicle.vin] = vehicle;
  }
  CHECK(back > visits / 15);
  CHECK(back < visits / 4);
}

TEST_CASE("a vehicle still in the workshop does not come in a second time") {
  const sheet::SpecSheet by_gauge = spec_of("D7-3");
  const sheet::SpecSheet by_depth = spec_of("D6-2");
  cli::DemoVehicles vehicles;
  cli::Dice dice(2);
  std::set<std::string> vins;
  for (int visit = 0; visit < 300; ++visit) {
    CHECK(vins.insert(vehicles.next(visit * 30 * day_in_ms, {by_gauge, by_depth}, dice).vin).second);
  }
}
