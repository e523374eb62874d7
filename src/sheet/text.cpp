#include "shimwright/sheet/text.h"

namespace shimwright::sheet {

const std::string& Text::in(std::string_view language) const {
  static const std::string nothing;  // of a step without an instruction
  auto found = by_language.find(std::string(language));
  if (found == by_language.end()) {
    found = by_language.find("en");
  }
  return found == by_language.end() ? nothing : found->second;
}

}  // namespace shimwright::sheet
