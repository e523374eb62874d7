#pragma once

#include <string>
#include <vector>

/// How texts are compared in a search: pure, by characters, not bytes.
namespace shimwright::store {

/// Letters in capitals, letters and digits only, O as 0 and I as 1: what is easily taken for one another is one.
[[nodiscard]] std::u32string search_key(const std::string& text);
[[nodiscard]] std::string in_utf8(const std::u32string& text);

/// The term and every end of it down to two characters: what it holds anywhere is the beginning of one of them.
[[nodiscard]] std::vector<std::string> suffixes_of(const std::u32string& term);

/// Every text that differs from this one by one fault: one character is another digit or capital, or two neighbours are
/// swapped. As search_key() would leave them.
[[nodiscard]] std::vector<std::u32string> one_fault_from(const std::u32string& sought);

enum class Match { none, one_off, exact };

/// Whether the term holds what is sought, exactly, or with one character wrong or two neighbours swapped where that is
/// forgiven.
[[nodiscard]] Match match(const std::u32string& term, const std::u32string& sought, bool forgiving);

/// Shorter texts have too many neighbours, longer ones are no number that anybody types: in those no fault is forgiven.
inline constexpr std::size_t forgiven_from = 4;
inline constexpr std::size_t forgiven_up_to = 40;
[[nodiscard]] inline bool forgives(const std::u32string& sought) {
  return sought.size() >= forgiven_from && sought.size() <= forgiven_up_to;
}
/// Shorter ones are found almost everywhere.
inline constexpr std::size_t shortest_search = 2;

}  // namespace shimwright::store
