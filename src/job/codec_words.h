#pragma once

#include <optional>
#include <string_view>

#include "shimwright/job/entry.h"

/// One name for the word of every enumeration that a body may hold, and the way back.
namespace shimwright::job {

template <class Word>
[[nodiscard]] std::string_view word_of(Word word) {
  return name_of(word);
}
template <>
[[nodiscard]] inline std::string_view word_of(quantity::Unit unit) {
  return quantity::symbol_of(unit);
}

template <class Word>
[[nodiscard]] std::optional<Word> word_named(std::string_view name) = delete;
template <>
[[nodiscard]] inline std::optional<quantity::Unit> word_named(std::string_view name) {
  return quantity::unit_with_symbol(name);
}
template <>
[[nodiscard]] inline std::optional<sheet::Side> word_named(std::string_view name) {
  return sheet::side_named(name);
}
template <>
[[nodiscard]] inline std::optional<sheet::Signer> word_named(std::string_view name) {
  return sheet::signer_named(name);
}
template <>
[[nodiscard]] inline std::optional<ReadingVerdict> word_named(std::string_view name) {
  return reading_verdict_named(name);
}
template <>
[[nodiscard]] inline std::optional<Fit> word_named(std::string_view name) {
  return fit_named(name);
}
template <>
[[nodiscard]] inline std::optional<Conclusion> word_named(std::string_view name) {
  return conclusion_named(name);
}
template <>
[[nodiscard]] inline std::optional<ChosenBy> word_named(std::string_view name) {
  return chosen_by_named(name);
}
template <>
[[nodiscard]] inline std::optional<SeriesReason> word_named(std::string_view name) {
  return series_reason_named(name);
}

}  // namespace shimwright::job
