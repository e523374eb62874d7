#include "shimwright/sheet/compare.h"

#include <algorithm>
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

/// The steps of a job sheet in order, ids only.
std::vector<std::string> steps_in(const std::string& file) {
  std::vector<std::string> ids;
  const DraftJson body = body_of({SheetKind::job_sheet, file});
  const DraftJson stages = body.value("stages", DraftJson::array());
  for (const DraftJson& stage : stages) {
    const DraftJson steps = stage.value("steps", DraftJson::array());
    for (const DraftJson& step : steps) {
      ids.push_back(shown_text(value_at(step, "/id")));
    }
  }
  return ids;
}

/// Which step each stands after, of those that are in both sheets; blank for the first.
std::map<std::string, std::string> before_each(const std::vector<std::string>& ids,
                                               const std::vector<std::string>& also) {
  std::map<std::string, std::string> before;
  std::string last;
  for (const std::string& id : ids) {
    if (std::find(also.begin(), also.end(), id) != also.end()) {
      before[id] = last;
      last = id;
    }
  }
  return before;
}

void compare_order(const std::string& before, const std::string& after, Comparison& comparison) {
  const auto earlier = steps_in(before);
  const auto later = steps_in(after);
  const auto then = before_each(earlier, later);
  for (const auto& [id, now] : before_each(later, earlier)) {
    const auto was = then.find(id);
    if (was != then.end() && was->second != now) {
      comparison.differences.push_back({{SHIMWRIGHT_TEXT("sheet", "Order of the steps"), {}},
                                        {"{0}", {id}},
                                        {SHIMWRIGHT_TEXT("sheet", "Stands after"), {}},
                                        "",
                                        "",
                                        was->second,
                                        now});
    }
  }
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
  if (kind == SheetKind::job_sheet) {
    compare_order(before, after, comparison);
  }
  return comparison;
}

}  // namespace shimwright::sheet
