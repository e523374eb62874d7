#pragma once

#include <string_view>

namespace shimwright::store {

/// A part of a statement that stands in the code: made of a literal while compiling, and of nothing else. So no value
/// from outside can be written into a statement through it.
class FixedText {
 public:
  // NOLINTNEXTLINE(google-explicit-constructor): a literal is meant wherever one is asked for.
  consteval FixedText(const char* literal) : text_(literal) {}
  [[nodiscard]] std::string_view text() const { return text_; }

 private:
  std::string_view text_;
};

}  // namespace shimwright::store
