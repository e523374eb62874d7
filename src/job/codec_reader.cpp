#include "codec_reader.h"

namespace shimwright::job {

namespace {

constexpr std::int64_t largest_exact = (std::int64_t{1} << 53) - 1;

Error bad_body(std::string place, std::string_view sentence) {
  return Error{"bad_body", std::move(place), Message{std::string(sentence), {}}};
}

}  // namespace

FieldReader::FieldReader(const json::Value& value, std::string place)
    : object_(value.object()), place_(std::move(place)) {
  if (object_ == nullptr) {
    error_ = wrong(place_);
  }
}

const json::Value* FieldReader::take(std::string_view key, bool required) {
  if (object_ == nullptr) {
    return nullptr;
  }
  taken_.push_back(key);
  const auto named = [key](const auto& member) { return member.first == key; };
  const auto found = std::find_if(object_->begin(), object_->end(), named);
  if (found == object_->end()) {
    if (required) {
      keep(bad_body(json::pointer(place_, key),
                    SHIMWRIGHT_TEXT("job", "A field is missing in this stored entry; check the store.")));
    }
    return nullptr;
  }
  if (std::any_of(found + 1, object_->end(), named)) {
    keep(bad_body(json::pointer(place_, key),
                  SHIMWRIGHT_TEXT("job", "A field stands twice in this stored entry; check the store.")));
  }
  return &found->second;
}

void FieldReader::refuse_the_rest() {
  if (object_ == nullptr) {
    return;
  }
  for (const auto& [key, value] : *object_) {
    if (std::find(taken_.begin(), taken_.end(), key) == taken_.end()) {
      keep(bad_body(json::pointer(place_, key),
                    SHIMWRIGHT_TEXT("job", "A field of this stored entry is not known; check the store.")));
    }
  }
}

Error FieldReader::wrong(const std::string& place) {
  return bad_body(place, SHIMWRIGHT_TEXT("job", "A value in this stored entry is not of its kind; check the store."));
}

std::optional<Error> FieldReader::fill_integer(const json::Value& value, const std::string& place, std::int64_t least,
                                               std::int64_t most, std::int64_t& member) {
  const json::Number* number = value.number();
  if (number == nullptr) {
    return wrong(place);
  }
  const char* const end = number->text.data() + number->text.size();
  std::int64_t count = 0;
  const auto read = std::from_chars(number->text.data(), end, count);
  if (read.ec != std::errc() || read.ptr != end || count < least || count > most) {
    return wrong(place);
  }
  member = count;
  return std::nullopt;
}

std::optional<Error> FieldReader::fill(const json::Value& value, const std::string& place, bool& member) {
  const bool* answer = value.boolean();
  if (answer == nullptr) {
    return wrong(place);
  }
  member = *answer;
  return std::nullopt;
}

std::optional<Error> FieldReader::fill(const json::Value& value, const std::string& place, int& member) {
  using Limits = std::numeric_limits<int>;
  std::int64_t count = 0;
  auto error = fill_integer(value, place, Limits::min(), Limits::max(), count);
  member = static_cast<int>(count);
  return error;
}

std::optional<Error> FieldReader::fill(const json::Value& value, const std::string& place, std::int64_t& member) {
  return fill_integer(value, place, -largest_exact, largest_exact, member);
}

std::optional<Error> FieldReader::fill(const json::Value& value, const std::string& place, quantity::Length& member) {
  std::int64_t count = 0;
  auto error = fill_integer(value, place, -largest_exact, largest_exact, count);
  member = quantity::Length(count);
  return error;
}

std::optional<Error> FieldReader::fill(const json::Value& value, const std::string& place, std::string& member) {
  const std::string* text = value.string();
  if (text == nullptr) {
    return wrong(place);
  }
  member = *text;
  return std::nullopt;
}

std::optional<Error> FieldReader::fill(const json::Value& value, const std::string& place,
                                       version_1::Nanometres<double>& member) {
  std::int64_t count = 0;
  auto error = fill_integer(value, place, -largest_exact, largest_exact, count);
  member.millimetres = static_cast<double>(count) / 1e6;
  return error;
}

}  // namespace shimwright::job
