#include "shimwright/json/canonical.h"

#include <algorithm>
#include <cstdint>
#include <string_view>
#include <utility>

#include "shimwright/json/utf8.h"
#include "shimwright/json/value.h"

namespace shimwright::json {

namespace {

constexpr std::int64_t first_inexact = std::int64_t{1} << 53;

tl::unexpected<Error> not_canonical(const std::string& place, std::string_view sentence) {
  return refuse("not_canonical", place, sentence);
}

void append_escaped(std::string& text, char character) {
  constexpr std::string_view meanings = "\"\\\b\f\n\r\t";
  constexpr std::string_view letters = "\"\\bfnrt";
  constexpr std::string_view hex_digits = "0123456789abcdef";
  const auto code = static_cast<unsigned char>(character);
  if (const std::size_t found = meanings.find(character); found != std::string_view::npos) {
    text += '\\';
    text += letters[found];
  } else if (code < 0x20) {
    text += "\\u00";
    text += hex_digits[code >> 4U];
    text += hex_digits[code & 0x0FU];
  } else {
    text += character;
  }
}

class Writer {
 public:
  [[nodiscard]] Result<void> write(const nlohmann::json& value, const std::string& place, std::size_t depth) {
    // What is written has to be readable again, so it obeys the reader's limit.
    if (value.is_structured() && depth >= ParseLimits{}.depth) {
      return not_canonical(place,
                           SHIMWRIGHT_TEXT("json", "This is nested too deeply to be stored; report this fault."));
    }
    switch (value.type()) {
      case nlohmann::json::value_t::null:
        text_ += "null";
        return {};
      case nlohmann::json::value_t::boolean:
        text_ += value.get<bool>() ? "true" : "false";
        return {};
      case nlohmann::json::value_t::number_integer:
      case nlohmann::json::value_t::number_unsigned:
        return write_integer(value, place);
      case nlohmann::json::value_t::string:
        return write_string(value.get_ref<const std::string&>(), place);
      case nlohmann::json::value_t::array:
        return write_array(value, place, depth);
      case nlohmann::json::value_t::object:
        return write_object(value, place, depth);
      default:
        return not_canonical(place, SHIMWRIGHT_TEXT("json",
                                                    "Only whole numbers are stored here, in the smallest unit; "
                                                    "report this fault."));
    }
  }

  [[nodiscard]] std::string take() { return std::move(text_); }

 private:
  [[nodiscard]] Result<void> write_integer(const nlohmann::json& value, const std::string& place) {
    const bool fits = value.is_number_unsigned()
                          ? value.get<std::uint64_t>() < static_cast<std::uint64_t>(first_inexact)
                          : -first_inexact < value.get<std::int64_t>() && value.get<std::int64_t>() < first_inexact;
    if (!fits) {
      return not_canonical(
          place, SHIMWRIGHT_TEXT("json", "This number is too large to be stored exactly; report this fault."));
    }
    text_ += std::to_string(value.get<std::int64_t>());
    return {};
  }

  [[nodiscard]] Result<void> write_string(const std::string& content, const std::string& place) {
    if (!is_utf8(content)) {
      return not_canonical(place, SHIMWRIGHT_TEXT("json", "This text is not UTF-8; enter it again."));
    }
    text_ += '"';
    std::for_each(content.begin(), content.end(), [this](char each) { append_escaped(text_, each); });
    text_ += '"';
    return {};
  }

  [[nodiscard]] Result<void> write_array(const nlohmann::json& elements, const std::string& place, std::size_t depth) {
    text_ += '[';
    for (std::size_t index = 0; index < elements.size(); ++index) {
      text_ += index == 0 ? "" : ",";
      if (auto written = write(elements[index], pointer(place, index), depth + 1); !written) {
        return written;
      }
    }
    text_ += ']';
    return {};
  }

  [[nodiscard]] Result<void> write_object(const nlohmann::json& members, const std::string& place, std::size_t depth) {
    text_ += '{';
    bool first = true;
    // The library keeps members in a std::map of std::string: already in the order of their bytes.
    for (const auto& [key, value] : members.items()) {
      const std::string member_place = pointer(place, key);
      if (std::any_of(key.begin(), key.end(), [](char each) { return static_cast<unsigned char>(each) >= 0x80; })) {
        return not_canonical(member_place,
                             SHIMWRIGHT_TEXT("json", "A name of a field is not plain ASCII; report this fault."));
      }
      text_ += first ? "" : ",";
      first = false;
      if (auto written = write_string(key, member_place); !written) {
        return written;
      }
      text_ += ':';
      if (auto written = write(value, member_place, depth + 1); !written) {
        return written;
      }
    }
    text_ += '}';
    return {};
  }

  std::string text_;
};

}  // namespace

Result<std::string> canonical(const nlohmann::json& value) {
  Writer writer;
  if (auto written = writer.write(value, "", 0); !written) {
    return tl::make_unexpected(std::move(written.error()));
  }
  return writer.take();
}

}  // namespace shimwright::json
