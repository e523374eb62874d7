#pragma once

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "codec_fields.h"
#include "codec_words.h"
#include "shimwright/json/value.h"

namespace shimwright::job {

/// Fills a body from a JSON object, member by member, and keeps the first thing that is wrong. Strict: what is unknown,
/// twice, missing or of another type is refused, with its place.
class FieldReader {
 public:
  template <class Body>
  [[nodiscard]] static std::optional<Error> read(const json::Value& value, const std::string& place, Body& body) {
    FieldReader reader(value, place);
    version_1::fields(reader, body);
    reader.refuse_the_rest();
    return std::move(reader.error_);
  }

  template <class Member>
  void operator()(std::string_view key, Member& member) {
    if (const json::Value* value = take(key, true); value != nullptr) {
      keep(fill(*value, json::pointer(place_, key), member));
    }
  }
  template <class Member>
  void operator()(std::string_view key, std::optional<Member>& member) {
    member.reset();
    if (const json::Value* value = take(key, false); value != nullptr) {
      keep(fill(*value, json::pointer(place_, key), member.emplace()));
    }
  }

 private:
  FieldReader(const json::Value& value, std::string place);

  [[nodiscard]] const json::Value* take(std::string_view key, bool required);
  void refuse_the_rest();
  void keep(std::optional<Error> error) {
    if (!error_) {
      error_ = std::move(error);
    }
  }

  [[nodiscard]] static Error wrong(const std::string& place);
  [[nodiscard]] static std::optional<Error> fill_integer(const json::Value& value, const std::string& place,
                                                         std::int64_t least, std::int64_t most, std::int64_t& member);
  [[nodiscard]] static std::optional<Error> fill(const json::Value& value, const std::string& place, bool& member);
  [[nodiscard]] static std::optional<Error> fill(const json::Value& value, const std::string& place, int& member);
  [[nodiscard]] static std::optional<Error> fill(const json::Value& value, const std::string& place,
                                                 std::int64_t& member);
  [[nodiscard]] static std::optional<Error> fill(const json::Value& value, const std::string& place,
                                                 quantity::Length& member);
  [[nodiscard]] static std::optional<Error> fill(const json::Value& value, const std::string& place,
                                                 std::string& member);
  [[nodiscard]] static std::optional<Error> fill(const json::Value& value, const std::string& place,
                                                 version_1::Nanometres<double>& member);
  template <class Member>
  [[nodiscard]] static std::optional<Error> fill(const json::Value& value, const std::string& place,
                                                 std::vector<Member>& members) {
    const json::Array* list = value.array();
    if (list == nullptr) {
      return wrong(place);
    }
    members.clear();
    for (const json::Value& each : *list) {
      const std::string member_place = json::pointer(place, members.size());
      if (auto error = fill(each, member_place, members.emplace_back()); error) {
        return error;
      }
    }
    return std::nullopt;
  }
  template <class Member>
  [[nodiscard]] static std::optional<Error> fill(const json::Value& value, const std::string& place, Member& member) {
    if constexpr (std::is_enum_v<Member>) {
      const std::string* name = value.string();
      const auto word = name == nullptr ? std::nullopt : word_named<Member>(*name);
      if (!word) {
        return wrong(place);
      }
      member = *word;
      return std::nullopt;
    } else {
      return read(value, place, member);
    }
  }

  const json::Object* object_ = nullptr;
  std::string place_;
  std::vector<std::string_view> taken_;
  std::optional<Error> error_;
};

}  // namespace shimwright::job
