#include "fields.h"

#include "shimwright/sheet/names.h"
#include "text_reader.h"

namespace shimwright::sheet {

Fields Fields::open(const json::Value& value, const std::string& place, Names required, Names optional) {
  Fields fields(place);
  auto reader = json::ObjectReader::open(value, place, required, optional);
  if (reader) {
    fields.reader_ = std::move(*reader);
  } else {
    fields.keep(std::move(reader.error()));
  }
  return fields;
}

std::string Fields::place_of(std::string_view key) const {
  return json::pointer(place_, key);
}

const json::Value* Fields::member(std::string_view key) const {
  return sound() && reader_ ? reader_->member(key) : nullptr;
}

bool Fields::has_value(std::string_view key) const {
  const json::Value* value = member(key);
  return value != nullptr && !value->is_null();
}

void Fields::keep(Error fault) {
  if (!fault_) {
    fault_ = std::move(fault);
  }
}

void Fields::refuse(std::string code, std::string_view key, std::string_view sentence,
                    std::vector<std::string> arguments) {
  refuse_at(std::move(code), place_of(key), sentence, std::move(arguments));
}

void Fields::refuse_at(std::string code, std::string place, std::string_view sentence,
                       std::vector<std::string> arguments) {
  keep(Error{std::move(code), std::move(place), Message{std::string(sentence), std::move(arguments)}});
}

void Fields::refuse_word(std::string_view key, const std::string& name, std::string allowed) {
  refuse("unknown_word", key, SHIMWRIGHT_TEXT("sheet", "'{0}' is not known here; write one of: {1}."),
         {name, std::move(allowed)});
}

std::string Fields::string(std::string_view key) {
  return reader_ && sound() ? take(reader_->string(key)) : std::string();
}

bool Fields::flag(std::string_view key) {
  return reader_ && sound() && take(reader_->boolean(key));
}

std::int64_t Fields::integer(std::string_view key, std::int64_t least, std::int64_t most) {
  return reader_ && sound() ? take(reader_->integer(key, least, most)) : 0;
}

std::string Fields::line(std::string_view key) {
  std::string text = string(key);
  if (sound()) {
    if (auto checked = check_line(text, place_of(key), longest_line); !checked) {
      keep(std::move(checked.error()));
    }
  }
  return text;
}

std::string Fields::id(std::string_view key) {
  std::string text = string(key);
  if (sound() && !is_id(text)) {
    refuse("wrong_id", key,
           SHIMWRIGHT_TEXT("sheet", "'{0}' cannot be a name here; use 1 to 40 small letters, digits and hyphens."),
           {text});
  }
  return text;
}

std::string Fields::uuid(std::string_view key) {
  std::string text = string(key);
  if (sound() && !is_uuid(text)) {
    refuse("wrong_id", key,
           SHIMWRIGHT_TEXT("sheet",
                           "'{0}' is no UUID; write one in small letters, like 0198f0c0-5a00-7a11-8d01-0000000000aa."),
           {text});
  }
  return text;
}

Text Fields::text(std::string_view key) {
  const json::Value* value = member(key);
  return value == nullptr ? Text() : take(read_text(*value, place_of(key)));
}

std::vector<const json::Value*> Fields::elements(std::string_view key, std::size_t least, std::size_t most) {
  std::vector<const json::Value*> found;
  const json::Array* array = reader_ && sound() ? take(reader_->array(key)) : nullptr;
  if (array == nullptr) {
    return found;
  }
  if (array->size() < least) {
    refuse("too_few", key,
           SHIMWRIGHT_TEXT("sheet", "The list has {0} entries, at least {1} are needed; add what is missing."),
           {std::to_string(array->size()), std::to_string(least)});
  } else if (array->size() > most) {
    refuse("too_many", key, SHIMWRIGHT_TEXT("sheet", "The list has {0} entries, at most {1} are read; shorten it."),
           {std::to_string(array->size()), std::to_string(most)});
  } else {
    for (const json::Value& element : *array) {
      found.push_back(&element);
    }
  }
  return found;
}

}  // namespace shimwright::sheet
