#include "text_reader.h"

#include <utility>

#include "shimwright/sheet/names.h"

namespace shimwright::sheet {

Result<void> check_line(const std::string& line, const std::string& place, std::size_t longest) {
  if (is_blank(line)) {
    return refuse("blank", place, SHIMWRIGHT_TEXT("sheet", "The text is blank; write something, or remove it."));
  }
  if (has_control_character(line)) {
    return refuse("control_character", place,
                  SHIMWRIGHT_TEXT("sheet", "The text holds a line break or another control character; remove it."));
  }
  if (character_count(line) > longest) {
    return refuse("too_long", place,
                  SHIMWRIGHT_TEXT("sheet", "The text has {0} characters, at most {1} are read; shorten it."),
                  {std::to_string(character_count(line)), std::to_string(longest)});
  }
  return {};
}

namespace {

Result<void> read_translation(const std::string& language, const json::Value& value, const std::string& place,
                              Text& text) {
  const std::string* line = value.string();
  if (!is_language(language)) {
    return refuse(
        "wrong_language", place,
        SHIMWRIGHT_TEXT("sheet", "'{0}' is no language; write its two or three small letters, like en or de."),
        {language});
  }
  if (text.by_language.count(language) > 0) {
    return refuse("repeated_field", place,
                  SHIMWRIGHT_TEXT("sheet", "This language stands here twice; remove one of the two."));
  }
  if (line == nullptr) {
    return refuse("wrong_type", place, SHIMWRIGHT_TEXT("sheet", "A text in quotation marks has to stand here."));
  }
  text.by_language.emplace(language, *line);
  return check_line(*line, place, longest_text);
}

}  // namespace

Result<Text> read_text(const json::Value& value, const std::string& place) {
  const json::Object* translations = value.object();
  if (translations == nullptr) {
    return refuse("wrong_type", place,
                  SHIMWRIGHT_TEXT("sheet", "Texts by language have to stand here, like { \"en\": \"Press on\" }."));
  }
  Text text;
  for (const auto& [language, translation] : *translations) {
    if (auto read = read_translation(language, translation, json::pointer(place, language), text); !read) {
      return tl::make_unexpected(std::move(read.error()));
    }
  }
  if (text.by_language.count("en") == 0) {
    return refuse(
        "missing_field", json::pointer(place, "en"),
        SHIMWRIGHT_TEXT("sheet", "The English text is missing; add it, other languages are translations of it."));
  }
  return text;
}

}  // namespace shimwright::sheet
