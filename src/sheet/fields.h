#pragma once

#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "shimwright/json/object_reader.h"
#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"
#include "shimwright/sheet/text.h"
#include "word_lists.h"

namespace shimwright::sheet {

/// Reads the fields of one object one after another. The first refusal stays; after it every field reads as empty and
/// finish() gives that refusal, so that a reader is a plain list of its fields.
/// Codes beyond those of json::ObjectReader: `wrong_id`, `unknown_word`, `too_few`, `too_many`, those of read_text.
class Fields {
 public:
  using Names = std::initializer_list<std::string_view>;

  [[nodiscard]] static Fields open(const json::Value& value, const std::string& place, Names required,
                                   Names optional = {});

  [[nodiscard]] bool sound() const { return !fault_; }
  [[nodiscard]] std::string place_of(std::string_view key) const;
  /// Nothing where the field is not there, or after a refusal.
  [[nodiscard]] const json::Value* member(std::string_view key) const;
  [[nodiscard]] bool has(std::string_view key) const { return member(key) != nullptr; }
  /// There, and something else than null.
  [[nodiscard]] bool has_value(std::string_view key) const;

  /// One line for a person.
  [[nodiscard]] std::string line(std::string_view key);
  /// A name that programs and other files use: is_id.
  [[nodiscard]] std::string id(std::string_view key);
  [[nodiscard]] std::string uuid(std::string_view key);
  [[nodiscard]] std::string string(std::string_view key);
  [[nodiscard]] Text text(std::string_view key);
  [[nodiscard]] bool flag(std::string_view key);
  /// Left out means false.
  [[nodiscard]] bool optional_flag(std::string_view key) { return has(key) && flag(key); }
  [[nodiscard]] std::int64_t integer(std::string_view key, std::int64_t least, std::int64_t most);

  template <class Word, std::size_t Size>
  [[nodiscard]] std::optional<Word> word(std::string_view key, const WordList<Word, Size>& words) {
    const std::string name = string(key);
    const std::optional<Word> found = word_in(words, name);
    if (!found) {
      refuse_word(key, name, all_names(words));
    }
    return found;
  }

  /// Left out means nothing.
  template <class Word, std::size_t Size>
  [[nodiscard]] std::optional<Word> optional_word(std::string_view key, const WordList<Word, Size>& words) {
    return has(key) ? word(key, words) : std::nullopt;
  }

  /// The elements, each by `read_element(value, place)`.
  template <class Reader>
  [[nodiscard]] auto list(std::string_view key, std::size_t least, std::size_t most, Reader read_element) {
    std::vector<typename decltype(read_element(std::declval<const json::Value&>(), std::string()))::value_type> read;
    for (const json::Value* element : elements(key, least, most)) {
      auto each = take(read_element(*element, json::pointer(place_of(key), read.size())));
      if (!sound()) {
        break;
      }
      read.push_back(std::move(each));
    }
    return read;
  }

  /// Keeps the first refusal, of a field of this object or of a place inside it.
  void refuse(std::string code, std::string_view key, std::string_view sentence,
              std::vector<std::string> arguments = {});
  void refuse_at(std::string code, std::string place, std::string_view sentence,
                 std::vector<std::string> arguments = {});

  /// The value of another reading, or an empty one where it was refused.
  template <class Value>
  [[nodiscard]] Value take(Result<Value> result) {
    if (result) {
      return std::move(*result);
    }
    keep(std::move(result.error()));
    return Value{};
  }

  template <class Value>
  [[nodiscard]] Result<Value> finish(Value value) {
    if (fault_) {
      return tl::make_unexpected(*fault_);
    }
    return value;
  }

 private:
  explicit Fields(std::string place) : place_(std::move(place)) {}
  void keep(Error fault);
  void refuse_word(std::string_view key, const std::string& name, std::string allowed);
  [[nodiscard]] std::vector<const json::Value*> elements(std::string_view key, std::size_t least, std::size_t most);

  std::string place_;
  std::optional<json::ObjectReader> reader_;
  std::optional<Error> fault_;
};

}  // namespace shimwright::sheet
