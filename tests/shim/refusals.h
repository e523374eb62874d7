#pragma once

#include <ostream>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

#include "shim_cases.h"

namespace shimwright::shim::tests {

/// One change to a case that is in order, and where the refusal has to point.
struct Fault {
  std::string at;     ///< JSON pointer of what is set; with an empty value text: taken out
  std::string value;  ///< JSON text
  std::string place;
  std::string code;
};

inline std::string with_fault(const Fault& fault) {
  Json changed = full_json();
  const Json::json_pointer at(fault.at);
  if (fault.value.empty()) {
    Json& holder = changed[at.parent_pointer()];
    if (holder.is_array()) {
      holder.erase(std::stoul(at.back()));
    } else {
      holder.erase(at.back());
    }
  } else {
    changed[at] = Json::parse(fault.value);
  }
  return changed.dump();
}

inline void check_refused(const std::string& text, const std::string& place, const std::string& code) {
  const auto read = read_case(text);
  REQUIRE_FALSE(read);
  CHECK(read.error().place == place);
  CHECK(read.error().code == code);
  CHECK_FALSE(read.error().message.text.empty());
}

inline void check_refused(const std::vector<Fault>& faults) {
  for (const auto& fault : faults) {
    INFO(fault.at << " set to " << fault.value);
    check_refused(with_fault(fault), fault.place, fault.code);
  }
}

/// The text once changed: for what a parsed object cannot hold, such as a key that stands twice.
inline std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const auto found = text.find(from);
  REQUIRE(found != std::string::npos);
  return text.replace(found, from.size(), to);
}

}  // namespace shimwright::shim::tests
