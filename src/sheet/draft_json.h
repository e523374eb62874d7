#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

#include "shimwright/sheet/draft.h"

/// What the parts of drafts share.
namespace shimwright::sheet {

using DraftJson = nlohmann::ordered_json;

/// An empty object where the body is no JSON.
[[nodiscard]] DraftJson body_of(const SheetDraft& draft);
[[nodiscard]] SheetDraft draft_of(SheetKind kind, const DraftJson& body);
/// The value there; nullptr where there is none.
[[nodiscard]] const DraftJson* value_at(const DraftJson& body, const std::string& place);
[[nodiscard]] DraftJson* value_at(DraftJson& body, const std::string& place);
/// The object there, made where there is none or something else; nullptr where a list has no such row.
[[nodiscard]] DraftJson* object_at(DraftJson& body, const std::string& place);
/// `/a/b` of `/a/b/c`.
[[nodiscard]] std::string parent_of(const std::string& place);
/// `c` of `/a/b/c`, not escaped.
[[nodiscard]] std::string last_of(const std::string& place);
/// As the field shows it.
[[nodiscard]] std::string shown_text(const DraftJson* value);

/// Each text by language below a value is handed to `visit`.
template <class Visit>
void for_each_text(DraftJson& value, const Visit& visit) {
  if (value.is_object() && value.contains("en") && value["en"].is_string()) {
    visit(value);
    return;
  }
  if (value.is_structured()) {
    for (auto& each : value) {
      for_each_text(each, visit);
    }
  }
}

/// Puts sections together.
class SectionWriter {
 public:
  SectionWriter(const DraftJson& body, std::string id, Message title);

  void group(Message heading, std::string place = "", bool row = false, bool movable = false);
  void field(const std::string& place, FieldKind kind, Message label, std::string unit = "", bool may_be_blank = false);
  void word(const std::string& place, Message label, std::vector<WordChoice> choices);
  /// A text in each language the sheet has; English is needed unless the whole text may be left out.
  void text(const std::string& place, const Message& label, bool may_be_blank = false);
  void source(const std::string& place);
  void name(const std::string& place, Message label);
  void languages(Message label);
  /// The field that was written last need not be filled in.
  void last_may_be_blank() { section_.groups.back().fields.back().may_be_blank = true; }
  /// What the field that was written last means where it is not there.
  void unless_said(const std::string& text);
  void way(std::string place, Message label) { section_.ways.push_back({std::move(place), std::move(label)}); }
  [[nodiscard]] bool has(const std::string& place) const;
  [[nodiscard]] std::size_t size_of(const std::string& place) const;
  [[nodiscard]] const DraftJson& body() const { return *body_; }
  [[nodiscard]] DraftSection take() && { return std::move(section_); }

 private:
  void add(DraftField field);

  const DraftJson* body_;
  std::vector<std::string> languages_;
  DraftSection section_;
};

/// The languages of the sheet's title, English first.
[[nodiscard]] std::vector<std::string> languages_of(const DraftJson& body);

/// All units, as files write them.
[[nodiscard]] std::vector<WordChoice> unit_choices();

[[nodiscard]] std::vector<DraftSection> spec_sections(const DraftJson& body);
[[nodiscard]] std::vector<DraftSection> job_sections(const DraftJson& body);
/// Every blank source below a value becomes this one.
void fill_sources(DraftJson& value, const DraftJson& source);
/// What a new row of that list is, or a part that was not there.
[[nodiscard]] DraftJson blank_row(const DraftJson& body, const std::string& place);
/// The words of a field put in that change more than themselves; false where it is an ordinary one.
[[nodiscard]] bool put_method(DraftJson& body, const std::string& place, const std::string& word);
[[nodiscard]] bool put_step_kind(DraftJson& body, const std::string& place, const std::string& word);

}  // namespace shimwright::sheet
