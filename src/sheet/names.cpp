#include "shimwright/sheet/names.h"

#include <algorithm>

namespace shimwright::sheet {

namespace {

constexpr std::size_t longest_id = 40;
constexpr std::size_t longest_shim_id = 16;
constexpr std::string_view uuid_shape = "xxxxxxxx-xxxx-xxxx-xxxx-xxxxxxxxxxxx";

bool is_small_letter(char each) {
  return each >= 'a' && each <= 'z';
}
bool is_digit(char each) {
  return each >= '0' && each <= '9';
}

bool is_word(std::string_view text, char joint) {
  return !text.empty() && text.size() <= longest_id && std::all_of(text.begin(), text.end(), [joint](char each) {
    return is_small_letter(each) || is_digit(each) || each == joint;
  });
}

}  // namespace

bool is_id(std::string_view text) {
  return is_word(text, '-');
}

bool is_key(std::string_view text) {
  return is_word(text, '_');
}

bool is_shim_id(std::string_view text) {
  return !text.empty() && text.size() <= longest_shim_id && text.front() != ' ' && text.back() != ' ' &&
         std::all_of(text.begin(), text.end(), [](char each) { return each >= ' ' && each <= '~'; });
}

bool is_uuid(std::string_view text) {
  return text.size() == uuid_shape.size() &&
         std::equal(text.begin(), text.end(), uuid_shape.begin(), [](char each, char shape) {
           return shape == '-' ? each == '-' : is_digit(each) || (each >= 'a' && each <= 'f');
         });
}

bool is_language(std::string_view text) {
  return (text.size() == 2 || text.size() == 3) && std::all_of(text.begin(), text.end(), is_small_letter);
}

bool is_blank(std::string_view text) {
  constexpr std::string_view no_break_space = "\xC2\xA0";
  while (!text.empty()) {
    if (text.substr(0, no_break_space.size()) == no_break_space) {
      text.remove_prefix(no_break_space.size());
    } else if (text.front() == ' ' || text.front() == '\t' || text.front() == '\n' || text.front() == '\r') {
      text.remove_prefix(1);
    } else {
      return false;
    }
  }
  return true;
}

bool has_control_character(std::string_view text) {
  return std::any_of(text.begin(), text.end(), [](char each) {
    const auto byte = static_cast<unsigned char>(each);
    return byte < 0x20 || byte == 0x7F;
  });
}

std::size_t character_count(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](char each) { return (static_cast<unsigned char>(each) & 0xC0U) != 0x80U; }));
}

}  // namespace shimwright::sheet
