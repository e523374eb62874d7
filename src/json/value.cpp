#include "shimwright/json/value.h"

#include <algorithm>

namespace shimwright::json {

const Value* Value::find(std::string_view key) const {
  const Object* members = object();
  if (members == nullptr) {
    return nullptr;
  }
  const auto found =
      std::find_if(members->begin(), members->end(), [key](const auto& member) { return member.first == key; });
  return found == members->end() ? nullptr : &found->second;
}

bool operator==(const Value& left, const Value& right) {
  return left.content_ == right.content_;
}

std::string pointer(std::string_view base, std::string_view key) {
  std::string place(base);
  place += '/';
  for (const char each : key) {
    if (each == '~') {
      place += "~0";
    } else if (each == '/') {
      place += "~1";
    } else {
      place += each;
    }
  }
  return place;
}

std::string pointer(std::string_view base, std::size_t index) {
  std::string place(base);
  place += '/';
  place += std::to_string(index);
  return place;
}

}  // namespace shimwright::json
