#include "scanner.h"

#include <algorithm>
#include <utility>

#include "shimwright/json/utf8.h"

namespace shimwright::json {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

constexpr std::string_view bad_escape =
    SHIMWRIGHT_TEXT("json", "Line {0}, column {1}: this backslash sequence is not allowed; correct it.");

bool is_digit(char each) {
  return each >= '0' && each <= '9';
}

/// Stands for itself in a text: neither its end, nor a backslash, nor a control character, nor the start of a longer
/// one.
bool is_plain(char each) {
  return each >= 0x20 && each != '"' && each != '\\' && static_cast<unsigned char>(each) < 0x80;
}

bool is_high_surrogate(unsigned code) {
  return code >= 0xD800 && code <= 0xDBFF;
}
bool is_low_surrogate(unsigned code) {
  return code >= 0xDC00 && code <= 0xDFFF;
}

std::optional<unsigned> hex_value(char each) {
  if (is_digit(each)) {
    return static_cast<unsigned>(each - '0');
  }
  if (each >= 'a' && each <= 'f') {
    return static_cast<unsigned>(each - 'a') + 10U;
  }
  if (each >= 'A' && each <= 'F') {
    return static_cast<unsigned>(each - 'A') + 10U;
  }
  return std::nullopt;
}

std::optional<char> simple_escape(char letter) {
  constexpr std::string_view letters = "\"\\/bfnrt";
  constexpr std::string_view meanings = "\"\\/\b\f\n\r\t";
  const std::size_t found = letters.find(letter);
  return found == std::string_view::npos ? std::nullopt : std::optional(meanings[found]);
}

}  // namespace

Scanner::Scanner(std::string_view text) : text_(text) {
  if (text_.substr(0, byte_order_mark.size()) == byte_order_mark) {
    text_.remove_prefix(byte_order_mark.size());
  }
}

void Scanner::skip_white_space() {
  while (!at_end() && (next() == ' ' || next() == '\t' || next() == '\n' || next() == '\r')) {
    ++at_;
  }
}

bool Scanner::take(char symbol) {
  const bool found = !at_end() && text_[at_] == symbol;
  at_ += found ? 1 : 0;
  return found;
}

bool Scanner::take(std::string_view word) {
  const bool found = text_.substr(at_, word.size()) == word;
  at_ += found ? word.size() : 0;
  return found;
}

Result<std::string> Scanner::string() {
  std::string content;
  ++at_;
  take_plain(content);
  for (; !take('"'); take_plain(content)) {
    if (take('\\')) {
      if (const auto escaped = escape(content); !escaped) {
        return tl::make_unexpected(escaped.error());
      }
      continue;
    }
    if (at_end() || static_cast<unsigned char>(next()) < 0x20) {
      return refuse_here("no_json", SHIMWRIGHT_TEXT("json",
                                                    "Line {0}, column {1}: a text is not closed; put the "
                                                    "missing quotation mark at its end."));
    }
    const std::size_t length = utf8_length(text_.substr(at_));
    if (length == 0) {
      return refuse_here("no_json", SHIMWRIGHT_TEXT("json",
                                                    "Line {0}, column {1}: this character is not UTF-8; save "
                                                    "the file as UTF-8."));
    }
    content += text_.substr(at_, length);
    at_ += length;
  }
  return content;
}

void Scanner::take_plain(std::string& into) {
  const std::string_view rest = text_.substr(at_);
  const auto end = std::find_if_not(rest.begin(), rest.end(), is_plain);
  into.append(rest.begin(), end);
  at_ += static_cast<std::size_t>(end - rest.begin());
}

Result<void> Scanner::escape(std::string& into) {
  if (take('u')) {
    return unicode_escape(into);
  }
  const auto character = simple_escape(next());
  if (!character) {
    return refuse_here("no_json", bad_escape);
  }
  ++at_;
  into += *character;
  return {};
}

Result<void> Scanner::unicode_escape(std::string& into) {
  const auto first = four_hex_digits();
  if (!first || is_low_surrogate(*first)) {
    return refuse_here("no_json", bad_escape);
  }
  if (!is_high_surrogate(*first)) {
    append_utf8(into, *first);
    return {};
  }
  const auto second = take("\\u") ? four_hex_digits() : std::nullopt;
  if (!second || !is_low_surrogate(*second)) {
    return refuse_here("no_json", bad_escape);
  }
  append_utf8(into, 0x10000U + ((*first - 0xD800U) << 10U) + (*second - 0xDC00U));
  return {};
}

std::optional<unsigned> Scanner::four_hex_digits() {
  unsigned code = 0;
  for (int digit = 0; digit < 4; ++digit) {
    const auto value = hex_value(next());
    if (!value) {
      return std::nullopt;
    }
    code = code * 16U + *value;
    ++at_;
  }
  return code;
}

void Scanner::step_over(std::string_view one_of) {
  if (!at_end() && one_of.find(next()) != std::string_view::npos) {
    ++at_;
  }
}

bool Scanner::take_digits() {
  const std::size_t start = at_;
  while (is_digit(next())) {
    ++at_;
  }
  return at_ > start;
}

Result<Number> Scanner::number() {
  constexpr std::string_view sentence = SHIMWRIGHT_TEXT(
      "json", "Line {0}, column {1}: a number is written wrongly; write it like 12 or -0.5, with a point.");
  const std::size_t start = at_;
  step_over("-");
  const bool begins_with_zero = next() == '0';
  if (begins_with_zero) {
    ++at_;
  }
  if (begins_with_zero ? is_digit(next()) : !take_digits()) {
    return refuse_here("no_json", sentence);
  }
  if (take('.') && !take_digits()) {
    return refuse_here("no_json", sentence);
  }
  if (take('e') || take('E')) {
    step_over("+-");
    if (!take_digits()) {
      return refuse_here("no_json", sentence);
    }
  }
  return Number{std::string(text_.substr(start, at_ - start))};
}

tl::unexpected<Error> Scanner::refuse_here(std::string code, std::string_view text) const {
  std::size_t line = 1;
  std::size_t column = 1;
  for (const char each : text_.substr(0, at_)) {
    if (each == '\n') {
      ++line;
      column = 1;
    } else if ((static_cast<unsigned char>(each) & 0xC0U) != 0x80U) {
      ++column;
    }
  }
  return refuse(std::move(code), "", text, {std::to_string(line), std::to_string(column)});
}

tl::unexpected<Error> Scanner::refuse_unexpected() const {
  if (at_end()) {
    return refuse_here("no_json", SHIMWRIGHT_TEXT("json",
                                                  "Line {0}, column {1}: the text ends too early; take a "
                                                  "complete copy of it."));
  }
  return refuse_here("no_json", SHIMWRIGHT_TEXT("json",
                                                "Line {0}, column {1}: this does not belong here; correct the "
                                                "text so that it is JSON."));
}

}  // namespace shimwright::json
