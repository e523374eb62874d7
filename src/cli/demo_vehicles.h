#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "demo_gearbox.h"

namespace shimwright::cli {

/// A vehicle of the demonstration between its jobs.
struct DemoVehicle {
  std::string vin;
  bool by_depth = false;  ///< the kind of gearbox: shims found by depth
  std::int64_t kilometres = 0;
  TrueGearbox gearbox;
  std::optional<std::int64_t> left_at_ms;  ///< blank: it is still in the workshop
};

/// The spec sheets of the two kinds of gearbox.
struct DemoSpecs {
  const sheet::SpecSheet& by_gauge;
  const sheet::SpecSheet& by_depth;
};

/// All vehicles a demonstration has seen.
class DemoVehicles {
 public:
  /// The one that comes in now: a new one, or after half a year at least one that was there before, driven and worn
  /// since. Good until the next call.
  [[nodiscard]] DemoVehicle& next(std::int64_t at_ms, const DemoSpecs& specs, Dice& dice);

 private:
  [[nodiscard]] DemoVehicle* one_that_comes_back(std::int64_t at_ms, Dice& dice);
  [[nodiscard]] DemoVehicle& new_one(const DemoSpecs& specs, Dice& dice);
  /// No two jobs have the same odometer.
  [[nodiscard]] std::int64_t unlike_others(std::int64_t kilometres, Dice& dice);

  std::vector<DemoVehicle> vehicles_;
  std::set<std::string> vins_;
  std::set<std::int64_t> odometers_;
};

}  // namespace shimwright::cli
