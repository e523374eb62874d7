#include "shimwright/sheet/draft.h"

#include <algorithm>

#include "draft_json.h"
#include "draft_shape.h"
#include "file_header.h"
#include "shimwright/json/value.h"
#include "shimwright/quantity/quantity.h"
#include "shimwright/sheet/names.h"

namespace shimwright::sheet {

namespace {

const char* name_key(SheetKind kind) {
  return kind == SheetKind::job_sheet ? "name" : "gearbox";
}

const DraftField* field_at(const std::vector<DraftSection>& sections, const std::string& place) {
  for (const DraftSection& section : sections) {
    for (const DraftGroup& group : section.groups) {
      for (const DraftField& field : group.fields) {
        if (field.place == place) {
          return &field;
        }
      }
    }
  }
  return nullptr;
}

bool is_whole_number(const std::string& text) {
  return !text.empty() && text.size() <= 9 && (text == "0" || text[0] != '0') &&
         std::all_of(text.begin(), text.end(), [](char each) { return each >= '0' && each <= '9'; });
}

DraftJson written(FieldKind kind, const std::string& text) {
  if (kind == FieldKind::count && is_whole_number(text)) {
    return std::stoi(text);
  }
  if (kind == FieldKind::yes_no && (text == "yes" || text == "no")) {
    return text == "yes";
  }
  return text;
}

/// A blank that means "not there" is not written; one that means "still to be filled in" is.
bool is_left_out(const DraftField& field, const std::string& text) {
  return text.empty() && field.may_be_blank && field.kind != FieldKind::line;
}

/// The row of an object of rows gets another name and keeps its place among them.
Result<SheetDraft> renamed(const SheetDraft& draft, DraftJson body, const std::string& row, const std::string& name) {
  DraftJson& rows = *object_at(body, parent_of(row));
  const std::string old = last_of(row);
  if (name != old && rows.contains(name)) {
    return refuse("repeated_field", row + "/#name",
                  SHIMWRIGHT_TEXT("sheet", "The name '{0}' stands here twice; give one of the two another name."),
                  {name});
  }
  DraftJson ordered = DraftJson::object();
  for (const auto& [key, value] : rows.items()) {
    ordered[key == old ? name : key] = value;
  }
  rows = std::move(ordered);
  return draft_of(draft.kind, body);
}

std::vector<std::string> words_of(const std::string& text) {
  std::vector<std::string> words;
  std::string word;
  for (const char each : text + " ") {
    if (each != ' ' && each != ',' && each != ';') {
      word += each;
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  return words;
}

/// Texts of a language that is named no longer are taken out only where they are blank.
Result<SheetDraft> with_languages(const SheetDraft& draft, DraftJson body, const std::string& text) {
  const std::vector<std::string> wanted = words_of(text);
  for (const std::string& language : wanted) {
    if (!is_language(language)) {
      return refuse(
          "wrong_language", "/#languages",
          SHIMWRIGHT_TEXT("sheet", "'{0}' is no language; write its two or three small letters, like en or de."),
          {language});
    }
  }
  for_each_text(body, [&wanted](DraftJson& each) {
    for (const std::string& language : wanted) {
      if (!each.contains(language)) {
        each[language] = "";
      }
    }
    const DraftJson before = each;
    for (const auto& [language, words] : before.items()) {
      const bool named = language == "en" || std::find(wanted.begin(), wanted.end(), language) != wanted.end();
      const auto* written = words.get_ptr<const std::string*>();
      if (!named && written != nullptr && written->empty()) {
        each.erase(language);
      }
    }
  });
  return draft_of(draft.kind, body);
}

SheetDraft made_from(SheetKind kind, const std::string& file, const std::string& id, std::int64_t issue) {
  DraftJson body = body_of({kind, file});
  body["id"] = id;
  body["issue"] = issue;
  return draft_of(kind, body);
}

Result<quantity::Length> typed_length(const std::string& typed) {
  auto number = quantity::read_number(typed, quantity::Unit::millimetre);
  return number ? Result<quantity::Length>(quantity::Length(number->base))
                : tl::make_unexpected(std::move(number.error()));
}

}  // namespace

std::string_view name_of(SheetKind kind) {
  return kind == SheetKind::job_sheet ? "job_sheet" : "spec_sheet";
}

SheetDraft copy_of(SheetKind kind, const std::string& file, const std::string& id) {
  DraftJson body = body_of(made_from(kind, file, id, 1));
  body[name_key(kind)] = "";
  return draft_of(kind, body);
}

SheetDraft next_issue_of(SheetKind kind, const std::string& file, const std::string& id, std::int64_t issue) {
  return made_from(kind, file, id, issue);
}

Result<SheetDraft> draft_of_file(SheetKind kind, const std::string& file) {
  const auto parsed = json::parse(file);
  if (!parsed) {
    return tl::make_unexpected(parsed.error());
  }
  const char* format = kind == SheetKind::job_sheet ? "shimwright.job-sheet" : "shimwright.spec-sheet";
  if (auto header = check_header(*parsed, format); !header) {
    return tl::make_unexpected(std::move(header.error()));
  }
  if (auto shape = check_shape(*parsed); !shape) {
    return tl::make_unexpected(std::move(shape.error()));
  }
  return SheetDraft{kind, file};
}

std::vector<DraftSection> sections_of(const SheetDraft& draft) {
  const DraftJson body = body_of(draft);
  return draft.kind == SheetKind::job_sheet ? job_sections(body) : spec_sections(body);
}

DraftHead head_of(const SheetDraft& draft) {
  const DraftJson body = body_of(draft);
  DraftHead head;
  head.name = shown_text(value_at(body, std::string("/") + name_key(draft.kind)));
  const DraftJson* issue = value_at(body, "/issue");
  head.issue = issue != nullptr && issue->is_number_integer() ? issue->get<std::int64_t>() : 1;
  head.demonstration = shown_text(value_at(body, "/demonstration")) == "yes";
  return head;
}

Result<SheetDraft> with_text(const SheetDraft& draft, const std::string& place, const std::string& text) {
  DraftJson body = body_of(draft);
  if (last_of(place) == "#name") {
    return renamed(draft, std::move(body), parent_of(place), text);
  }
  if (last_of(place) == "#languages") {
    return with_languages(draft, std::move(body), text);
  }
  const auto sections = sections_of(draft);
  const DraftField* field = field_at(sections, place);
  if (field == nullptr || put_method(body, place, text) || put_step_kind(body, place, text)) {
    return draft_of(draft.kind, body);
  }
  DraftJson* parent = value_at(body, parent_of(place));
  const bool is_row = parent != nullptr && parent->is_array() && value_at(body, place) != nullptr;
  parent = is_row ? parent : object_at(body, parent_of(place));
  if (parent == nullptr) {
    return draft;
  }
  const std::string key = last_of(place);
  if (is_row) {
    *value_at(body, place) = written(field->kind, text);
  } else if (!is_left_out(*field, text)) {
    (*parent)[key] = written(field->kind, text);
  } else if (key == "target_mm") {
    (*parent)[key] = nullptr;
  } else {
    parent->erase(key);
  }
  return draft_of(draft.kind, body);
}

SheetDraft with_row(const SheetDraft& draft, const std::string& place) {
  DraftJson body = body_of(draft);
  DraftJson row = blank_row(body, place);
  DraftJson* const parent = object_at(body, parent_of(place));
  if (parent == nullptr) {
    return draft;
  }
  const std::string kind = last_of(place);
  DraftJson& list = (*parent)[kind];
  if (kind == "prior" || kind == "sensitivity") {
    list = std::move(row);
  } else if (kind == "limits" || kind == "work_values") {
    list = list.is_object() ? std::move(list) : DraftJson::object();
    std::string key = "new";
    for (int at = 2; list.contains(key); ++at) {
      key = "new_" + std::to_string(at);
    }
    list[key] = std::move(row);
  } else {
    list = list.is_array() ? std::move(list) : DraftJson::array();
    list.push_back(std::move(row));
  }
  return draft_of(draft.kind, body);
}

SheetDraft without(const SheetDraft& draft, const std::string& place) {
  DraftJson body = body_of(draft);
  DraftJson* parent = value_at(body, parent_of(place));
  const std::string key = last_of(place);
  if (parent == nullptr || value_at(body, place) == nullptr) {
    return draft;
  }
  if (key == "prior" || key == "sensitivity") {
    (*parent)[key] = nullptr;
  } else if (parent->is_array()) {
    parent->erase(static_cast<std::size_t>(std::stoul(key)));
    // No range at all is another thing than a list without one.
    if (parent->empty() && last_of(parent_of(place)) == "bins") {
      *parent = nullptr;
    }
  } else {
    parent->erase(key);
  }
  return draft_of(draft.kind, body);
}

Result<SheetDraft> with_shims(const SheetDraft& draft, Side side, const std::string& from, const std::string& to,
                              const std::string& step, const std::string& u_mm) {
  const auto first = typed_length(from);
  const auto last = first ? typed_length(to) : first;
  const auto width = last ? typed_length(step) : last;
  if (!width) {
    return tl::make_unexpected(width.error());
  }
  constexpr std::int64_t most_shims = 200;
  const bool runs = width->count() > 0 && *last >= *first;
  const bool comes_out = runs && (last->count() - first->count()) % width->count() == 0;
  if (runs && !comes_out) {
    return refuse(
        "out_of_range", "",
        SHIMWRIGHT_TEXT("sheet", "The steps do not come out at the last size; change the step or one of the sizes."));
  }
  if (!runs || (last->count() - first->count()) / width->count() >= most_shims) {
    return refuse(
        "out_of_range", "",
        SHIMWRIGHT_TEXT("sheet", "The sizes have to run from thin to thick in steps above 0, at most {0} of them."),
        {std::to_string(most_shims)});
  }
  DraftJson body = body_of(draft);
  DraftJson& shims = (*object_at(body, side == Side::lower ? "/lower/tray" : "/upper/tray"))["shims"];
  shims = shims.is_array() ? std::move(shims) : DraftJson::array();
  for (std::int64_t at = first->count(); at <= last->count(); at += width->count()) {
    std::string size = quantity::millimetre_text(quantity::Length(at), 3);
    if (size.back() == '0') {
      size.pop_back();
    }
    shims.push_back({{"id", size}, {"thickness_mm", size}, {"u_mm", u_mm}});
  }
  return draft_of(draft.kind, body);
}

}  // namespace shimwright::sheet
