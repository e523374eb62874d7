#pragma once

#include <string>

#include <rapidcheck.h>
#include <nlohmann/json.hpp>

namespace shimwright::json::test {

inline constexpr std::int64_t largest_exact = (std::int64_t{1} << 53) - 1;

inline rc::Gen<std::string> ascii_text() {
  return rc::gen::container<std::string>(rc::gen::inRange<char>(0, 127));
}

/// Characters of one to four bytes, quotes and control characters among them.
inline rc::Gen<std::string> utf8_text() {
  const auto pieces = rc::gen::container<std::vector<std::string>>(
      rc::gen::element<std::string>("a", "\"", "\\", "/", "\n", "\x01", "\x7f", "µ", "Ω", "€", "𝄞", "0"));
  return rc::gen::map(pieces, [](const std::vector<std::string>& parts) {
    std::string text;
    for (const auto& part : parts) {
      text += part;
    }
    return text;
  });
}

inline rc::Gen<nlohmann::json> scalar() {
  using nlohmann::json;
  return rc::gen::oneOf(rc::gen::just(json(nullptr)),
                        rc::gen::map(rc::gen::arbitrary<bool>(), [](bool each) { return json(each); }),
                        rc::gen::map(rc::gen::inRange<std::int64_t>(-largest_exact, largest_exact + 1),
                                     [](std::int64_t each) { return json(each); }),
                        rc::gen::map(utf8_text(), [](const std::string& each) { return json(each); }));
}

/// Any value that has a canonical form, at most `depth` levels deep.
inline rc::Gen<nlohmann::json> value(int depth) {
  using nlohmann::json;
  if (depth == 0) {
    return scalar();
  }
  const auto array = rc::gen::map(rc::gen::container<std::vector<json>>(rc::gen::resize(4, value(depth - 1))),
                                  [](const std::vector<json>& each) { return json(each); });
  const auto object =
      rc::gen::map(rc::gen::container<std::map<std::string, json>>(ascii_text(), rc::gen::resize(4, value(depth - 1))),
                   [](const std::map<std::string, json>& each) { return json(each); });
  return rc::gen::oneOf(scalar(), array, object);
}

}  // namespace shimwright::json::test
