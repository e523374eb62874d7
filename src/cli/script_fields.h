#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/json/object_reader.h"

namespace shimwright::cli {

/// Takes the fields of one object one after the other and remembers the first fault, so that a command's reader is a
/// plain list of its fields.
class Fields {
 public:
  Fields(const json::Value& value, const std::string& place, std::initializer_list<std::string_view> required,
         std::initializer_list<std::string_view> optional)
      : reader_(json::ObjectReader::open(value, place, required, optional)) {
    if (!reader_) {
      fault_ = reader_.error();
    }
  }

  [[nodiscard]] std::string text(std::string_view key) {
    return taken(key, std::string(), &json::ObjectReader::string);
  }
  [[nodiscard]] bool truth(std::string_view key) { return taken(key, false, &json::ObjectReader::boolean); }

  [[nodiscard]] std::int64_t whole(std::string_view key, std::int64_t least, std::int64_t most, std::int64_t absent) {
    if (fault_ || !reader_->has(key)) {
      return absent;
    }
    auto number = reader_->integer(key, least, most);
    if (!number) {
      fault_ = number.error();
      return absent;
    }
    return *number;
  }

  /// The elements of a list, each with its place; empty where it is left out.
  struct Element {
    const json::Value* value;
    std::string place;
  };
  [[nodiscard]] std::vector<Element> list(std::string_view key) {
    std::vector<Element> elements;
    if (fault_ || !reader_->has(key)) {
      return elements;
    }
    auto array = reader_->array(key);
    if (!array) {
      fault_ = array.error();
      return elements;
    }
    for (std::size_t at = 0; at < (*array)->size(); ++at) {
      elements.push_back({&(**array)[at], json::pointer(reader_->place_of(key), at)});
    }
    return elements;
  }

  [[nodiscard]] bool has(std::string_view key) const { return !fault_ && reader_->has(key); }
  [[nodiscard]] std::string place_of(std::string_view key) const {
    return reader_ ? reader_->place_of(key) : std::string();
  }
  void fail(Error error) {
    if (!fault_) {
      fault_ = std::move(error);
    }
  }
  [[nodiscard]] const std::optional<Error>& fault() const { return fault_; }

 private:
  template <class Value>
  Value taken(std::string_view key, Value absent, Result<Value> (json::ObjectReader::*take)(std::string_view) const) {
    if (fault_ || !reader_->has(key)) {
      return absent;
    }
    auto value = ((*reader_).*take)(key);
    if (!value) {
      fault_ = value.error();
      return absent;
    }
    return *value;
  }

  Result<json::ObjectReader> reader_;
  std::optional<Error> fault_;
};

}  // namespace shimwright::cli
