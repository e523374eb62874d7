#pragma once

#include <string>

#include "shimwright/record/page.h"

namespace shimwright::record {

/// A payload of the alphanumeric mode as the squares of a QR code (ISO/IEC 18004) that stays readable with a sixth of it
/// spoilt. No squares where the payload is too long for any.
[[nodiscard]] Code qr_code(const std::string& payload, const Box& box);

}  // namespace shimwright::record
