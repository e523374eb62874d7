#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "shimwright/quantity/error.h"

namespace shimwright::json {

class Value;

/// A number as its text in the file, so that nothing is lost or guessed before its reader asks for it.
struct Number {
  std::string text;
  friend bool operator==(const Number&, const Number&) = default;
};

using Array = std::vector<Value>;
/// In the order of the file, repeated keys kept: the reader of an object decides what is refused.
using Object = std::vector<std::pair<std::string, Value>>;

/// One JSON value as it stands in a file from outside.
class Value {
 public:
  using Content = std::variant<std::nullptr_t, bool, Number, std::string, Array, Object>;

  Value() = default;
  // NOLINTNEXTLINE(google-explicit-constructor): a value is its content
  Value(Content content) : content_(std::move(content)) {}

  [[nodiscard]] bool is_null() const { return std::holds_alternative<std::nullptr_t>(content_); }
  [[nodiscard]] const bool* boolean() const { return std::get_if<bool>(&content_); }
  [[nodiscard]] const Number* number() const { return std::get_if<Number>(&content_); }
  [[nodiscard]] const std::string* string() const { return std::get_if<std::string>(&content_); }
  [[nodiscard]] const Array* array() const { return std::get_if<Array>(&content_); }
  [[nodiscard]] const Object* object() const { return std::get_if<Object>(&content_); }

  /// The first member of that name; nothing where this is no object or has none.
  [[nodiscard]] const Value* find(std::string_view key) const;

  friend bool operator==(const Value&, const Value&);

 private:
  Content content_ = nullptr;
};

/// How deep and how large a text from outside may be.
struct ParseLimits {
  std::size_t depth = 64;
  std::size_t bytes = std::size_t{16} * 1024 * 1024;
};

/// Reads one JSON text (RFC 8259, UTF-8, no comments). Codes of refusal: `no_json`, `too_deep`, `too_large`; place
/// empty.
[[nodiscard]] Result<Value> parse(std::string_view text, const ParseLimits& limits = {});

/// `/a/b` and a key gives `/a/b/key`, escaped as RFC 6901 says.
[[nodiscard]] std::string pointer(std::string_view base, std::string_view key);
[[nodiscard]] std::string pointer(std::string_view base, std::size_t index);

}  // namespace shimwright::json
