#include <algorithm>
#include <array>

#include "draft_json.h"
#include "shimwright/sheet/names.h"

namespace shimwright::sheet {

namespace {

/// What a file may leave out, and a form shows as a blank field.
constexpr std::array may_be_left_out{"limit", "unproven_until", "attempts_limit"};

bool is_blank_text(const DraftJson& value) {
  return value.is_string() && is_blank(value.get_ref<const std::string&>());
}

void drop_what_is_put_aside(DraftJson& value) {
  if (value.is_object()) {
    std::vector<std::string> aside;
    for (const auto& [key, each] : value.items()) {
      if (!key.empty() && key[0] == '#') {
        aside.push_back(key);
      }
    }
    for (const std::string& key : aside) {
      value.erase(key);
    }
  }
  if (value.is_structured()) {
    for (auto& each : value) {
      drop_what_is_put_aside(each);
    }
  }
}

void drop_blank_translations(DraftJson& text) {
  const DraftJson before = text;
  for (const auto& [language, words] : before.items()) {
    if (language != "en" && is_blank_text(words)) {
      text.erase(language);
    }
  }
}

bool is_whole_text_blank(const DraftJson& text) {
  return text.is_object() && text.size() == 1 && text.contains("en") && is_blank_text(text["en"]);
}

bool names_nothing(const DraftJson& reading) {
  return reading.is_object() &&
         std::all_of(reading.begin(), reading.end(), [](const DraftJson& each) { return is_blank_text(each); });
}

void drop_blank_parts(DraftJson& value) {
  if (value.is_object()) {
    for (const char* key : may_be_left_out) {
      if (value.contains(key) && is_blank_text(value[key])) {
        value.erase(key);
      }
    }
    if (value.contains("equals") && names_nothing(value["equals"])) {
      value.erase("equals");
    }
    if (value.contains("kind") && value.contains("text") && is_whole_text_blank(value["text"])) {
      value.erase("text");
    }
    if (value.contains("cautions") && value["cautions"].empty()) {
      value.erase("cautions");
    }
  }
  if (value.is_structured()) {
    for (auto& each : value) {
      drop_blank_parts(each);
    }
  }
}

}  // namespace

void fill_sources(DraftJson& value, const DraftJson& source) {
  if (value.is_object() && value.contains("source") && is_blank_text(value["source"])) {
    value["source"] = source;
  }
  if (value.is_structured()) {
    for (auto& each : value) {
      fill_sources(each, source);
    }
  }
}

std::string file_of(const SheetDraft& draft) {
  const DraftJson before = DraftJson::parse(draft.body, nullptr, false);
  if (!before.is_object()) {
    return draft.body;
  }
  DraftJson body = before;
  drop_what_is_put_aside(body);
  for_each_text(body, drop_blank_translations);
  drop_blank_parts(body);
  if (draft.kind == SheetKind::spec_sheet && body.contains("source")) {
    const DraftJson source = body["source"];
    fill_sources(body, source);
  }
  return body == before ? draft.body : draft_of(draft.kind, body).body;
}

}  // namespace shimwright::sheet
