#include "draft_shape.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace shimwright::sheet {

namespace {

template <std::size_t Size>
bool is_one_of(std::string_view key, const std::array<std::string_view, Size>& keys) {
  return std::find(keys.begin(), keys.end(), key) != keys.end();
}

constexpr std::array<std::string_view, 4> text_keys{"title", "text", "hazard", "precaution"};
constexpr std::array<std::string_view, 2> row_keys{"limits", "work_values"};
constexpr std::array<std::string_view, 7> group_keys{"lower", "upper", "tray",   "gauge_fit",
                                                     "depth", "float", "channel"};
constexpr std::array<std::string_view, 2> optional_group_keys{"prior", "sensitivity"};
constexpr std::array<std::string_view, 8> keys_of_groups{"shims",    "constants", "bins",    "stages",
                                                         "cautions", "channels",  "choices", "steps"};
constexpr std::array<std::string_view, 2> list_keys{"parts", "spot_angles_deg"};

tl::unexpected<Error> another_type(const std::string& place) {
  return refuse("wrong_type", place,
                SHIMWRIGHT_TEXT("sheet",
                                "At {0} the file has something else than a sheet has there, so no form can be drawn of "
                                "it; choose another file."),
                {place});
}

/// What a member has to be by its name; `in` is the name of what holds it.
bool is_as_in_a_sheet(std::string_view in, std::string_view key, const json::Value& value) {
  const bool group = value.object() != nullptr;
  if (in == "equals") {
    return true;  // its channel is named, not described
  }
  if (is_one_of(in, row_keys) || is_one_of(key, text_keys) || is_one_of(key, row_keys) || is_one_of(key, group_keys)) {
    return group;
  }
  if (is_one_of(key, optional_group_keys)) {
    return group || value.is_null();
  }
  if (is_one_of(key, keys_of_groups) || is_one_of(key, list_keys)) {
    return value.array() != nullptr || (key == "bins" && value.is_null());
  }
  return true;
}

Result<void> check_within(const json::Value& value, std::string_view name, const std::string& place);

Result<void> check_members(const json::Object& members, std::string_view name, const std::string& place) {
  for (const auto& [key, value] : members) {
    const std::string there = json::pointer(place, key);
    if (key.rfind('#', 0) == 0) {
      return refuse("unknown_field", there,
                    SHIMWRIGHT_TEXT("sheet", "'{0}' is no field of a sheet; take it out of the file."), {key});
    }
    if (!is_as_in_a_sheet(name, key, value)) {
      return another_type(there);
    }
    // The names of rows say nothing of what they hold.
    if (auto checked = check_within(value, is_one_of(name, row_keys) ? std::string_view() : key, there); !checked) {
      return checked;
    }
  }
  return {};
}

Result<void> check_within(const json::Value& value, std::string_view name, const std::string& place) {
  if (is_one_of(name, text_keys)) {
    return {};
  }
  if (const json::Object* members = value.object()) {
    return check_members(*members, name, place);
  }
  const json::Array* elements = value.array();
  for (std::size_t at = 0; elements != nullptr && at < elements->size(); ++at) {
    const std::string there = json::pointer(place, at);
    const bool has_to_be_group = is_one_of(name, keys_of_groups) || place == "/parts";
    if (has_to_be_group && (*elements)[at].object() == nullptr) {
      return another_type(there);
    }
    if (auto checked = check_within((*elements)[at], "", there); !checked) {
      return checked;
    }
  }
  return {};
}

}  // namespace

Result<void> check_shape(const json::Value& file) {
  const json::Value* format = file.find("format");
  if (format == nullptr || format->string() == nullptr) {
    return refuse("wrong_format", "/format",
                  SHIMWRIGHT_TEXT("sheet",
                                  "This file does not say that it is a sheet; choose one that was saved as "
                                  "a sheet."));
  }
  return check_within(file, "", "");
}

}  // namespace shimwright::sheet
