#include "shimwright/sheet/taken_over.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <utility>

#include "draft_json.h"

namespace shimwright::sheet {

namespace {

constexpr std::size_t most_stages = 40;
constexpr std::size_t longest_id = 40;
/// Put aside at a step: the guards it came with. It goes where the step goes, and no issue holds it.
constexpr const char* came_with = "#came_with";

template <class Visit>
void for_each_row(DraftJson& of, const char* list, const Visit& visit) {
  if (of.is_object() && of.contains(list) && of[list].is_array()) {
    for (DraftJson& each : of[list]) {
      visit(each);
    }
  }
}

std::string id_of(const DraftJson& row) {
  return shown_text(value_at(row, "/id"));
}

/// Short names in use: a number is added to what would be there twice.
class FreeNames {
 public:
  void use(const std::string& name) { used_.insert(name); }

  std::string take(const std::string& name) {
    std::string free = name;
    for (int number = 2; !used_.insert(free).second; ++number) {
      const std::string end = "-" + std::to_string(number);
      free = name.substr(0, longest_id - end.size()) + end;
    }
    return free;
  }

 private:
  std::set<std::string> used_;
};

void rename_steps(const DraftJson& body, DraftJson& stage) {
  FreeNames free;
  DraftJson sheet = body;
  for_each_row(sheet, "stages", [&free](DraftJson& each) {
    for_each_row(each, "steps", [&free](const DraftJson& step) { free.use(id_of(step)); });
  });
  std::map<std::string, std::string> names;
  for_each_row(stage, "steps", [&](DraftJson& step) {
    const std::string name = id_of(step);
    names[name] = free.take(name);
    step["id"] = names[name];
  });
  const auto follow = [&names](DraftJson& of, const char* field) {
    const auto now = of.is_object() && of.contains(field) ? names.find(shown_text(&of[field])) : names.end();
    if (now != names.end()) {
      of[field] = now->second;
    }
  };
  for_each_row(stage, "steps", [&follow](DraftJson& step) {
    follow(step, "unproven_until");
    for_each_row(step, "channels", [&follow](DraftJson& channel) {
      if (channel.contains("equals")) {
        follow(channel["equals"], "step");
      }
    });
  });
}

void rename_stage(const DraftJson& body, DraftJson& stage) {
  FreeNames free;
  DraftJson sheet = body;
  for_each_row(sheet, "stages", [&free](const DraftJson& each) { free.use(id_of(each)); });
  stage["id"] = free.take(id_of(stage));
}

/// Words in a language the form does not show could not be put right there.
void keep_languages(DraftJson& stage, const std::vector<std::string>& languages) {
  for_each_text(stage, [&languages](DraftJson& text) {
    const DraftJson before = text;
    for (const auto& [language, words] : before.items()) {
      if (std::find(languages.begin(), languages.end(), language) == languages.end()) {
        text.erase(language);
      }
    }
  });
}

void note_guards(DraftJson& stage) {
  for_each_row(stage, "steps", [](DraftJson& step) {
    const bool holds = shown_text(value_at(step, "/hold_point")) == "yes";
    DraftJson cautions = step.contains("cautions") ? step["cautions"] : DraftJson::array();
    if (holds || !cautions.empty()) {
      step[came_with] = {{"hold_point", holds}, {"cautions", std::move(cautions)}};
    }
  });
}

/// In every language that was there.
bool says_as_before(const DraftJson& before, const DraftJson& now) {
  for (const char* words : {"hazard", "precaution"}) {
    const DraftJson* const was = value_at(before, std::string("/") + words);
    if (was == nullptr || !was->is_object()) {
      continue;
    }
    for (const auto& [language, said] : was->items()) {
      if (shown_text(value_at(now, std::string("/") + words + "/" + language)) != shown_text(&said)) {
        return false;
      }
    }
  }
  return true;
}

void add_lost(std::vector<TakenAway>& lost, DraftJson& step) {
  DraftJson before = step[came_with];
  for_each_row(before, "cautions", [&](const DraftJson& caution) {
    bool there = false;
    for_each_row(step, "cautions", [&](const DraftJson& each) { there = there || says_as_before(caution, each); });
    if (!there) {
      lost.push_back({id_of(step), Guard::caution, shown_text(value_at(caution, "/hazard/en")), ""});
    }
  });
  if (shown_text(value_at(before, "/hold_point")) == "yes" && shown_text(value_at(step, "/hold_point")) != "yes") {
    lost.push_back({id_of(step), Guard::hold_point, shown_text(value_at(step, "/title/en")), ""});
  }
}

}  // namespace

Result<MovedRow> with_stage(const SheetDraft& draft, const std::string& file, const std::string& stage,
                            const std::string& before) {
  DraftJson body = body_of(draft);
  DraftJson other = body_of({SheetKind::job_sheet, file});
  DraftJson taken;
  for_each_row(other, "stages", [&](const DraftJson& each) { taken = id_of(each) == stage ? each : taken; });
  if (!taken.is_object()) {
    return refuse("unknown_stage", stage,
                  SHIMWRIGHT_TEXT("sheet", "That sheet has no stage “{0}”; choose one of its stages."), {stage});
  }
  DraftJson* const stages = value_at(body, "/stages");
  if (stages == nullptr || !stages->is_array() || value_at(body, before) == nullptr || parent_of(before) != "/stages") {
    return MovedRow{draft, before};
  }
  if (stages->size() >= most_stages) {
    return refuse("too_many", before,
                  SHIMWRIGHT_TEXT("sheet",
                                  "A sheet has at most {0} stages, and this one has as many already; take one "
                                  "out first."),
                  {std::to_string(most_stages)});
  }
  keep_languages(taken, languages_of(body));
  rename_stage(body, taken);
  rename_steps(body, taken);
  note_guards(taken);
  stages->insert(stages->begin() + std::stoi(last_of(before)), std::move(taken));
  if (shown_text(value_at(other, "/demonstration")) == "yes") {
    body["demonstration"] = true;
  }
  return MovedRow{draft_of(draft.kind, body), before};
}

std::vector<TakenAway> taken_away_since_taken_over(const SheetDraft& draft) {
  std::vector<TakenAway> lost;
  DraftJson body = body_of(draft);
  for_each_row(body, "stages", [&lost](DraftJson& stage) {
    for_each_row(stage, "steps", [&lost](DraftJson& step) {
      if (step.is_object() && step.contains(came_with)) {
        add_lost(lost, step);
      }
    });
  });
  return lost;
}

}  // namespace shimwright::sheet
