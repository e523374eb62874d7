#include "required_length.h"

#include <cmath>

namespace shimwright::shim {

RequiredLength::RequiredLength(const DepthCase& depth) : readings_(static_cast<std::int64_t>(depth.readings.size())) {
  quantity::Length sum;
  for (const auto each : depth.readings) {
    sum += each;
  }
  quantity::Length added = -depth.reference;
  for (const auto& constant : depth.constants) {
    added += constant.add;
  }
  if (depth.stamp_used && depth.stamp) {
    added += *depth.stamp;
  }
  const std::int64_t doubled_sum = 2 * sum.count();
  rest_ = doubled_sum % readings_;
  std::int64_t whole = doubled_sum / readings_;
  if (rest_ < 0) {
    rest_ += readings_;
    --whole;
  }
  doubled_um_ = whole + 2 * added.count();
}

std::strong_ordering RequiredLength::compare(std::int64_t doubled_um) const {
  if (doubled_um_ != doubled_um) {
    return doubled_um_ <=> doubled_um;
  }
  return rest_ <=> 0;
}

double RequiredLength::distance_um(std::int64_t doubled_um) const {
  const double rest = static_cast<double>(rest_) / static_cast<double>(readings_);
  return std::abs(static_cast<double>(doubled_um_ - doubled_um) + rest) / 2.0;
}

double RequiredLength::millimetres() const {
  const double rest = static_cast<double>(rest_) / static_cast<double>(readings_);
  return (static_cast<double>(doubled_um_) + rest) / 2000.0;
}

}  // namespace shimwright::shim
