#include <utility>

#include "scanner.h"
#include "shimwright/json/value.h"

namespace shimwright::json {

namespace {

class Parser {
 public:
  Parser(std::string_view text, std::size_t most_depth) : scanner_(text), most_depth_(most_depth) {}

  [[nodiscard]] Result<Value> whole_text() {
    auto value = next_value();
    if (!value) {
      return value;
    }
    scanner_.skip_white_space();
    if (!scanner_.at_end()) {
      return scanner_.refuse_unexpected();
    }
    return value;
  }

 private:
  [[nodiscard]] Result<Value> next_value() {
    scanner_.skip_white_space();
    const char first = scanner_.next();
    if (first == '{' || first == '[') {
      return nested(first);
    }
    if (first == '"') {
      return scanner_.string().map([](std::string&& text) { return Value(std::move(text)); });
    }
    if (first == '-' || (first >= '0' && first <= '9')) {
      return scanner_.number().map([](Number&& number) { return Value(std::move(number)); });
    }
    if (scanner_.take("null")) {
      return Value();
    }
    if (scanner_.take("true")) {
      return Value(true);
    }
    if (scanner_.take("false")) {
      return Value(false);
    }
    return scanner_.refuse_unexpected();
  }

  [[nodiscard]] Result<Value> nested(char opening) {
    if (depth_ == most_depth_) {
      return scanner_.refuse_here("too_deep", SHIMWRIGHT_TEXT("json",
                                                              "Line {0}, column {1}: lists and objects are nested too "
                                                              "deeply; this is not a file of this program."));
    }
    ++depth_;
    auto value = opening == '{' ? object() : array();
    --depth_;
    return value;
  }

  [[nodiscard]] Result<Value> array() {
    Array elements;
    bool more = begins('[', ']');
    while (more) {
      auto element = next_value();
      if (!element) {
        return element;
      }
      elements.push_back(std::move(*element));
      const auto goes_on = continues(']');
      if (!goes_on) {
        return tl::make_unexpected(goes_on.error());
      }
      more = *goes_on;
    }
    return Value(std::move(elements));
  }

  [[nodiscard]] Result<Value> object() {
    Object members;
    bool more = begins('{', '}');
    while (more) {
      auto key = member_key();
      if (!key) {
        return tl::make_unexpected(std::move(key.error()));
      }
      auto value = next_value();
      if (!value) {
        return value;
      }
      members.emplace_back(std::move(*key), std::move(*value));
      const auto goes_on = continues('}');
      if (!goes_on) {
        return tl::make_unexpected(goes_on.error());
      }
      more = *goes_on;
    }
    return Value(std::move(members));
  }

  [[nodiscard]] Result<std::string> member_key() {
    scanner_.skip_white_space();
    if (scanner_.next() != '"') {
      return scanner_.refuse_unexpected();
    }
    auto key = scanner_.string();
    if (!key) {
      return key;
    }
    scanner_.skip_white_space();
    if (!scanner_.take(':')) {
      return scanner_.refuse_unexpected();
    }
    return key;
  }

  /// Steps over the opening; false where the closing follows at once.
  [[nodiscard]] bool begins(char opening, char closing) {
    const bool opened = scanner_.take(opening);
    scanner_.skip_white_space();
    return opened && !scanner_.take(closing);
  }

  /// After an element: true where a comma follows, false where all is closed.
  [[nodiscard]] Result<bool> continues(char closing) {
    scanner_.skip_white_space();
    if (scanner_.take(',')) {
      return true;
    }
    if (scanner_.take(closing)) {
      return false;
    }
    return scanner_.refuse_unexpected();
  }

  Scanner scanner_;
  std::size_t most_depth_;
  std::size_t depth_ = 0;
};

}  // namespace

Result<Value> parse(std::string_view text, const ParseLimits& limits) {
  if (text.size() > limits.bytes) {
    return refuse("too_large", "",
                  SHIMWRIGHT_TEXT("json",
                                  "The text has {0} bytes, more than the {1} that are read; this is not a file "
                                  "of this program."),
                  {std::to_string(text.size()), std::to_string(limits.bytes)});
  }
  return Parser(text, limits.depth).whole_text();
}

}  // namespace shimwright::json
