#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "shimwright/quantity/error.h"
#include "shimwright/shim/depth.h"
#include "shimwright/shim/disc_float.h"
#include "shimwright/shim/gauge_fit.h"
#include "shimwright/shim/tray.h"

/// One question to the engine: its JSON form and its rules.
namespace shimwright::shim {

struct AdviseCase {
  Tray tray;
  std::optional<GaugeFitCase> gauge_fit;
  std::optional<DepthCase> depth;
  std::optional<FloatCase> disc_float;  ///< `float` in JSON

  friend bool operator==(const AdviseCase&, const AdviseCase&) = default;
};

/// A case that keeps every rule; only read_case and checked make one.
class CheckedCase {
 public:
  [[nodiscard]] const AdviseCase& content() const { return content_; }

 private:
  explicit CheckedCase(AdviseCase content) : content_(std::move(content)) {}
  friend struct CaseChecker;

  AdviseCase content_;
};

/// Reads a case. Refused with the first fault; the place is its JSON pointer (of a missing field the one it would have,
/// the empty one where the text is no JSON or no section is there). Codes: those of json::parse, json::ObjectReader and
/// quantity::read_number, and `too_fine`, `out_of_range`, `empty_list`, `repeated_shim`, `unknown_shim`,
/// `unknown_name`, `limits_order`, `outside_limits`, `stamp_missing`, `bin_order`, `too_few_spots`, `no_section`.
[[nodiscard]] Result<CheckedCase> read_case(std::string_view json_text);

/// The same rules, in the same order and with the same places, for a case put together in the program.
[[nodiscard]] Result<CheckedCase> checked(const AdviseCase& advise_case);

/// The case as JSON, lengths as numbers in mm; read_case gives it back equal.
[[nodiscard]] std::string write_case(const AdviseCase& advise_case);

}  // namespace shimwright::shim
