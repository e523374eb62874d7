#include "shimwright/sheet/compare.h"

#include <map>

#include "draft_json.h"

namespace shimwright::sheet {

namespace {

struct Shown {
  Difference value;  ///< `after` holds the text
  std::string key;
};

/// A place in which the rows of a list have their names instead of their numbers.
std::string by_name(const DraftJson& body, const std::string& place) {
  std::string key;
  DraftJson::json_pointer pointer(place);
  std::vector<std::string> words;
  while (!pointer.empty()) {
    words.push_back(pointer.back());
    pointer.pop_back();
  }
  DraftJson::json_pointer walked;
  for (auto word = words.rbegin(); word != words.rend(); ++word) {
    const DraftJson* list = value_at(body, walked.to_string());
    walked /= *word;
    const DraftJson* row = list != nullptr && list->is_array() ? value_at(body, walked.to_string()) : nullptr;
    const bool named = row != nullptr && row->is_object() && row->contains("id");
    key += "/" + (named ? shown_text(value_at(*row, "/id")) : *word);
  }
  return key;
}

std::vector<Shown> shown_in(SheetKind kind, const std::string& file) {
  const SheetDraft draft{kind, file};
  const DraftJson body = body_of(draft);
  std::vector<Shown> all;
  for (const DraftSection& section : sections_of(draft)) {
    Message heading;
    for (const DraftGroup& group : section.groups) {
      heading = group.heading.text.empty() ? heading : group.heading;
      for (const DraftField& field : group.fields) {
        if (last_of(field.place) != "#name" && last_of(field.place) != "#languages") {
          all.push_back({{section.title, heading, field.label, field.language, field.unit, std::nullopt, field.text},
                         by_name(body, field.place)});
        }
      }
    }
  }
  return all;
}

}  // namespace

Comparison compare(SheetKind kind, const std::string& before, const std::string& after) {
  std::vector<Shown> earlier = shown_in(kind, before);
  std::map<std::string, std::string> texts;
  for (const Shown& each : earlier) {
    texts[each.key] = each.value.after.value_or("");
  }
  Comparison comparison;
  for (Shown& each : shown_in(kind, after)) {
    const auto then = texts.find(each.key);
    if (then != texts.end()) {
      each.value.before = then->second;
      texts.erase(then);
    }
    if (each.value.before == each.value.after) {
      ++comparison.same;
    } else {
      comparison.differences.push_back(std::move(each.value));
    }
  }
  for (Shown& each : earlier) {
    if (texts.count(each.key) > 0) {
      std::swap(each.value.before, each.value.after);
      comparison.differences.push_back(std::move(each.value));
    }
  }
  return comparison;
}

}  // namespace shimwright::sheet
