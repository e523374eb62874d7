#include "shimwright/store/found_mark.h"

#include <QString>

#include "search_text.h"

namespace shimwright::store {

namespace {

/// The text as it is compared, and of each character of that where it stands in the text.
struct Folded {
  std::u32string key;
  std::vector<std::size_t> places;
};

Folded folded(const std::string& shown) {
  Folded all;
  const std::u32string characters = QString::fromStdString(shown).toStdU32String();
  for (std::size_t at = 0; at < characters.size(); ++at) {
    for (const char32_t each : search_key(QString::fromUcs4(&characters[at], 1).toStdString())) {
      all.key += each;
      all.places.push_back(at);
    }
  }
  return all;
}

std::vector<std::size_t> differing(const std::u32string& part, const std::u32string& sought) {
  std::vector<std::size_t> places;
  for (std::size_t at = 0; at < part.size(); ++at) {
    if (part[at] != sought[at]) {
      places.push_back(at);
    }
  }
  return places;
}

}  // namespace

std::optional<FoundMark> found_mark(const std::string& shown, const std::string& sought) {
  const Folded text = folded(shown);
  const std::u32string key = search_key(sought);
  const Match matched = match(text.key, key, forgives(key));
  if (matched == Match::none || key.empty()) {
    return std::nullopt;
  }
  for (std::size_t from = text.key.size() - key.size() + 1; from-- > 0;) {
    const std::u32string part = text.key.substr(from, key.size());
    if (match(part, key, matched == Match::one_off) != matched) {
      continue;
    }
    FoundMark mark;
    for (std::size_t at = 0; at < key.size(); ++at) {
      mark.held.push_back(text.places[from + at]);
    }
    for (const std::size_t at : differing(part, key)) {
      mark.forgiven.push_back(text.places[from + at]);
    }
    return mark;
  }
  return std::nullopt;
}

}  // namespace shimwright::store
