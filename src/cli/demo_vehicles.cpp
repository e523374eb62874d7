#include "demo_vehicles.h"

#include <fmt/format.h>

#include <string_view>
#include <utility>

#include "shimwright/vehicle/vehicle_number.h"

namespace shimwright::cli {

namespace {

constexpr std::int64_t day_in_ms = std::int64_t{24} * 60 * 60 * 1000;

/// A VIN of our own scenario with its right check digit.
std::string vin_for(Dice& dice) {
  constexpr std::string_view years = "KLMNPRST";
  std::string vin = fmt::format("TESTVN000{}A{:06}", years[dice.below(years.size())], dice.below(1'000'000));
  vin[8] = vehicle::check_digit_for(vin);
  return vin;
}

}  // namespace

std::int64_t DemoVehicles::unlike_others(std::int64_t kilometres, Dice& dice) {
  while (!odometers_.insert(kilometres).second) {
    kilometres += dice.between(1, 5'000);
  }
  return kilometres;
}

DemoVehicle* DemoVehicles::one_that_comes_back(std::int64_t at_ms, Dice& dice) {
  constexpr std::int64_t least_days_away = 180;
  if (vehicles_.empty() || !dice.one_in(6)) {
    return nullptr;
  }
  DemoVehicle& vehicle = vehicles_[static_cast<std::size_t>(dice.below(vehicles_.size()))];
  const std::int64_t days_away = vehicle.left_at_ms ? (at_ms - *vehicle.left_at_ms) / day_in_ms : 0;
  if (days_away < least_days_away) {
    return nullptr;
  }
  const std::int64_t before = vehicle.kilometres;
  vehicle.kilometres = unlike_others(before + days_away * dice.between(15, 90), dice);
  vehicle.gearbox = come_back(vehicle.gearbox, vehicle.kilometres - before, dice);
  vehicle.left_at_ms.reset();
  return &vehicle;
}

DemoVehicle& DemoVehicles::new_one(const DemoSpecs& specs, Dice& dice) {
  DemoVehicle vehicle;
  do {
    vehicle.vin = vin_for(dice);
  } while (!vins_.insert(vehicle.vin).second);
  vehicle.by_depth = dice.one_in(3);
  vehicle.kilometres = unlike_others(dice.between(20'000, 220'000), dice);
  vehicle.gearbox = draw_gearbox(vehicle.by_depth ? specs.by_depth : specs.by_gauge, dice);
  vehicles_.push_back(std::move(vehicle));
  return vehicles_.back();
}

DemoVehicle& DemoVehicles::next(std::int64_t at_ms, const DemoSpecs& specs, Dice& dice) {
  DemoVehicle* back = one_that_comes_back(at_ms, dice);
  return back != nullptr ? *back : new_one(specs, dice);
}

}  // namespace shimwright::cli
