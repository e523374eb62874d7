#include "search_text.h"

#include <algorithm>

#include <QString>

namespace shimwright::store {

namespace {

char32_t told_apart(char32_t character) {
  switch (character) {
    case U'O':
      return U'0';
    case U'I':
      return U'1';
    default:
      return character;
  }
}

/// Of two texts of one length: whether they differ in one place, or in two neighbours that are swapped.
bool differ_by_one_fault(std::u32string_view left, std::u32string_view right) {
  const auto [at_left, at_right] = std::mismatch(left.begin(), left.end(), right.begin());
  if (at_left == left.end()) {
    return true;
  }
  if (std::equal(at_left + 1, left.end(), at_right + 1)) {
    return true;
  }
  return at_left + 1 != left.end() && at_left[0] == at_right[1] && at_left[1] == at_right[0] &&
         std::equal(at_left + 2, left.end(), at_right + 2);
}

}  // namespace

std::u32string search_key(const std::string& text) {
  std::u32string key;
  for (const char32_t character : QString::fromStdString(text).toUpper().toStdU32String()) {
    if (QChar::isLetterOrNumber(character)) {
      key += told_apart(character);
    }
  }
  return key;
}

std::string in_utf8(const std::u32string& text) {
  return QString::fromStdU32String(text).toStdString();
}

std::vector<std::string> suffixes_of(const std::u32string& term) {
  std::vector<std::string> suffixes;
  for (std::size_t place = 0; place + shortest_search <= term.size(); ++place) {
    suffixes.push_back(in_utf8(term.substr(place)));
  }
  return suffixes;
}

std::vector<std::u32string> one_fault_from(const std::u32string& sought) {
  constexpr std::u32string_view others = U"0123456789ABCDEFGHJKLMNPQRSTUVWXYZ";
  std::vector<std::u32string> texts;
  for (std::size_t place = 0; place < sought.size(); ++place) {
    std::u32string text = sought;
    for (const char32_t other : others) {
      if (other != sought[place]) {
        text[place] = other;
        texts.push_back(text);
      }
    }
    if (place + 1 < sought.size() && sought[place] != sought[place + 1]) {
      text = sought;
      std::swap(text[place], text[place + 1]);
      texts.push_back(std::move(text));
    }
  }
  return texts;
}

Match match(const std::u32string& term, const std::u32string& sought, bool forgiving) {
  if (term.find(sought) != std::u32string::npos) {
    return Match::exact;
  }
  const std::u32string_view whole(term);
  for (std::size_t place = 0; forgiving && place + sought.size() <= term.size(); ++place) {
    if (differ_by_one_fault(whole.substr(place, sought.size()), sought)) {
      return Match::one_off;
    }
  }
  return Match::none;
}

}  // namespace shimwright::store
