#include "shimwright/quantity/typed_number.h"

#include <algorithm>

#include "typed_text.h"
#include "unit_facts.h"

namespace shimwright::quantity {

namespace {

/// What stands in the text: a sign, digits with a mark, and what follows them.
struct Parts {
  bool negative = false;
  std::string_view number;
  std::string_view rest;
};

Parts split(std::string_view text) {
  Parts parts;
  if (!text.empty() && is_sign(text.front())) {
    parts.negative = text.front() == '-';
    text.remove_prefix(1);
  }
  const auto* const end =
      std::find_if(text.begin(), text.end(), [](char each) { return !is_digit(each) && !is_mark(each); });
  const auto length = static_cast<std::size_t>(end - text.begin());
  parts.number = text.substr(0, length);
  parts.rest = text.substr(length);
  return parts;
}

bool has_digit(std::string_view text) {
  return std::any_of(text.begin(), text.end(), is_digit);
}

std::string_view without_leading_spaces(std::string_view text) {
  return text.substr(std::min(text.find_first_not_of(' '), text.size()));
}

tl::unexpected<Error> refuse_not_a_number() {
  return refuse("not_a_number", "",
                SHIMWRIGHT_TEXT("quantity", "This is not a number; type digits with at most one comma or point."));
}

tl::unexpected<Error> refuse_incomplete() {
  return refuse("incomplete", "", SHIMWRIGHT_TEXT("quantity", "The number is not finished; type the missing digits."));
}

Result<void> check_text(std::string_view text) {
  if (text.empty()) {
    return refuse("empty", "", SHIMWRIGHT_TEXT("quantity", "Nothing is entered yet; type a number."));
  }
  if (has_digit(text)) {
    return {};
  }
  const bool begun = std::all_of(text.begin(), text.end(), [](char each) { return is_sign(each) || is_mark(each); });
  return begun ? refuse_incomplete() : refuse_not_a_number();
}

Result<void> check_number(const Parts& parts) {
  if (!has_digit(parts.number)) {
    return refuse_not_a_number();
  }
  if (std::count_if(parts.number.begin(), parts.number.end(), is_mark) > 1) {
    return refuse(
        "two_marks", "",
        SHIMWRIGHT_TEXT("quantity", "There are two decimal marks; type only one, and none between thousands."));
  }
  const std::string_view follows = without_leading_spaces(parts.rest);
  if (follows.size() < parts.rest.size() && is_digit(follows.front())) {
    return refuse("space_inside", "",
                  SHIMWRIGHT_TEXT("quantity", "There is a space between the digits; type the number without it."));
  }
  return is_mark(parts.number.back()) ? refuse_incomplete() : Result<void>();
}

Result<Unit> read_unit(std::string_view spelling, Unit assumed) {
  if (spelling.empty()) {
    return assumed;
  }
  if (has_digit(spelling)) {
    return refuse_not_a_number();
  }
  const UnitFacts* const typed = unit_spelled(spelling);
  if (typed == nullptr || typed->dimension != dimension_of(assumed)) {
    return refuse("unknown_unit", "",
                  SHIMWRIGHT_TEXT("quantity", "This unit does not fit here; leave it out or type one of: {0}."),
                  {symbols_of(dimension_of(assumed))});
  }
  return typed->unit;
}

tl::unexpected<Error> refuse_too_fine(Unit unit) {
  const int most = most_decimals(unit);
  if (most == 0) {
    return refuse("too_fine", "",
                  SHIMWRIGHT_TEXT("quantity", "Only a whole number fits here; leave out the decimals."));
  }
  return refuse("too_fine", "",
                SHIMWRIGHT_TEXT("quantity", "That is finer than can be kept; in {0}, type no more decimals than {1}."),
                {std::string(symbol_of(unit)), std::to_string(most)});
}

Result<int> read_decimals(std::string_view number, Unit unit) {
  const auto* const mark = std::find_if(number.begin(), number.end(), is_mark);
  const auto decimals = mark == number.end() ? 0 : number.end() - mark - 1;
  return decimals > finest_decimals(unit) ? Result<int>(refuse_too_fine(unit)) : static_cast<int>(decimals);
}

/// Whether the digits are those that are shown for the number, but for zeros in front.
bool is_as_shown(const Parts& parts, const TypedNumber& number) {
  std::string digits(parts.number.substr(std::min(parts.number.find_first_not_of('0'), parts.number.size())));
  std::replace(digits.begin(), digits.end(), ',', '.');
  const std::string shown = digits_of(number);
  return shown == (parts.negative ? "-" : "") + (digits.front() == '.' ? "0" + digits : digits);
}

/// All digits as one whole number; anything far beyond every range stays as large as that.
Wide digits_as_one(std::string_view number) {
  constexpr Wide beyond_every_range = power_of_ten(18);
  Wide value = 0;
  for (const char each : number) {
    if (is_digit(each)) {
      value = std::min(value * 10 + (each - '0'), beyond_every_range);
    }
  }
  return value;
}

Result<std::int64_t> base_of(const Parts& parts, int decimals, Unit unit) {
  const UnitFacts& facts = facts_of(unit);
  const DimensionFacts& range = facts_of(facts.dimension);
  const Wide divisor = facts.denominator * power_of_ten(decimals);
  // Half away from zero: the size is rounded half up, then gets its sign.
  const Wide size = (2 * digits_as_one(parts.number) * facts.numerator + divisor) / (2 * divisor);
  if (size >= range.most_base) {
    return refuse("out_of_range", "",
                  SHIMWRIGHT_TEXT("quantity", "The number has to be smaller than {0}; check the decimal mark."),
                  {shortest_text(range.most_base, range.default_unit)});
  }
  const auto base = static_cast<std::int64_t>(parts.negative ? -size : size);
  if (base < range.least_base) {
    return refuse("out_of_range", "",
                  SHIMWRIGHT_TEXT("quantity", "The number cannot be less than {0}; check the sign."),
                  {shortest_text(range.least_base, range.default_unit)});
  }
  return base;
}

}  // namespace

Result<TypedNumber> read_number(std::string_view typed, Unit assumed) {
  const std::string text = folded_and_trimmed(typed);
  if (auto checked = check_text(text); !checked) {
    return tl::make_unexpected(std::move(checked.error()));
  }
  const Parts parts = split(text);
  if (auto checked = check_number(parts); !checked) {
    return tl::make_unexpected(std::move(checked.error()));
  }
  auto unit = read_unit(without_leading_spaces(parts.rest), assumed);
  if (!unit) {
    return tl::make_unexpected(std::move(unit.error()));
  }
  auto decimals = read_decimals(parts.number, *unit);
  if (!decimals) {
    return tl::make_unexpected(std::move(decimals.error()));
  }
  auto base = base_of(parts, *decimals, *unit);
  if (!base) {
    return tl::make_unexpected(std::move(base.error()));
  }
  const TypedNumber number{*base, *decimals, *unit};
  // Finer than can be told apart, unless a person types what they were shown.
  return *decimals > most_decimals(*unit) && !is_as_shown(parts, number) ? Result<TypedNumber>(refuse_too_fine(*unit))
                                                                         : number;
}

}  // namespace shimwright::quantity
