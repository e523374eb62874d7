#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"

namespace shimwright::json {

/// Reads one object of a file at the border: knows its place, refuses unknown and repeated members first, then missing
/// ones, then gives the values one by one, each with its own place in case of refusal.
/// Codes: `wrong_type`, `unknown_field`, `repeated_field`, `missing_field`.
class ObjectReader {
 public:
  /// `required` must all be there; `optional` may be; anything else is refused.
  [[nodiscard]] static Result<ObjectReader> open(const Value& value, std::string place,
                                                 std::initializer_list<std::string_view> required,
                                                 std::initializer_list<std::string_view> optional = {});

  [[nodiscard]] const std::string& place() const { return place_; }
  [[nodiscard]] std::string place_of(std::string_view key) const;
  /// The member; a required one is there, an optional one may be nullptr.
  [[nodiscard]] const Value* member(std::string_view key) const;
  [[nodiscard]] bool has(std::string_view key) const { return member(key) != nullptr; }

  [[nodiscard]] Result<std::string> string(std::string_view key) const;
  [[nodiscard]] Result<bool> boolean(std::string_view key) const;
  /// A whole number within [least, most]; anything else is `wrong_type` or `out_of_range`.
  [[nodiscard]] Result<std::int64_t> integer(std::string_view key, std::int64_t least, std::int64_t most) const;
  [[nodiscard]] Result<const Array*> array(std::string_view key) const;

 private:
  ObjectReader(const Object& object, std::string place) : object_(&object), place_(std::move(place)) {}
  const Object* object_;
  std::string place_;
};

}  // namespace shimwright::json
