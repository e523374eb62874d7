#include "demo_gearbox.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <vector>

namespace shimwright::cli {

double Dice::bell(double sd) {
  double sum = -6.0;
  for (int draw = 0; draw < 12; ++draw) {
    sum += static_cast<double>(engine_() >> 11U) / 9007199254740992.0;
  }
  return sum * sd;
}

double TrueSide::float_with(std::int64_t thickness) const {
  return static_cast<double>(ideal_float) - lost_per_micrometre * static_cast<double>(thickness - seat);
}

namespace {

std::vector<std::int64_t> sizes_of(const sheet::SideSpec& spec) {
  std::vector<std::int64_t> sizes;
  sizes.reserve(spec.tray.size());
  for (const sheet::SpecShim& each : spec.tray) {
    sizes.push_back(each.thickness.count());
  }
  std::sort(sizes.begin(), sizes.end());
  return sizes;
}

std::int64_t nearest_size(const std::vector<std::int64_t>& sizes, std::int64_t wanted) {
  return *std::min_element(sizes.begin(), sizes.end(), [wanted](std::int64_t one, std::int64_t other) {
    return std::abs(one - wanted) < std::abs(other - wanted);
  });
}

std::int64_t draw_stamp(Dice& dice) {
  return dice.between(-6, 6) * 20;
}

std::string draw_serial(const char* year, Dice& dice) {
  return fmt::format("{}-{:05}", year, dice.below(100'000));
}

TrueSide draw_side(const sheet::SideSpec& spec, Dice& dice) {
  const auto sizes = sizes_of(spec);
  const auto count = static_cast<std::int64_t>(sizes.size());
  const std::int64_t place = dice.between(count * 2 / 5, count * 2 / 3);
  const std::int64_t step = sizes[1] - sizes[0];
  TrueSide side;
  side.seat = sizes[static_cast<std::size_t>(place)] + dice.between(step / 5, step * 4 / 5);
  const std::int64_t middle = (spec.disc_float.least.count() + spec.disc_float.most.count()) / 2;
  side.ideal_float = middle - step / 2 + std::llround(dice.bell(30.0));
  const auto& known = spec.disc_float.sensitivity;
  side.lost_per_micrometre = known ? known->mean + dice.bell(known->sd / 2) : 1.0 + dice.bell(0.05);
  side.stamp = draw_stamp(dice);
  side.old_shim = nearest_size(sizes, side.seat + std::llround(dice.bell(static_cast<double>(step) / 3)));
  side.found_float = side.float_with(side.old_shim) + static_cast<double>(dice.between(40, 140));
  return side;
}

void draw_first_seat(TrueGearbox& gearbox, Dice& dice) {
  gearbox.lower.first_seat_error = 0;
  gearbox.upper.first_seat_error = 0;
  if (dice.one_in(8)) {
    TrueSide& off = dice.one_in(2) ? gearbox.lower : gearbox.upper;
    off.first_seat_error = -dice.between(400, 470);
  }
}

void leave(TrueSide& side, std::int64_t shim) {
  side.found_float = side.float_with(shim);
  side.old_shim = shim;
}

/// Wear adds to the float; the box stays as it is but for what a new pack and new levers differ by.
void wear_and_renew(TrueSide& side, std::int64_t kilometres, Dice& dice) {
  side.found_float += 25.0 + static_cast<double>(kilometres) / 1000.0 * (1.2 + std::abs(dice.bell(0.4)));
  side.seat += std::llround(dice.bell(8.0));
  side.ideal_float += std::llround(dice.bell(8.0));
  side.stamp = draw_stamp(dice);
}

}  // namespace

TrueGearbox draw_gearbox(const sheet::SpecSheet& spec, Dice& dice) {
  TrueGearbox gearbox{draw_side(spec.lower, dice), draw_side(spec.upper, dice), draw_serial("26", dice),
                      draw_serial("19", dice), static_cast<int>(dice.between(1, 3))};
  draw_first_seat(gearbox, dice);
  return gearbox;
}

TrueGearbox left_with(TrueGearbox gearbox, std::int64_t lower_shim, std::int64_t upper_shim) {
  leave(gearbox.lower, lower_shim);
  leave(gearbox.upper, upper_shim);
  gearbox.old_pack_serial = gearbox.pack_serial;
  return gearbox;
}

TrueGearbox come_back(TrueGearbox gearbox, std::int64_t kilometres, Dice& dice) {
  wear_and_renew(gearbox.lower, kilometres, dice);
  wear_and_renew(gearbox.upper, kilometres, dice);
  gearbox.pack_serial = draw_serial("26", dice);
  draw_first_seat(gearbox, dice);
  return gearbox;
}

}  // namespace shimwright::cli
