#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "shimwright/sheet/words.h"

namespace shimwright::sheet {

template <class Word, std::size_t Size>
using WordList = std::array<std::pair<Word, std::string_view>, Size>;

inline constexpr WordList<Side, 2> side_words{{{Side::lower, "lower"}, {Side::upper, "upper"}}};
inline constexpr WordList<Method, 2> method_words{{{Method::gauge_fit, "gauge_fit"}, {Method::depth, "depth"}}};
inline constexpr WordList<InstrumentKind, 8> instrument_kind_words{{{InstrumentKind::dial_gauge, "dial_gauge"},
                                                                    {InstrumentKind::depth_gauge, "depth_gauge"},
                                                                    {InstrumentKind::micrometer, "micrometer"},
                                                                    {InstrumentKind::torque_wrench, "torque_wrench"},
                                                                    {InstrumentKind::thermometer, "thermometer"},
                                                                    {InstrumentKind::multimeter, "multimeter"},
                                                                    {InstrumentKind::pressure_gauge, "pressure_gauge"},
                                                                    {InstrumentKind::scale, "scale"}}};
inline constexpr WordList<Again, 4> again_words{
    {{Again::never, "never"}, {Again::strip, "strip"}, {Again::assembly, "assembly"}, {Again::side, "side"}}};
inline constexpr WordList<Role, 6> role_words{{{Role::old_shim, "old_shim"},
                                               {Role::new_shim, "new_shim"},
                                               {Role::stamp, "stamp"},
                                               {Role::old_pack_serial, "old_pack_serial"},
                                               {Role::new_pack_serial, "new_pack_serial"},
                                               {Role::road_test, "road_test"}}};
inline constexpr WordList<Signer, 2> signer_words{{{Signer::technician, "technician"}, {Signer::checker, "checker"}}};
inline constexpr WordList<Drawing, 15> drawing_words{{{Drawing::none, "none"},
                                                      {Drawing::large_bearing, "large_bearing"},
                                                      {Drawing::small_bearing, "small_bearing"},
                                                      {Drawing::large_shim, "large_shim"},
                                                      {Drawing::small_shim, "small_shim"},
                                                      {Drawing::large_lever, "large_lever"},
                                                      {Drawing::small_lever, "small_lever"},
                                                      {Drawing::pack, "pack"},
                                                      {Drawing::pack_ring, "pack_ring"},
                                                      {Drawing::hub, "hub"},
                                                      {Drawing::hub_ring, "hub_ring"},
                                                      {Drawing::lower_disc, "lower_disc"},
                                                      {Drawing::upper_disc, "upper_disc"},
                                                      {Drawing::shafts, "shafts"},
                                                      {Drawing::housing, "housing"}}};

template <class Word, std::size_t Size>
[[nodiscard]] std::string_view name_in(const WordList<Word, Size>& words, Word word) {
  const auto found = std::find_if(words.begin(), words.end(), [word](const auto& each) { return each.first == word; });
  return found == words.end() ? std::string_view() : found->second;
}

template <class Word, std::size_t Size>
[[nodiscard]] std::optional<Word> word_in(const WordList<Word, Size>& words, std::string_view name) {
  const auto found = std::find_if(words.begin(), words.end(), [name](const auto& each) { return each.second == name; });
  return found == words.end() ? std::nullopt : std::optional(found->first);
}

/// `lower, upper`: for a sentence that says what may stand there.
template <class Word, std::size_t Size>
[[nodiscard]] std::string all_names(const WordList<Word, Size>& words) {
  std::string text;
  for (const auto& each : words) {
    text += text.empty() ? "" : ", ";
    text += each.second;
  }
  return text;
}

}  // namespace shimwright::sheet
