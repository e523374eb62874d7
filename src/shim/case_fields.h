#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "shimwright/json/object_reader.h"
#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"
#include "shimwright/quantity/quantity.h"

namespace shimwright::shim {

/// Keeps the first fault of a case; whoever reads on after it gets defaults. As everything is read in the order of the
/// contract, the first fault noted is the one to tell.
class FirstFault {
 public:
  [[nodiscard]] bool any() const { return fault_.has_value(); }
  void note(Error fault);
  void note(std::string_view code, const std::string& place, std::string_view sentence);
  [[nodiscard]] const std::optional<Error>& error() const { return fault_; }

  /// The value, or its default with the fault noted.
  template <class Value>
  [[nodiscard]] Value take(Result<Value> result) {
    if (!result) {
      note(std::move(result.error()));
      return Value{};
    }
    return std::move(*result);
  }

 private:
  std::optional<Error> fault_;
};

/// What a number may be.
struct Bound {
  double least = 0.0;
  bool least_allowed = true;
};
inline constexpr Bound any_number{-10000.0, true};
inline constexpr Bound more_than_zero{0.0, false};
inline constexpr Bound zero_or_more{0.0, true};

/// A plain number, below 10 000 in size.
[[nodiscard]] Result<double> read_plain_number(const json::Value& value, const std::string& place, const Bound& bound);
/// A length in mm: a number that is a whole micrometre, or typed text.
[[nodiscard]] Result<quantity::Length> read_length(const json::Value& value, const std::string& place,
                                                   const Bound& bound);

/// The members of one object, each read with its place; faults go to the common note.
class Fields {
 public:
  using Keys = std::initializer_list<std::string_view>;

  Fields(const json::Value& value, std::string place, FirstFault& fault, Keys required, Keys optional = {});

  [[nodiscard]] std::string place_of(std::string_view key) const { return json::pointer(place_, key); }
  /// The member, or a null where there is none.
  [[nodiscard]] const json::Value& value(std::string_view key) const;
  [[nodiscard]] bool has(std::string_view key) const { return reader_ && reader_->has(key); }

  [[nodiscard]] std::string text(std::string_view key);
  [[nodiscard]] bool flag(std::string_view key);
  [[nodiscard]] double number(std::string_view key, const Bound& bound = any_number);
  [[nodiscard]] quantity::Length length(std::string_view key, const Bound& bound = any_number);
  [[nodiscard]] std::optional<quantity::Length> length_or_null(std::string_view key);
  /// An empty list where there is a fault.
  [[nodiscard]] const json::Array& list(std::string_view key);
  /// A list that has to hold something.
  [[nodiscard]] const json::Array& filled_list(std::string_view key);
  [[nodiscard]] FirstFault& fault() { return fault_; }

 private:
  std::string place_;
  FirstFault& fault_;
  std::optional<json::ObjectReader> reader_;
};

}  // namespace shimwright::shim
