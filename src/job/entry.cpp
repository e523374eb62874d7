#include "shimwright/job/entry.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace shimwright::job {

namespace {

/// Names stand in the order of the enumerators. They are on disk for ever: add at the end, change none.
constexpr std::array<std::string_view, 20> conclusion_names = {
    "try_shim",   "fit_shim",    "contradiction", "tray_too_thick", "tray_too_thin", "tilted",         "impossible",
    "outside",    "far",         "edge",          "question",       "zero_again",    "keep",           "measure_again",
    "seat_again", "change_shim", "step_shim",     "decide",         "no_shim",       "for_information"};
constexpr std::array<std::string_view, 6> verdict_names = {"none",      "within",   "too_small",
                                                           "too_large", "on_limit", "not_equal"};
constexpr std::array<std::string_view, 4> chosen_by_names = {"trials", "depth", "float_reading", "person"};
constexpr std::array<std::string_view, 2> series_reason_names = {"measure_again", "seated_again"};

constexpr std::array<std::string_view, 28> kind_names = {
    "opened",      "done",        "checked",        "chosen",      "read",           "peak_read",    "parts_fitted",
    "photo_taken", "written",     "shim_tried",     "depths_read", "float_run",      "series_begun", "confirmed",
    "advised",     "shim_chosen", "teach_in_tried", "signed",      "deviated",       "not_required", "withdrawn",
    "noted",       "parked",      "taken_up",       "handed_over", "assembly_begun", "sealed",       "addendum_added"};
static_assert(std::variant_size_v<EntryBody> == kind_names.size());

template <std::size_t size, class Word>
std::string_view name_in(const std::array<std::string_view, size>& names, Word word) {
  return names.at(static_cast<std::size_t>(word));
}

template <class Word, std::size_t size>
std::optional<Word> word_in(const std::array<std::string_view, size>& names, std::string_view name) {
  const auto* const found = std::find(names.begin(), names.end(), name);
  if (found == names.end()) {
    return std::nullopt;
  }
  return static_cast<Word>(found - names.begin());
}

}  // namespace

const StepRef* step_of(const EntryBody& body) {
  return std::visit(
      [](const auto& payload) -> const StepRef* {
        if constexpr (requires { payload.at; }) {
          return &payload.at;
        } else {
          return nullptr;
        }
      },
      body);
}

std::string_view kind_of(const EntryBody& body) {
  return kind_names.at(body.index());
}

std::string_view name_of(Conclusion conclusion) {
  return name_in(conclusion_names, conclusion);
}

std::string_view name_of(ReadingVerdict verdict) {
  return name_in(verdict_names, verdict);
}

std::string_view name_of(ChosenBy by) {
  return name_in(chosen_by_names, by);
}

std::string_view name_of(SeriesReason reason) {
  return name_in(series_reason_names, reason);
}

std::optional<Conclusion> conclusion_named(std::string_view name) {
  return word_in<Conclusion>(conclusion_names, name);
}

std::optional<ReadingVerdict> reading_verdict_named(std::string_view name) {
  return word_in<ReadingVerdict>(verdict_names, name);
}

std::optional<ChosenBy> chosen_by_named(std::string_view name) {
  return word_in<ChosenBy>(chosen_by_names, name);
}

std::optional<SeriesReason> series_reason_named(std::string_view name) {
  return word_in<SeriesReason>(series_reason_names, name);
}

}  // namespace shimwright::job
