#include "shimwright/json/object_reader.h"

#include <algorithm>
#include <charconv>
#include <utility>

namespace shimwright::json {

namespace {

using Keys = std::initializer_list<std::string_view>;

bool holds(Keys keys, std::string_view key) {
  return std::find(keys.begin(), keys.end(), key) != keys.end();
}

tl::unexpected<Error> wrong_type(std::string place, std::string_view sentence) {
  return refuse("wrong_type", std::move(place), sentence);
}

}  // namespace

Result<ObjectReader> ObjectReader::open(const Value& value, std::string place, Keys required, Keys optional) {
  const Object* object = value.object();
  if (object == nullptr) {
    return wrong_type(std::move(place), SHIMWRIGHT_TEXT("json", "An object in braces { } has to stand here."));
  }
  ObjectReader reader(*object, std::move(place));
  for (auto member = object->begin(); member != object->end(); ++member) {
    const std::string& key = member->first;
    if (!holds(required, key) && !holds(optional, key)) {
      return refuse("unknown_field", reader.place_of(key),
                    SHIMWRIGHT_TEXT("json", "This field is not known here; remove it or correct its name."));
    }
    if (std::any_of(object->begin(), member, [&key](const auto& earlier) { return earlier.first == key; })) {
      return refuse("repeated_field", reader.place_of(key),
                    SHIMWRIGHT_TEXT("json", "This field stands here twice; remove one of the two."));
    }
  }
  for (const std::string_view key : required) {
    if (!reader.has(key)) {
      return refuse("missing_field", reader.place_of(key), SHIMWRIGHT_TEXT("json", "This field is missing; add it."));
    }
  }
  return reader;
}

std::string ObjectReader::place_of(std::string_view key) const {
  return pointer(place_, key);
}

const Value* ObjectReader::member(std::string_view key) const {
  const auto found =
      std::find_if(object_->begin(), object_->end(), [key](const auto& member) { return member.first == key; });
  return found == object_->end() ? nullptr : &found->second;
}

Result<std::string> ObjectReader::string(std::string_view key) const {
  const Value* value = member(key);
  const std::string* text = value == nullptr ? nullptr : value->string();
  if (text == nullptr) {
    return wrong_type(place_of(key), SHIMWRIGHT_TEXT("json", "A text in quotation marks has to stand here."));
  }
  return *text;
}

Result<bool> ObjectReader::boolean(std::string_view key) const {
  const Value* value = member(key);
  const bool* answer = value == nullptr ? nullptr : value->boolean();
  if (answer == nullptr) {
    return wrong_type(place_of(key), SHIMWRIGHT_TEXT("json", "Either true or false has to stand here."));
  }
  return *answer;
}

Result<std::int64_t> ObjectReader::integer(std::string_view key, std::int64_t least, std::int64_t most) const {
  const Value* value = member(key);
  const Number* number = value == nullptr ? nullptr : value->number();
  if (number == nullptr || number->text.find_first_of(".eE") != std::string::npos) {
    return wrong_type(place_of(key),
                      SHIMWRIGHT_TEXT("json", "A whole number without quotation marks has to stand here."));
  }
  const std::string& text = number->text;
  std::int64_t count = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), count);
  if (read.ec != std::errc() || count < least || count > most) {
    return refuse("out_of_range", place_of(key),
                  SHIMWRIGHT_TEXT("json", "A whole number from {0} to {1} has to stand here."),
                  {std::to_string(least), std::to_string(most)});
  }
  return count;
}

Result<const Array*> ObjectReader::array(std::string_view key) const {
  const Value* value = member(key);
  const Array* elements = value == nullptr ? nullptr : value->array();
  if (elements == nullptr) {
    return wrong_type(place_of(key), SHIMWRIGHT_TEXT("json", "A list in brackets [ ] has to stand here."));
  }
  return elements;
}

}  // namespace shimwright::json
