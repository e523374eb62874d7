#pragma once

#include <cmath>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include <nlohmann/json.hpp>

#include "codec_fields.h"
#include "codec_words.h"

namespace shimwright::job {

/// Makes a JSON object of a body's members; what is not there is left out.
class FieldWriter {
 public:
  template <class Member>
  void operator()(std::string_view key, const Member& member) {
    object_.emplace(key, json_of(member));
  }
  template <class Member>
  void operator()(std::string_view key, const std::optional<Member>& member) {
    if (member) {
      object_.emplace(key, json_of(*member));
    }
  }

  template <class Body>
  [[nodiscard]] static nlohmann::json written(const Body& body) {
    FieldWriter writer;
    version_1::fields(writer, body);
    return std::move(writer.object_);
  }

 private:
  template <class Member>
  [[nodiscard]] static nlohmann::json json_of(const Member& member) {
    if constexpr (std::is_enum_v<Member>) {
      return std::string(word_of(member));
    } else if constexpr (std::is_same_v<Member, quantity::Length>) {
      return member.count();
    } else if constexpr (std::is_arithmetic_v<Member> || std::is_same_v<Member, std::string>) {
      return member;
    } else {
      return written(member);
    }
  }
  template <class Number>
  [[nodiscard]] static nlohmann::json json_of(const version_1::Nanometres<Number>& uncertainty) {
    return std::int64_t{std::llround(uncertainty.millimetres * 1e6)};
  }
  template <class Member>
  [[nodiscard]] static nlohmann::json json_of(const std::vector<Member>& members) {
    auto list = nlohmann::json::array();
    for (const Member& member : members) {
      list.push_back(json_of(member));
    }
    return list;
  }

  nlohmann::json object_ = nlohmann::json::object();
};

}  // namespace shimwright::job
