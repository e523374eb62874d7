#include "decimal.h"

#include <algorithm>

namespace shimwright::sheet {

namespace {

bool all_digits(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char each) { return each >= '0' && each <= '9'; });
}

}  // namespace

std::optional<std::int64_t> millionths_from(std::string_view text) {
  constexpr std::size_t most_whole_digits = 4;
  const bool negative = !text.empty() && text.front() == '-';
  const std::string_view unsigned_text = text.substr(negative ? 1 : 0);
  const std::size_t mark = unsigned_text.find_first_of(".,");
  const std::string_view whole = unsigned_text.substr(0, mark);
  const std::string_view places = mark == std::string_view::npos ? "0" : unsigned_text.substr(mark + 1);
  if (!all_digits(whole) || !all_digits(places) || whole.size() > most_whole_digits ||
      places.size() > static_cast<std::size_t>(most_decimal_places)) {
    return std::nullopt;
  }
  std::string digits(whole);
  digits += places;
  digits.append(static_cast<std::size_t>(most_decimal_places) - places.size(), '0');
  std::int64_t millionths = 0;
  for (const char digit : digits) {
    millionths = millionths * 10 + (digit - '0');
  }
  return negative ? -millionths : millionths;
}

std::string decimal_text(std::int64_t millionths) {
  const std::int64_t size = millionths < 0 ? -millionths : millionths;
  std::string places = std::to_string(size % millionths_of_one);
  places.insert(0, static_cast<std::size_t>(most_decimal_places) - places.size(), '0');
  places.erase(places.find_last_not_of('0') + 1);
  std::string text = millionths < 0 ? "-" : "";
  text += std::to_string(size / millionths_of_one);
  return places.empty() ? text : text + "." + places;
}

}  // namespace shimwright::sheet
