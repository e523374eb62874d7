#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

/// Marks a sentence a person may see, so that the translation tools find it where no toolkit is at hand.
/// `context` names the layer; the macro is the text itself.
#define SHIMWRIGHT_TEXT(context, text) text

namespace shimwright {

/// One sentence for a person: an English pattern with `{0}`, `{1}` … and what fills them. The pattern is the key under
/// which a translation is looked up, so it stays apart from the arguments.
struct Message {
  std::string text;
  std::vector<std::string> arguments;

  /// The sentence in English, arguments filled in. An index with no argument is left as it stands.
  [[nodiscard]] std::string in_english() const;

  friend bool operator==(const Message&, const Message&) = default;
};

/// Why something was refused.
struct Error {
  std::string code;   ///< stable, for programs: `two_marks`, `hold_point`
  std::string place;  ///< a JSON pointer, `line 7`, a step; empty where the whole thing is meant
  Message message;    ///< one sentence that says what is wrong and what to do

  /// `place: sentence`, or the sentence alone where there is no place. One line.
  [[nodiscard]] std::string in_english() const;

  friend bool operator==(const Error&, const Error&) = default;
};

template <class Value>
using Result = tl::expected<Value, Error>;

[[nodiscard]] tl::unexpected<Error> refuse(std::string code, std::string place, std::string_view text,
                                           std::vector<std::string> arguments = {});

}  // namespace shimwright
