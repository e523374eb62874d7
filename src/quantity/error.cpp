#include "shimwright/quantity/error.h"

#include <algorithm>
#include <utility>

namespace shimwright {

std::string Message::in_english() const {
  std::string filled;
  filled.reserve(text.size());
  for (std::size_t at = 0; at < text.size(); ++at) {
    const bool placeholder =
        text[at] == '{' && at + 2 < text.size() && text[at + 2] == '}' && text[at + 1] >= '0' && text[at + 1] <= '9';
    const auto index = placeholder ? static_cast<std::size_t>(text[at + 1] - '0') : arguments.size();
    if (index < arguments.size()) {
      filled += arguments[index];
      at += 2;
    } else {
      filled += text[at];
    }
  }
  return filled;
}

std::string Error::in_english() const {
  std::string line = place.empty() ? message.in_english() : place + ": " + message.in_english();
  std::replace_if(
      line.begin(), line.end(), [](char each) { return each == '\n' || each == '\r'; }, ' ');
  return line;
}

tl::unexpected<Error> refuse(std::string code, std::string place, std::string_view text,
                             std::vector<std::string> arguments) {
  return tl::make_unexpected(
      Error{std::move(code), std::move(place), Message{std::string(text), std::move(arguments)}});
}

}  // namespace shimwright
