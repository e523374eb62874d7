#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "shimwright/json/value.h"
#include "shimwright/quantity/error.h"

namespace shimwright::json {

/// Walks over one JSON text and takes its smallest parts. Of our own, because a library's reader turns a number into a
/// double before we are asked, and a number too large for that has to be refused at its field, not as a broken file.
class Scanner {
 public:
  explicit Scanner(std::string_view text);

  [[nodiscard]] bool at_end() const { return at_ == text_.size(); }
  /// The next character, '\0' at the end of the text.
  [[nodiscard]] char next() const { return at_end() ? '\0' : text_[at_]; }
  void skip_white_space();
  /// Steps over `symbol` if it comes next.
  [[nodiscard]] bool take(char symbol);
  /// Steps over `word` if it comes next.
  [[nodiscard]] bool take(std::string_view word);
  /// A string, its opening quote being the next character.
  [[nodiscard]] Result<std::string> string();
  /// A number, its sign or first digit being the next character.
  [[nodiscard]] Result<Number> number();

  /// What is wrong here. `text` has `{0}` for the line and `{1}` for the column, both from 1.
  [[nodiscard]] tl::unexpected<Error> refuse_here(std::string code, std::string_view text) const;
  [[nodiscard]] tl::unexpected<Error> refuse_unexpected() const;

 private:
  void step_over(std::string_view one_of);
  [[nodiscard]] bool take_digits();
  void take_plain(std::string& into);
  [[nodiscard]] Result<void> escape(std::string& into);
  [[nodiscard]] Result<void> unicode_escape(std::string& into);
  [[nodiscard]] std::optional<unsigned> four_hex_digits();

  std::string_view text_;
  std::size_t at_ = 0;
};

}  // namespace shimwright::json
