#include "folding.h"

#include <algorithm>
#include <array>

#include "shimwright/json/utf8.h"
#include "shimwright/vehicle/vehicle_number.h"

namespace shimwright::vehicle {

namespace {

constexpr std::array<std::string_view, 25> white_space = {
    " ",      "\t",     "\n",     "\v",     "\f",     "\r",     "\xC2\x85", "\u00A0", "\u1680",
    "\u2000", "\u2001", "\u2002", "\u2003", "\u2004", "\u2005", "\u2006",   "\u2007", "\u2008",
    "\u2009", "\u200A", "\u2028", "\u2029", "\u202F", "\u205F", "\u3000"};

// ASCII, soft, typographic, no-break, small and full-width.
constexpr std::array<std::string_view, 6> hyphens = {"-", "\u00AD", "\u2010", "\u2011", "\uFE63", "\uFF0D"};

struct LookAlike {
  std::string_view seen;  ///< each of these characters …
  char meant;             ///< … may have been meant as this one
};

constexpr std::array look_alikes = {
    LookAlike{"АаΑα", 'A'},     LookAlike{"ВвΒβ", 'B'},  LookAlike{"Сс", 'C'},    LookAlike{"ЕеΕε", 'E'},
    LookAlike{"НнΗ", 'H'},      LookAlike{"Јј", 'J'},    LookAlike{"КкΚκ", 'K'},  LookAlike{"МмΜ", 'M'},
    LookAlike{"Ν", 'N'},        LookAlike{"РрΡρ", 'P'},  LookAlike{"Ѕѕ", 'S'},    LookAlike{"ТтΤτ", 'T'},
    LookAlike{"Ԝԝ", 'W'},       LookAlike{"ХхΧχ", 'X'},  LookAlike{"УуҮүΥ", 'Y'}, LookAlike{"Ζ", 'Z'},
    LookAlike{"OQОоΟοԚԛ", '0'}, LookAlike{"IІіΙι", '1'},
};

template <class List>
bool holds(const List& list, std::string_view character) {
  return std::find(list.begin(), list.end(), character) != list.end();
}

char in_upper_case(char each) {
  return each >= 'a' && each <= 'z' ? static_cast<char>(each - 'a' + 'A') : each;
}

}  // namespace

std::vector<std::string_view> characters_of(std::string_view text) {
  std::vector<std::string_view> characters;
  while (!text.empty()) {
    const std::size_t length = std::max<std::size_t>(json::utf8_length(text), 1);
    characters.push_back(text.substr(0, length));
    text.remove_prefix(length);
  }
  return characters;
}

bool is_white_space(std::string_view character) {
  return holds(white_space, character);
}

std::string_view trimmed(std::string_view text) {
  const auto characters = characters_of(text);
  const auto first = std::find_if_not(characters.begin(), characters.end(), is_white_space);
  const auto last = std::find_if_not(characters.rbegin(), characters.rend(), is_white_space).base();
  if (first == characters.end()) {
    return {};
  }
  const auto begin = static_cast<std::size_t>(first->data() - text.data());
  const auto end = static_cast<std::size_t>((last - 1)->data() - text.data()) + (last - 1)->size();
  return text.substr(begin, end - begin);
}

bool is_legal(char each) {
  const bool letter = each >= 'A' && each <= 'Z' && each != 'I' && each != 'O' && each != 'Q';
  return letter || (each >= '0' && each <= '9');
}

std::string without_look_alikes(std::string_view key) {
  std::string meant;
  for (const std::string_view character : characters_of(key)) {
    const auto* const found = std::find_if(look_alikes.begin(), look_alikes.end(), [character](const LookAlike& each) {
      return holds(characters_of(each.seen), character);
    });
    meant += found == look_alikes.end() ? std::string(character) : std::string(1, found->meant);
  }
  return meant;
}

std::string folded_key(std::string_view typed) {
  // Cleaned first, or what is left of broken bytes could join to a new hyphen and the key have another key.
  const std::string text = json::as_utf8(typed);
  std::string key;
  for (const std::string_view character : characters_of(text)) {
    if (!is_white_space(character) && !holds(hyphens, character)) {
      key += character;
    }
  }
  std::transform(key.begin(), key.end(), key.begin(), in_upper_case);
  return key;
}

}  // namespace shimwright::vehicle
