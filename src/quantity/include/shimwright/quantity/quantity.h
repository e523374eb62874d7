#pragma once

#include <compare>
#include <cstdint>

namespace shimwright::quantity {

/// A whole number of one base unit. Two kinds do not mix: a length does not add to a torque.
template <class Kind>
class Quantity {
 public:
  constexpr Quantity() = default;
  constexpr explicit Quantity(std::int64_t base_units) : base_units_(base_units) {}

  /// In the base unit of the kind, named beside each alias below.
  [[nodiscard]] constexpr std::int64_t count() const { return base_units_; }

  constexpr Quantity& operator+=(Quantity other) {
    base_units_ += other.base_units_;
    return *this;
  }
  constexpr Quantity& operator-=(Quantity other) {
    base_units_ -= other.base_units_;
    return *this;
  }
  friend constexpr Quantity operator+(Quantity left, Quantity right) { return left += right; }
  friend constexpr Quantity operator-(Quantity left, Quantity right) { return left -= right; }
  friend constexpr Quantity operator-(Quantity value) { return Quantity(-value.base_units_); }
  friend constexpr auto operator<=>(Quantity, Quantity) = default;

 private:
  std::int64_t base_units_ = 0;
};

using Length = Quantity<struct LengthKind>;            ///< micrometre
using Torque = Quantity<struct TorqueKind>;            ///< milli-newton-metre
using Mass = Quantity<struct MassKind>;                ///< milligram
using Angle = Quantity<struct AngleKind>;              ///< thousandth of a degree
using Temperature = Quantity<struct TemperatureKind>;  ///< thousandth of a degree Celsius
using Voltage = Quantity<struct VoltageKind>;          ///< millivolt
using Volume = Quantity<struct VolumeKind>;            ///< microlitre
using Pressure = Quantity<struct PressureKind>;        ///< pascal
using Count = Quantity<struct CountKind>;              ///< one
using Percent = Quantity<struct PercentKind>;          ///< thousandth of a percent
using Distance = Quantity<struct DistanceKind>;        ///< metre (odometer)

[[nodiscard]] constexpr Length micrometres(std::int64_t count) {
  return Length(count);
}

/// Millimetres as a plain number, for the statistics; never for storing.
[[nodiscard]] constexpr double in_millimetres(Length length) {
  return static_cast<double>(length.count()) / 1000.0;
}

}  // namespace shimwright::quantity
