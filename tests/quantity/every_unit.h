#pragma once

#include <array>

#include "shimwright/quantity/typed_number.h"

namespace shimwright::quantity::test {

inline constexpr std::array every_unit = {
    Unit::millimetre, Unit::inch,       Unit::thou,    Unit::newton_metre, Unit::pound_foot,
    Unit::gram,       Unit::kilogram,   Unit::degree,  Unit::volt,         Unit::millivolt,
    Unit::litre,      Unit::millilitre, Unit::bar,     Unit::kilopascal,   Unit::degree_celsius,
    Unit::mile,       Unit::piece,      Unit::percent, Unit::kilometre,
};

}  // namespace shimwright::quantity::test
