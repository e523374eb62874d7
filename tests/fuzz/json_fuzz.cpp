#include <nlohmann/json.hpp>

#include "fuzz_target.h"
#include "shimwright/json/canonical.h"
#include "shimwright/json/value.h"

namespace json = shimwright::json;
using shimwright::fuzz::require;

namespace {

/// Ours and a general library judge alike, but for what is deliberate: depth is limited and no number is too large.
void compare(std::string_view text, const shimwright::Result<json::Value>& ours) {
  if (text.find('\0') != std::string_view::npos) {
    return;  // taken by the library for the end of the text
  }
  const bool theirs = nlohmann::json::accept(text);
  if (!ours) {
    require(!theirs || ours.error().code == "too_deep", "what is refused is no JSON or too deep");
    return;
  }
  const bool may_be_too_large = text.find_first_of("0123456789") != std::string_view::npos;
  require(theirs || may_be_too_large, "what is taken is JSON");
}

void try_canonical(std::string_view text) {
  const auto value = nlohmann::json::parse(text, nullptr, false);
  const auto canonical = json::canonical(value);
  if (!canonical) {
    require(canonical.error().code == "not_canonical", "a refusal has its code");
    return;
  }
  require(json::parse(*canonical).has_value(), "canonical text is read");
  const auto again = nlohmann::json::parse(*canonical, nullptr, false);
  require(again == value, "canonical text says the same");
  require(json::canonical(again) == canonical, "canonical text of canonical text is the same text");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto text = shimwright::fuzz::text_of(data, size);
  compare(text, json::parse(text));
  try_canonical(text);
  return 0;
}
