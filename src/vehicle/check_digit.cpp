#include <algorithm>
#include <array>

#include "shimwright/vehicle/vehicle_number.h"

namespace shimwright::vehicle {

namespace {

// 49 CFR 565.15, table IV: the ninth position, the check digit itself, weighs nothing.
constexpr std::array<int, 17> weights = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

// 49 CFR 565.15, table III: A to Z; a letter that no VIN has counts nothing.
constexpr std::string_view values_of_letters = "12345678012345070923456789";

// 49 CFR 565.15, table VII: the code letters and digits in their order from 1980 on, anew after thirty years.
constexpr std::string_view codes_of_years = "ABCDEFGHJKLMNPRSTVWXY123456789";
constexpr int first_year = 1980;
constexpr int years_of_one_round = 30;
static_assert(codes_of_years.size() == years_of_one_round);

int value_of(char each) {
  if (each >= '0' && each <= '9') {
    return each - '0';
  }
  const bool letter = each >= 'A' && each <= 'Z';
  return letter ? values_of_letters[static_cast<std::size_t>(each - 'A')] - '0' : 0;
}

}  // namespace

char check_digit_for(std::string_view key) {
  int sum = 0;
  for (std::size_t index = 0; index < std::min(weights.size(), key.size()); ++index) {
    sum += weights[index] * value_of(key[index]);
  }
  const int remainder = sum % 11;
  return remainder == 10 ? 'X' : static_cast<char>('0' + remainder);
}

std::vector<int> model_years_for(char code, int this_year) {
  std::vector<int> years;
  const std::size_t offset = codes_of_years.find(code);
  if (offset == std::string_view::npos) {
    return years;
  }
  for (int year = first_year + static_cast<int>(offset); year - 1 <= this_year; year += years_of_one_round) {
    years.push_back(year);
  }
  return years;
}

}  // namespace shimwright::vehicle
