#include "typed_text.h"

#include <algorithm>
#include <array>

namespace shimwright::quantity {

namespace {

struct Folding {
  std::string_view from;
  char to;
};

// In UTF-8. Full-width characters come from East Asian input methods, U+2212 and the odd spaces from pasted documents.
constexpr std::array foldings = {
    Folding{"\uFF10", '0'},   Folding{"\uFF11", '1'}, Folding{"\uFF12", '2'}, Folding{"\uFF13", '3'},
    Folding{"\uFF14", '4'},   Folding{"\uFF15", '5'}, Folding{"\uFF16", '6'}, Folding{"\uFF17", '7'},
    Folding{"\uFF18", '8'},   Folding{"\uFF19", '9'}, Folding{"\uFF0E", '.'}, Folding{"\uFF0C", ','},
    Folding{"\uFF0D", '-'},   Folding{"\uFF0B", '+'}, Folding{"\u2212", '-'}, Folding{"\t", ' '},
    Folding{"\n", ' '},       Folding{"\v", ' '},     Folding{"\f", ' '},     Folding{"\r", ' '},
    Folding{"\xC2\x85", ' '}, Folding{"\u00A0", ' '}, Folding{"\u1680", ' '}, Folding{"\u2000", ' '},
    Folding{"\u2001", ' '},   Folding{"\u2002", ' '}, Folding{"\u2003", ' '}, Folding{"\u2004", ' '},
    Folding{"\u2005", ' '},   Folding{"\u2006", ' '}, Folding{"\u2007", ' '}, Folding{"\u2008", ' '},
    Folding{"\u2009", ' '},   Folding{"\u200A", ' '}, Folding{"\u2028", ' '}, Folding{"\u2029", ' '},
    Folding{"\u202F", ' '},   Folding{"\u205F", ' '}, Folding{"\u3000", ' '},
};

std::string folded(std::string_view typed) {
  std::string text;
  text.reserve(typed.size());
  while (!typed.empty()) {
    const auto* const folding = std::find_if(foldings.begin(), foldings.end(), [typed](const Folding& each) {
      return typed.substr(0, each.from.size()) == each.from;
    });
    const bool found = folding != foldings.end();
    text += found ? folding->to : typed.front();
    typed.remove_prefix(found ? folding->from.size() : 1);
  }
  return text;
}

}  // namespace

std::string folded_and_trimmed(std::string_view typed) {
  const std::string text = folded(typed);
  const std::size_t first = text.find_first_not_of(' ');
  return first == std::string::npos ? std::string() : text.substr(first, text.find_last_not_of(' ') + 1 - first);
}

std::string in_lower_case(std::string_view text) {
  std::string lower;
  for (const char each : text) {
    if (each == ' ' && !lower.empty() && lower.back() == ' ') {
      continue;
    }
    lower += each >= 'A' && each <= 'Z' ? static_cast<char>(each - 'A' + 'a') : each;
  }
  return lower;
}

bool is_digit(char each) {
  return each >= '0' && each <= '9';
}
bool is_mark(char each) {
  return each == '.' || each == ',';
}
bool is_sign(char each) {
  return each == '+' || each == '-';
}

}  // namespace shimwright::quantity
