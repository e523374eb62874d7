#include "file_header.h"

#include <charconv>

namespace shimwright::sheet {

namespace {

constexpr std::int64_t highest_version = 1'000'000;

bool asks_for_newer_reader(const json::Value& file) {
  const json::Value* min_reader = file.find("min_reader");
  const json::Number* number = min_reader == nullptr ? nullptr : min_reader->number();
  if (number == nullptr) {
    return false;
  }
  std::int64_t asked = 0;
  const std::string& text = number->text;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), asked);
  return read.ec == std::errc() && read.ptr == text.data() + text.size() && asked > reader_version;
}

}  // namespace

Result<void> check_header(const json::Value& file, std::string_view format) {
  const json::Value* named = file.find("format");
  if (const std::string* name = named == nullptr ? nullptr : named->string(); name != nullptr && *name != format) {
    return refuse("wrong_format", "/format",
                  SHIMWRIGHT_TEXT("sheet", "This file is a '{0}', not a '{1}'; choose another file."),
                  {*name, std::string(format)});
  }
  if (asks_for_newer_reader(file)) {
    return refuse(
        "newer_file", "/min_reader",
        SHIMWRIGHT_TEXT("sheet", "This file was made for a newer version of the program; update the program."));
  }
  return {};
}

void read_header(Fields& fields) {
  // The name itself is right by now; this refuses what is no text at all.
  static_cast<void>(fields.string("format"));
  const std::int64_t version = fields.integer("version", 1, highest_version);
  if (fields.sound()) {
    static_cast<void>(fields.integer("min_reader", 1, version < reader_version ? version : reader_version));
  }
}

}  // namespace shimwright::sheet
