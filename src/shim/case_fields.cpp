#include "case_fields.h"

#include <charconv>
#include <cmath>

#include "shimwright/quantity/typed_number.h"

namespace shimwright::shim {

namespace {

constexpr double too_large_from = 10000.0;

/// Of a number out of the range of a double: which end of it.
bool is_next_to_nothing(const std::string& text) {
  constexpr std::size_t digits_that_fit = 300;
  const std::size_t exponent_at = text.find_first_of("eE");
  if (exponent_at == std::string::npos) {
    return text.rfind("0.", 0) == 0 || text.rfind("-0.", 0) == 0;
  }
  return exponent_at < digits_that_fit && text[exponent_at + 1] == '-';
}

Result<double> number_of(const json::Value& value, const std::string& place) {
  const json::Number* number = value.number();
  if (number == nullptr) {
    return refuse("wrong_type", place, SHIMWRIGHT_TEXT("shim", "A number without quotation marks has to stand here."));
  }
  const std::string& text = number->text;
  double read = 0.0;
  const auto outcome = std::from_chars(text.data(), text.data() + text.size(), read);
  if (outcome.ec == std::errc::result_out_of_range && is_next_to_nothing(text)) {
    return 0.0;
  }
  if (outcome.ec != std::errc() || !(std::abs(read) < too_large_from)) {
    return refuse("out_of_range", place, SHIMWRIGHT_TEXT("shim", "This number has to be below 10000 in size."));
  }
  return read;
}

Result<void> within(double value, const std::string& place, const Bound& bound) {
  if (bound.least_allowed ? value >= bound.least : value > bound.least) {
    return {};
  }
  if (!bound.least_allowed) {
    return refuse("out_of_range", place, SHIMWRIGHT_TEXT("shim", "This has to be more than 0."));
  }
  if (bound.least == 0.0) {
    return refuse("out_of_range", place, SHIMWRIGHT_TEXT("shim", "This must not be below 0."));
  }
  return refuse("out_of_range", place, SHIMWRIGHT_TEXT("shim", "This has to be at least {0}."),
                {quantity::shortest_text(std::llround(bound.least * 1000.0), quantity::Unit::millimetre)});
}

Result<std::int64_t> micrometres_of(const json::Value& value, const std::string& place) {
  if (const std::string* typed = value.string()) {
    auto read = quantity::read_number(*typed, quantity::Unit::millimetre);
    if (!read) {
      read.error().place = place;
      return tl::make_unexpected(std::move(read.error()));
    }
    return read->base;
  }
  const auto millimetres = number_of(value, place);
  if (!millimetres) {
    return tl::make_unexpected(millimetres.error());
  }
  constexpr double allowed_um = 1e-6;
  constexpr double rounding_um = 1e-9;  // of the largest length as a double, so that the bound itself is allowed
  const double micrometres = *millimetres * 1000.0;
  const double whole = std::round(micrometres);
  if (std::abs(micrometres - whole) > allowed_um + rounding_um) {
    return refuse(
        "too_fine", place,
        SHIMWRIGHT_TEXT("shim", "A length has to be a whole number of micrometres; give three decimals at most."));
  }
  if (std::abs(whole) >= too_large_from * 1000.0) {
    return refuse("out_of_range", place, SHIMWRIGHT_TEXT("shim", "This number has to be below 10000 in size."));
  }
  return static_cast<std::int64_t>(whole);
}

}  // namespace

void FirstFault::note(Error fault) {
  if (!fault_) {
    fault_ = std::move(fault);
  }
}

void FirstFault::note(std::string_view code, const std::string& place, std::string_view sentence) {
  note(Error{std::string(code), place, Message{std::string(sentence), {}}});
}

Result<double> read_plain_number(const json::Value& value, const std::string& place, const Bound& bound) {
  auto number = number_of(value, place);
  if (number) {
    if (auto checked = within(*number, place, bound); !checked) {
      return tl::make_unexpected(std::move(checked.error()));
    }
  }
  return number;
}

Result<quantity::Length> read_length(const json::Value& value, const std::string& place, const Bound& bound) {
  const auto micrometres = micrometres_of(value, place);
  if (!micrometres) {
    return tl::make_unexpected(micrometres.error());
  }
  if (auto checked = within(static_cast<double>(*micrometres) / 1000.0, place, bound); !checked) {
    return tl::make_unexpected(std::move(checked.error()));
  }
  return quantity::Length(*micrometres);
}

Fields::Fields(const json::Value& value, std::string place, FirstFault& fault, Keys required, Keys optional)
    : place_(std::move(place)), fault_(fault) {
  auto opened = json::ObjectReader::open(value, place_, required, optional);
  if (opened) {
    reader_ = std::move(*opened);
  } else {
    fault_.note(std::move(opened.error()));
  }
}

const json::Value& Fields::value(std::string_view key) const {
  static const json::Value null;
  const json::Value* member = reader_ ? reader_->member(key) : nullptr;
  return member == nullptr ? null : *member;
}

std::string Fields::text(std::string_view key) {
  return reader_ ? fault_.take(reader_->string(key)) : std::string();
}

bool Fields::flag(std::string_view key) {
  return reader_ && fault_.take(reader_->boolean(key));
}

double Fields::number(std::string_view key, const Bound& bound) {
  return fault_.take(read_plain_number(value(key), place_of(key), bound));
}

quantity::Length Fields::length(std::string_view key, const Bound& bound) {
  return fault_.take(read_length(value(key), place_of(key), bound));
}

std::optional<quantity::Length> Fields::length_or_null(std::string_view key) {
  if (value(key).is_null()) {
    return std::nullopt;
  }
  return length(key);
}

const json::Array& Fields::list(std::string_view key) {
  static const json::Array none;
  const json::Array* elements = reader_ ? fault_.take(reader_->array(key)) : nullptr;
  return elements == nullptr || fault_.any() ? none : *elements;
}

const json::Array& Fields::filled_list(std::string_view key) {
  const json::Array& elements = list(key);
  if (elements.empty()) {
    fault_.note("empty_list", place_of(key), SHIMWRIGHT_TEXT("shim", "This list must not be empty."));
  }
  return elements;
}

}  // namespace shimwright::shim
