#pragma once

#include <compare>
#include <cstdint>

#include "shimwright/shim/depth.h"

namespace shimwright::shim {

/// mean(readings) − reference + Σ constants + stamp, exact: a mean of n whole micrometres is a whole number and a part
/// of n. Kept doubled, because what it is compared with are halves of whole micrometres.
class RequiredLength {
 public:
  explicit RequiredLength(const DepthCase& depth);

  /// Against half of `doubled_um` micrometres, exactly.
  [[nodiscard]] std::strong_ordering compare(std::int64_t doubled_um) const;
  /// How far from half of `doubled_um`, never negative.
  [[nodiscard]] double distance_um(std::int64_t doubled_um) const;
  [[nodiscard]] double millimetres() const;

 private:
  std::int64_t doubled_um_ = 0;  ///< twice the length, rounded down
  std::int64_t rest_ = 0;        ///< what was rounded off, in parts of `readings_`
  std::int64_t readings_ = 1;
};

}  // namespace shimwright::shim
