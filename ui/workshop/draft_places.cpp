#include "draft_places.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace shimwright::workshop {

namespace {

std::string parent_place(const std::string& place) {
  return place.substr(0, place.rfind('/'));
}

}  // namespace

bool stands_at(const Error& fault, const std::string& place) {
  const bool of_row = place.substr(place.rfind('/') + 1) == "#name";
  return fault.place == place || (of_row && fault.place == parent_place(place));
}

bool lies_in(const Error& fault, const sheet::DraftSection& section) {
  for (const sheet::DraftGroup& group : section.groups) {
    for (const sheet::DraftField& field : group.fields) {
      if (stands_at(fault, field.place)) {
        return true;
      }
    }
  }
  return std::any_of(section.ways.begin(), section.ways.end(),
                     [&fault](const sheet::RowWay& way) { return fault.place == way.place; });
}

std::string last_row_of(const sheet::DraftSection& section, const std::string& place) {
  std::string last;
  for (const sheet::DraftGroup& group : section.groups) {
    if (!group.place.empty() && (group.place == place || parent_place(group.place) == place)) {
      last = group.place;
    }
  }
  return last;
}

std::optional<std::size_t> part_named(const std::vector<sheet::DraftSection>& all, const std::string& id) {
  for (std::size_t part = 0; part < all.size(); ++part) {
    if (all[part].id == id) {
      return part;
    }
  }
  return std::nullopt;
}

std::optional<std::size_t> last_part_below(const std::vector<sheet::DraftSection>& all, const std::string& list) {
  std::optional<std::size_t> last;
  for (std::size_t part = 0; part < all.size(); ++part) {
    const bool is_row = all[part].id.find('/') != std::string::npos && parent_place(all[part].id) == list;
    last = is_row ? part : last;
  }
  return last;
}

std::string stage_place(const std::string& place) {
  constexpr std::string_view list = "/stages/";
  return place.compare(0, list.size(), list) == 0 ? place.substr(0, place.find('/', list.size())) : std::string();
}

std::optional<Message> stage_of_step(const std::vector<sheet::DraftSection>& all, const std::string& step) {
  const auto part = part_named(all, stage_place(step));
  return part && stage_place(step) != step ? std::optional(all[*part].title) : std::nullopt;
}

sheet::DraftSection section_of_reasons(const std::vector<sheet::TakenAway>& reasons) {
  sheet::DraftSection section;
  section.id = "reasons";
  section.title = {SHIMWRIGHT_TEXT("sheet", "Taken away: why?"), {}};
  for (const sheet::TakenAway& each : reasons) {
    sheet::DraftField field;
    field.place = reason_place + std::to_string(section.groups.size());
    field.label = {SHIMWRIGHT_TEXT("sheet", "Why it may go; this stays in the history"), {}};
    field.text = each.reason;
    sheet::DraftGroup group;
    group.heading = each.guard == sheet::Guard::caution
                        ? Message{SHIMWRIGHT_TEXT("sheet", "Caution at “{0}”: {1}"), {each.step, each.text}}
                        : Message{SHIMWRIGHT_TEXT("sheet", "Hold point “{0}”: {1}"), {each.step, each.text}};
    group.fields.push_back(std::move(field));
    section.groups.push_back(std::move(group));
  }
  return section;
}

bool changes_the_form(const std::string& place) {
  constexpr std::array<std::string_view, 5> deciding{"method", "kind", "unit", "#name", "#languages"};
  return std::find(deciding.begin(), deciding.end(), place.substr(place.rfind('/') + 1)) != deciding.end();
}

}  // namespace shimwright::workshop
