#include "draft_json.h"

#include "shimwright/quantity/typed_number.h"

namespace shimwright::sheet {

DraftJson body_of(const SheetDraft& draft) {
  DraftJson body = DraftJson::parse(draft.body, nullptr, false);
  return body.is_object() ? body : DraftJson::object();
}

SheetDraft draft_of(SheetKind kind, const DraftJson& body) {
  return {kind, body.dump(2, ' ', false, DraftJson::error_handler_t::replace) + "\n"};
}

const DraftJson* value_at(const DraftJson& body, const std::string& place) {
  const DraftJson::json_pointer pointer(place);
  return body.contains(pointer) ? &body.at(pointer) : nullptr;
}

DraftJson* value_at(DraftJson& body, const std::string& place) {
  const DraftJson::json_pointer pointer(place);
  return body.contains(pointer) ? &body.at(pointer) : nullptr;
}

DraftJson* object_at(DraftJson& body, const std::string& place) {
  if (DraftJson* there = value_at(body, place); there != nullptr) {
    *there = there->is_object() ? std::move(*there) : DraftJson::object();
    return there;
  }
  DraftJson* const above = value_at(body, parent_of(place));
  if (above != nullptr && above->is_array()) {
    return nullptr;
  }
  DraftJson* const parent = object_at(body, parent_of(place));
  return parent == nullptr ? nullptr : &((*parent)[last_of(place)] = DraftJson::object());
}

std::string parent_of(const std::string& place) {
  return DraftJson::json_pointer(place).parent_pointer().to_string();
}

std::string last_of(const std::string& place) {
  return place.empty() ? std::string() : DraftJson::json_pointer(place).back();
}

std::string shown_text(const DraftJson* value) {
  if (value == nullptr || value->is_null()) {
    return "";
  }
  if (value->is_string()) {
    return value->get<std::string>();
  }
  if (value->is_boolean()) {
    return value->get<bool>() ? "yes" : "no";
  }
  return value->dump();
}

std::vector<std::string> languages_of(const DraftJson& body) {
  std::vector<std::string> languages{"en"};
  if (const DraftJson* title = value_at(body, "/title"); title != nullptr && title->is_object()) {
    for (const auto& [language, text] : title->items()) {
      if (language != "en") {
        languages.push_back(language);
      }
    }
  }
  return languages;
}

std::vector<WordChoice> unit_choices() {
  using quantity::Unit;
  std::vector<WordChoice> choices;
  for (const Unit unit :
       {Unit::millimetre, Unit::newton_metre, Unit::degree_celsius, Unit::piece, Unit::litre, Unit::volt,
        Unit::kilometre, Unit::bar, Unit::gram, Unit::kilogram, Unit::degree, Unit::percent, Unit::millilitre,
        Unit::millivolt, Unit::kilopascal, Unit::inch, Unit::thou, Unit::pound_foot, Unit::mile}) {
    const std::string symbol(quantity::symbol_of(unit));
    choices.push_back({symbol, symbol.empty() ? Message{SHIMWRIGHT_TEXT("sheet", "pieces"), {}} : Message{symbol, {}}});
  }
  return choices;
}

SectionWriter::SectionWriter(const DraftJson& body, std::string id, Message title)
    : body_(&body), languages_(languages_of(body)) {
  section_.id = std::move(id);
  section_.title = std::move(title);
}

void SectionWriter::group(Message heading, std::string place, bool row, bool movable) {
  section_.groups.push_back({std::move(place), std::move(heading), {}, row, movable});
}

void SectionWriter::add(DraftField field) {
  field.text = shown_text(value_at(*body_, field.place));
  section_.groups.back().fields.push_back(std::move(field));
}

void SectionWriter::field(const std::string& place, FieldKind kind, Message label, std::string unit,
                          bool may_be_blank) {
  add({place, kind, std::move(label), std::move(unit), "", may_be_blank, {}, ""});
}

void SectionWriter::word(const std::string& place, Message label, std::vector<WordChoice> choices) {
  add({place, FieldKind::word, std::move(label), "", "", false, std::move(choices), ""});
}

void SectionWriter::text(const std::string& place, const Message& label, bool may_be_blank) {
  for (const std::string& language : languages_) {
    const bool english = language == "en";
    add({place + "/" + language,
         FieldKind::line,
         label,
         "",
         "",
         may_be_blank || !english,
         {},
         english ? "" : language});
  }
}

void SectionWriter::source(const std::string& place) {
  field(place, FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "From (blank: as the sheet)"), {}}, "", true);
}

void SectionWriter::name(const std::string& place, Message label) {
  DraftField named{place + "/#name", FieldKind::line, std::move(label), "", last_of(place), false, {}, ""};
  section_.groups.back().fields.push_back(std::move(named));
}

void SectionWriter::unless_said(const std::string& text) {
  DraftField& field = section_.groups.back().fields.back();
  field.text = field.text.empty() ? text : field.text;
}

void SectionWriter::languages(Message label) {
  std::string text;
  for (const std::string& language : languages_) {
    text += language == "en" ? "" : (text.empty() ? "" : " ") + language;
  }
  section_.groups.back().fields.push_back(
      {"/#languages", FieldKind::line, std::move(label), "", std::move(text), true, {}, ""});
}

bool SectionWriter::has(const std::string& place) const {
  const DraftJson* value = value_at(*body_, place);
  return value != nullptr && !value->is_null();
}

std::size_t SectionWriter::size_of(const std::string& place) const {
  const DraftJson* value = value_at(*body_, place);
  return value != nullptr && value->is_array() ? value->size() : 0;
}

}  // namespace shimwright::sheet
