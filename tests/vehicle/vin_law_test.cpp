#include <algorithm>
#include <array>

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "shimwright/vehicle/vehicle_number.h"

using shimwright::vehicle::check_digit_for;
using shimwright::vehicle::folded_key;
using shimwright::vehicle::read_vehicle_number;

namespace {

const std::string legal = "ABCDEFGHJKLMNPRSTUVWXYZ0123456789";
constexpr std::size_t check_place = 8;

/// A legal number whose check digit fits.
std::string fitting_number() {
  std::string key = *rc::gen::container<std::string>(17, rc::gen::elementOf(legal));
  key[0] = 'T';
  key[1] = '9';
  key[check_place] = check_digit_for(key);
  return key;
}

// Written down apart from the layer's own table: weight and value as one reads them in 49 CFR 565.
int weighed(std::size_t place, char each) {
  constexpr std::array<int, 17> weights = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
  constexpr std::array<std::string_view, 9> letters = {"AJ", "BKS", "CLT", "DMU", "ENV", "FW", "GPX", "HY", "RZ"};
  int value = each - '0';
  for (std::size_t row = 0; row < letters.size(); ++row) {
    value = letters[row].find(each) == std::string_view::npos ? value : static_cast<int>(row) + 1;
  }
  return weights[place] * value % 11;
}

}  // namespace

TEST_CASE("the key of a key is itself") {
  CHECK(rc::check([] {
    const auto typed = *rc::gen::arbitrary<std::string>();
    RC_ASSERT(folded_key(folded_key(typed)) == folded_key(typed));
  }));
}

TEST_CASE("how a number is typed makes no difference to its key") {
  CHECK(rc::check([] {
    const std::string key = fitting_number();
    std::string typed = *rc::gen::element<std::string>("", " ", "-");
    for (const char each : key) {
      const bool small = *rc::gen::arbitrary<bool>() && each >= 'A';
      typed += small ? static_cast<char>(each - 'A' + 'a') : each;
      typed += *rc::gen::element<std::string>("", "", "", " ", "-", "\u00A0", "\t");
    }
    const auto number = read_vehicle_number(typed, 2026);
    RC_ASSERT(number.has_value());
    RC_ASSERT(number->key == key);
    RC_ASSERT(number->check_digit.fits());
    RC_ASSERT(number->notes.empty());
  }));
}

TEST_CASE("one wrong character is found unless it weighs the same") {
  CHECK(rc::check([] {
    const std::string right = fitting_number();
    std::string wrong = right;
    const auto place = *rc::gen::inRange<std::size_t>(0, right.size());
    wrong[place] = *rc::gen::elementOf(legal);
    const auto number = read_vehicle_number(wrong, 2026);
    RC_ASSERT(number.has_value());
    const bool same =
        place == check_place ? wrong == right : weighed(place, wrong[place]) == weighed(place, right[place]);
    RC_ASSERT(number->check_digit.fits() == same);
  }));
}

TEST_CASE("two neighbours swapped are found unless that weighs the same") {
  CHECK(rc::check([] {
    const std::string right = fitting_number();
    const auto place = *rc::gen::suchThat(rc::gen::inRange<std::size_t>(0, 16),
                                          [](auto each) { return each != check_place && each + 1 != check_place; });
    std::string wrong = right;
    std::swap(wrong[place], wrong[place + 1]);
    const auto number = read_vehicle_number(wrong, 2026);
    RC_ASSERT(number.has_value());
    const auto sum = [place](const std::string& key) {
      return (weighed(place, key[place]) + weighed(place + 1, key[place + 1])) % 11;
    };
    RC_ASSERT(number->check_digit.fits() == (sum(wrong) == sum(right)));
  }));
}

TEST_CASE("a suggestion is always a legal number and any text gets an answer") {
  CHECK(rc::check([] {
    const auto pieces = *rc::gen::container<std::vector<std::string>>(
        *rc::gen::inRange<std::size_t>(15, 19),
        rc::gen::element<std::string>("O", "q", "I", "О", "Α", "о", "7", "A", "z", "Ж", "\xFF", "-"));
    std::string typed;
    for (const auto& piece : pieces) {
      typed += piece;
    }
    const auto number = read_vehicle_number(typed, 2026);
    if (!number && number.error().suggestion) {
      const auto suggested = read_vehicle_number(*number.error().suggestion, 2026);
      RC_ASSERT(suggested.has_value());
      RC_ASSERT(suggested->key == *number.error().suggestion);
    }
  }));
}
