#pragma once

#include <cstdint>
#include <random>
#include <string>

#include "shimwright/sheet/spec_sheet.h"

/// What is true of a gearbox in a demonstration: nobody at the bench knows it.
namespace shimwright::cli {

/// Draws that are the same on every machine: the standard library's engines are, its distributions are not.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  [[nodiscard]] std::uint64_t below(std::uint64_t bound) { return engine_() % bound; }
  [[nodiscard]] std::int64_t between(std::int64_t least, std::int64_t most) {
    return least + static_cast<std::int64_t>(below(static_cast<std::uint64_t>(most - least + 1)));
  }
  /// Bell-shaped about 0 (sum of twelve even draws).
  [[nodiscard]] double bell(double sd);
  [[nodiscard]] bool one_in(std::uint64_t count) { return below(count) == 0; }

 private:
  std::mt19937_64 engine_;
};

/// One side, in micrometres.
struct TrueSide {
  std::int64_t seat = 0;         ///< the thickest shim that still lets the gauge in
  std::int64_t ideal_float = 0;  ///< with a shim of exactly the seat
  double lost_per_micrometre = 1.0;
  std::int64_t first_seat_error = 0;  ///< the bearing was not home at the first trials, by so much
  std::int64_t stamp = 0;
  std::int64_t old_shim = 0;  ///< lies there when the vehicle comes in
  double found_float = 0;     ///< with it, as the vehicle comes in

  /// With a shim of this thickness under the new pack.
  [[nodiscard]] double float_with(std::int64_t thickness) const;
};

struct TrueGearbox {
  TrueSide lower;
  TrueSide upper;
  std::string pack_serial;
  std::string old_pack_serial;
  int plugs = 2;
};

/// A gearbox drawn for a spec sheet; one in eight has a bearing that is not home at the first trials.
[[nodiscard]] TrueGearbox draw_gearbox(const sheet::SpecSheet& spec, Dice& dice);

/// As it leaves the workshop: the new pack and these shims are the old ones from now on.
[[nodiscard]] TrueGearbox left_with(TrueGearbox gearbox, std::int64_t lower_shim, std::int64_t upper_shim);

/// As it comes back after so many kilometres: worn, and a new pack is waiting for it.
[[nodiscard]] TrueGearbox come_back(TrueGearbox gearbox, std::int64_t kilometres, Dice& dice);

}  // namespace shimwright::cli
