#include "demo_gearbox.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "sheets.h"

using namespace shimwright;

namespace {

sheet::SpecSheet spec_named(const std::string& name) {
  auto spec = sheet::read_spec_sheet(*cli::shipped_spec_sheet(name));
  REQUIRE(spec);
  return *std::move(spec);
}

}  // namespace

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

TEST_CASE("a gearbox comes in with a shim of its tray and the float that follows from it, worn") {
  for (const char* name : {"D7-3", "D6-2"}) {
    const sheet::SpecSheet spec = spec_named(name);
    cli::Dice dice(1);
    for (int draw = 0; draw < 200; ++draw) {
      const cli::TrueGearbox gearbox = cli::draw_gearbox(spec, dice);
      const auto& tray = spec.lower.tray;
      CHECK(std::any_of(tray.begin(), tray.end(),
                        [&](const auto& shim) { return shim.thickness.count() == gearbox.lower.old_shim; }));
      const double worn = gearbox.lower.found_float - gearbox.lower.float_with(gearbox.lower.old_shim);
      CHECK(worn >= 40.0);
      CHECK(worn <= 140.0);
    }
  }
}

TEST_CASE("a thicker shim leaves less float, by what the side loses for each micrometre") {
  cli::TrueSide side;
  side.seat = 1700;
  side.ideal_float = 500;
  side.lost_per_micrometre = 0.9;
  CHECK(side.float_with(1700) == 500.0);
  CHECK(side.float_with(1800) == Approx(410.0));
}

TEST_CASE("a gearbox that comes back has what was left in it, worn by its way, and another new pack") {
  const sheet::SpecSheet spec = spec_named("D7-3");
  cli::Dice dice(3);
  int bearings_not_home = 0;
  for (int draw = 0; draw < 400; ++draw) {
    const cli::TrueGearbox first = cli::draw_gearbox(spec, dice);
    const cli::TrueGearbox left = cli::left_with(first, 1700, 1650);
    const cli::TrueGearbox back = cli::come_back(left, 40'000, dice);
    CHECK(back.old_pack_serial == first.pack_serial);
    CHECK(back.pack_serial != first.pack_serial);
    CHECK(back.lower.old_shim == 1700);
    CHECK(back.upper.old_shim == 1650);
    const double worn = back.lower.found_float - first.lower.float_with(1700);
    CHECK(worn > 60.0);
    CHECK(worn < 200.0);
    CHECK(std::abs(back.lower.seat - first.lower.seat) <= 48);
    CHECK(back.lower.lost_per_micrometre == first.lower.lost_per_micrometre);
    CHECK(back.plugs == first.plugs);
    bearings_not_home += back.lower.first_seat_error != 0 || back.upper.first_seat_error != 0 ? 1 : 0;
  }
  CHECK(bearings_not_home >= 25);
  CHECK(bearings_not_home <= 80);
}
