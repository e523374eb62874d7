#include "measures.h"

#include <optional>
#include <string>

namespace shimwright::sheet {

namespace {

constexpr int micrometre_decimals = 3;

void refuse_range(Fields& fields, std::string_view key, std::string least, std::string most) {
  fields.refuse("out_of_range", key, SHIMWRIGHT_TEXT("sheet", "A number from {0} to {1} has to stand here."),
                {std::move(least), std::move(most)});
}

}  // namespace

quantity::TypedNumber read_measure(Fields& fields, std::string_view key, quantity::Unit unit) {
  const std::string typed = fields.string(key);
  if (!fields.sound()) {
    return {};
  }
  auto number = quantity::read_number(typed, unit);
  if (!number) {
    number.error().place = fields.place_of(key);
  } else if (number->unit != unit) {
    fields.refuse("wrong_unit", key,
                  SHIMWRIGHT_TEXT("sheet", "The number is not in the unit of this field; write it in {0}."),
                  {std::string(quantity::symbol_of(unit))});
    return {};
  }
  return fields.take(std::move(number));
}

quantity::Length read_length(Fields& fields, std::string_view key, LengthRange range) {
  const auto number = read_measure(fields, key, quantity::Unit::millimetre);
  const quantity::Length length(number.base);
  if (fields.sound() && (length < range.least || length > range.most)) {
    refuse_range(fields, key, quantity::millimetre_text(range.least, micrometre_decimals),
                 quantity::millimetre_text(range.most, micrometre_decimals));
  }
  return length;
}

double read_decimal(Fields& fields, std::string_view key, DecimalRange range) {
  const std::string typed = fields.string(key);
  const std::optional<std::int64_t> millionths = millionths_from(typed);
  if (fields.sound() && !millionths) {
    fields.refuse(
        "not_a_number", key,
        SHIMWRIGHT_TEXT("sheet", "'{0}' is no number of up to six decimals below 10000; write it like 0.003."),
        {typed});
  }
  if (!fields.sound() || !millionths) {
    return 0;
  }
  if (*millionths < range.least || *millionths > range.most) {
    refuse_range(fields, key, decimal_text(range.least), decimal_text(range.most));
  }
  return as_number(*millionths);
}

quantity::Unit read_unit(Fields& fields, std::string_view key) {
  const std::string symbol = fields.string(key);
  const auto unit = quantity::unit_with_symbol(symbol);
  if (fields.sound() && !unit) {
    fields.refuse(
        "unknown_word", key,
        SHIMWRIGHT_TEXT("sheet",
                        "'{0}' is no unit known here; write it like mm, N·m or °C, or leave it empty for pieces."),
        {symbol});
  }
  return unit ? *unit : quantity::Unit::millimetre;
}

}  // namespace shimwright::sheet
