#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// What a column of the store can hold.
namespace shimwright::store {

/// Stored as they are, without being text.
struct Bytes {
  std::string content;
  friend bool operator==(const Bytes&, const Bytes&) = default;
};

using Nothing = std::monostate;
using Value = std::variant<Nothing, std::int64_t, std::string, Bytes>;
using Row = std::vector<Value>;

[[nodiscard]] inline Value text_value(std::string_view text) {
  return std::string(text);
}
[[nodiscard]] inline Value number_value(std::int64_t number) {
  return number;
}
[[nodiscard]] inline Value flag_value(bool flag) {
  return std::int64_t{flag ? 1 : 0};
}
template <class Content>
[[nodiscard]] Value optional_value(const std::optional<Content>& content) {
  return content ? Value(*content) : Value();
}

/// The columns of a row that are known to hold these; zero or empty for what does not.
[[nodiscard]] inline std::int64_t number_in(const Row& row, std::size_t column) {
  const auto* number = std::get_if<std::int64_t>(&row.at(column));
  return number == nullptr ? 0 : *number;
}
[[nodiscard]] inline std::string text_in(const Row& row, std::size_t column) {
  const auto* text = std::get_if<std::string>(&row.at(column));
  return text == nullptr ? std::string() : *text;
}
[[nodiscard]] inline std::string bytes_in(const Row& row, std::size_t column) {
  const auto* bytes = std::get_if<Bytes>(&row.at(column));
  return bytes == nullptr ? std::string() : bytes->content;
}
[[nodiscard]] inline std::optional<std::int64_t> optional_number_in(const Row& row, std::size_t column) {
  const auto* number = std::get_if<std::int64_t>(&row.at(column));
  return number == nullptr ? std::nullopt : std::optional(*number);
}
[[nodiscard]] inline std::optional<std::string> optional_text_in(const Row& row, std::size_t column) {
  const auto* text = std::get_if<std::string>(&row.at(column));
  return text == nullptr ? std::nullopt : std::optional(*text);
}

}  // namespace shimwright::store
