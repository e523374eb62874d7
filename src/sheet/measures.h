#pragma once

#include <cstdint>
#include <string_view>

#include "decimal.h"
#include "fields.h"
#include "shimwright/quantity/quantity.h"
#include "shimwright/quantity/typed_number.h"

/// Numbers in sheets are texts, so that none passes through a binary fraction.
namespace shimwright::sheet {

struct LengthRange {
  quantity::Length least;
  quantity::Length most;
};

/// In millionths.
struct DecimalRange {
  std::int64_t least = 0;
  std::int64_t most = millionths_out_of_range - 1;
};

/// `"0.05"` by the one number reader. Codes: those of quantity::read_number, and `wrong_unit` where another unit than
/// the field's is typed.
[[nodiscard]] quantity::TypedNumber read_measure(Fields& fields, std::string_view key, quantity::Unit unit);

/// A length in mm within the range, else `out_of_range`.
[[nodiscard]] quantity::Length read_length(Fields& fields, std::string_view key, LengthRange range);

/// A plain decimal within the range: `not_a_number`, `out_of_range`.
[[nodiscard]] double read_decimal(Fields& fields, std::string_view key, DecimalRange range);

/// The unit named by its symbol: `unknown_word`.
[[nodiscard]] quantity::Unit read_unit(Fields& fields, std::string_view key);

}  // namespace shimwright::sheet
