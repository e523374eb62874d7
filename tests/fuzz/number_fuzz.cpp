#include "fuzz_target.h"
#include "shimwright/quantity/typed_number.h"

namespace quantity = shimwright::quantity;
using shimwright::fuzz::require;

/// The first byte picks the unit that is assumed, the rest is typed.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) {
    return 0;
  }
  constexpr auto units = static_cast<unsigned>(quantity::Unit::mile) + 1U;
  const auto assumed = static_cast<quantity::Unit>(data[0] % units);
  const auto number = quantity::read_number(shimwright::fuzz::text_of(data + 1, size - 1), assumed);
  if (!number) {
    require(!number.error().code.empty(), "a refusal has a code");
    require(number.error().in_english().find('{') == std::string::npos, "a refusal is a whole sentence");
    return 0;
  }
  const auto dimension = quantity::dimension_of(assumed);
  require(quantity::dimension_of(number->unit) == dimension, "the unit is of the dimension asked for");
  require(number->base < quantity::most_base(dimension), "the number is below the end of its range");
  require(number->base >= quantity::least_base(dimension), "the number is not below the start of its range");
  require(quantity::read_number(quantity::text_of(*number), assumed) == number, "its text is read as the same number");
  return 0;
}
