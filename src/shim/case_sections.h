#pragma once

#include <string>
#include <string_view>

#include "case_fields.h"
#include "shimwright/json/value.h"
#include "shimwright/shim/advise_case.h"

namespace shimwright::shim {

/// Each reads one part of a case in the order of the contract and notes the first fault.
[[nodiscard]] Tray read_tray(Fields& top);
[[nodiscard]] GaugeFitCase read_gauge_fit(const json::Value& value, const Tray& tray, FirstFault& fault);
[[nodiscard]] DepthCase read_depth(const json::Value& value, const Tray& tray, FirstFault& fault);
[[nodiscard]] FloatCase read_float(const json::Value& value, const Tray& tray, FirstFault& fault);

/// The id of a shim that is in the tray.
[[nodiscard]] std::string read_known_shim(Fields& fields, std::string_view key, const Tray& tray);

}  // namespace shimwright::shim
