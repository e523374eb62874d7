#include "draft_json.h"
#include "word_lists.h"

namespace shimwright::sheet {

namespace {

template <class Word, std::size_t Size>
std::vector<WordChoice> choices_of(const WordList<Word, Size>& words, bool may_be_none) {
  std::vector<WordChoice> choices;
  if (may_be_none) {
    choices.push_back({"", {SHIMWRIGHT_TEXT("sheet", "none"), {}}});
  }
  for (const auto& [word, name] : words) {
    std::string shown(name);
    for (char& each : shown) {
      each = each == '_' ? ' ' : each;
    }
    choices.push_back({std::string(name), {"{0}", {std::move(shown)}}});
  }
  return choices;
}

std::vector<WordChoice> kind_choices() {
  return {{"do", {SHIMWRIGHT_TEXT("sheet", "to do"), {}}},
          {"check", {SHIMWRIGHT_TEXT("sheet", "to check: in order or not"), {}}},
          {"choose", {SHIMWRIGHT_TEXT("sheet", "a choice"), {}}},
          {"read", {SHIMWRIGHT_TEXT("sheet", "readings"), {}}},
          {"peak", {SHIMWRIGHT_TEXT("sheet", "a peak: an event, never measured again"), {}}},
          {"part", {SHIMWRIGHT_TEXT("sheet", "parts fitted"), {}}},
          {"photo", {SHIMWRIGHT_TEXT("sheet", "photos"), {}}},
          {"text", {SHIMWRIGHT_TEXT("sheet", "a few words"), {}}},
          {"gauge_fit", {SHIMWRIGHT_TEXT("sheet", "gauge trials"), {}}},
          {"depth", {SHIMWRIGHT_TEXT("sheet", "depths"), {}}},
          {"float", {SHIMWRIGHT_TEXT("sheet", "float of a disc"), {}}},
          {"teach_in", {SHIMWRIGHT_TEXT("sheet", "teach-in"), {}}},
          {"sign", {SHIMWRIGHT_TEXT("sheet", "a signature"), {}}}};
}

void optional_word(SectionWriter& writer, const std::string& place, Message label, std::vector<WordChoice> choices) {
  writer.word(place, std::move(label), std::move(choices));
  writer.last_may_be_blank();
}

void add_channel(SectionWriter& writer, const std::string& channel) {
  writer.field(channel + "/id", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Short name of the reading"), {}});
  writer.text(channel + "/title", {SHIMWRIGHT_TEXT("sheet", "Reading"), {}});
  writer.word(channel + "/unit", {SHIMWRIGHT_TEXT("sheet", "Unit"), {}}, unit_choices());
  writer.field(channel + "/limit", FieldKind::line,
               {SHIMWRIGHT_TEXT("sheet", "Limit of the spec sheet that judges it (blank: none)"), {}}, "", true);
  optional_word(writer, channel + "/instrument", {SHIMWRIGHT_TEXT("sheet", "Read with"), {}},
                choices_of(instrument_kind_words, true));
  if (writer.has(channel + "/equals")) {
    writer.field(channel + "/equals/step", FieldKind::line,
                 {SHIMWRIGHT_TEXT("sheet", "Has to equal the reading of that earlier step (both blank: none)"), {}}, "",
                 true);
    writer.field(channel + "/equals/channel", FieldKind::line,
                 {SHIMWRIGHT_TEXT("sheet", "Short name of that reading"), {}}, "", true);
  }
  writer.field(channel + "/signed_value", FieldKind::yes_no, {SHIMWRIGHT_TEXT("sheet", "Needs its sign typed"), {}}, "",
               true);
  writer.unless_said("no");
}

void add_channels(SectionWriter& writer, const std::string& step) {
  for (std::size_t at = 0; at < writer.size_of(step + "/channels"); ++at) {
    const std::string channel = step + "/channels/" + std::to_string(at);
    writer.group({SHIMWRIGHT_TEXT("sheet", "Reading {0}"), {std::to_string(at + 1)}}, channel, false, true);
    add_channel(writer, channel);
  }
  if (writer.has(step + "/channels")) {
    writer.way(step + "/channels", {SHIMWRIGHT_TEXT("sheet", "Add a reading"), {}});
  }
  if (writer.has(step + "/channel")) {
    writer.group({SHIMWRIGHT_TEXT("sheet", "The reading"), {}});
    add_channel(writer, step + "/channel");
    writer.field(step + "/attempts_limit", FieldKind::line,
                 {SHIMWRIGHT_TEXT("sheet", "Limit of the spec sheet that counts the attempts (blank: none)"), {}}, "",
                 true);
  }
}

void add_choices(SectionWriter& writer, const std::string& step) {
  for (std::size_t at = 0; at < writer.size_of(step + "/choices"); ++at) {
    const std::string choice = step + "/choices/" + std::to_string(at);
    writer.group({SHIMWRIGHT_TEXT("sheet", "Choice {0}"), {std::to_string(at + 1)}}, choice, false, true);
    writer.field(choice + "/id", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Short name"), {}});
    writer.text(choice + "/title", {SHIMWRIGHT_TEXT("sheet", "Words of the choice"), {}});
    writer.field(choice + "/accepted", FieldKind::yes_no, {SHIMWRIGHT_TEXT("sheet", "Passes the step"), {}}, "", true);
    writer.unless_said("yes");
  }
  if (writer.has(step + "/choices")) {
    writer.way(step + "/choices", {SHIMWRIGHT_TEXT("sheet", "Add a choice"), {}});
  }
}

void add_step_parts(SectionWriter& writer, const std::string& step) {
  for (std::size_t at = 0; at < writer.size_of(step + "/parts"); ++at) {
    const std::string part = step + "/parts/" + std::to_string(at);
    writer.group(at == 0 ? Message{SHIMWRIGHT_TEXT("sheet", "Parts of the spec sheet"), {}} : Message(), part, true);
    writer.field(part, FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Name of the part"), {}});
  }
  if (writer.has(step + "/parts")) {
    writer.way(step + "/parts", {SHIMWRIGHT_TEXT("sheet", "Add a part"), {}});
  }
}

void add_cautions(SectionWriter& writer, const std::string& step) {
  for (std::size_t at = 0; at < writer.size_of(step + "/cautions"); ++at) {
    const std::string caution = step + "/cautions/" + std::to_string(at);
    writer.group({SHIMWRIGHT_TEXT("sheet", "Caution"), {}}, caution, false, true);
    writer.text(caution + "/hazard", {SHIMWRIGHT_TEXT("sheet", "What can hurt"), {}});
    writer.text(caution + "/precaution", {SHIMWRIGHT_TEXT("sheet", "What keeps from it"), {}});
  }
  writer.way(step + "/cautions", {SHIMWRIGHT_TEXT("sheet", "Add a caution"), {}});
}

void add_step_rules(SectionWriter& writer, const std::string& step) {
  writer.field(step + "/hold_point", FieldKind::yes_no,
               {SHIMWRIGHT_TEXT("sheet", "Hold point: the job does not go past it"), {}}, "", true);
  writer.unless_said("no");
  writer.field(step + "/may_be_not_required", FieldKind::yes_no,
               {SHIMWRIGHT_TEXT("sheet", "May be answered “not required, because …”"), {}}, "", true);
  writer.unless_said("no");
  optional_word(writer, step + "/side", {SHIMWRIGHT_TEXT("sheet", "Side"), {}}, choices_of(side_words, true));
  optional_word(writer, step + "/only_for", {SHIMWRIGHT_TEXT("sheet", "Only where the shim is found by"), {}},
                choices_of(method_words, true));
  optional_word(writer, step + "/again", {SHIMWRIGHT_TEXT("sheet", "Asked again"), {}}, choices_of(again_words, true));
  writer.field(step + "/unproven_until", FieldKind::line,
               {SHIMWRIGHT_TEXT("sheet", "Unproven until that later step is passed (blank: never)"), {}}, "", true);
  optional_word(writer, step + "/role", {SHIMWRIGHT_TEXT("sheet", "What the answer means to the job"), {}},
                choices_of(role_words, true));
  optional_word(writer, step + "/shows", {SHIMWRIGHT_TEXT("sheet", "Part of the drawing in hand"), {}},
                choices_of(drawing_words, true));
}

void add_kind_fields(SectionWriter& writer, const std::string& step) {
  const std::string kind = shown_text(value_at(writer.body(), step + "/kind"));
  if (kind == "photo") {
    writer.field(step + "/least", FieldKind::count, {SHIMWRIGHT_TEXT("sheet", "Photos at least (blank: one)"), {}}, "",
                 true);
  }
  if (kind == "float") {
    writer.field(step + "/as_found", FieldKind::yes_no,
                 {SHIMWRIGHT_TEXT("sheet", "On the old pack, for information"), {}}, "", true);
    writer.unless_said("no");
  }
  if (kind == "sign") {
    writer.word(step + "/signer", {SHIMWRIGHT_TEXT("sheet", "Signed by"), {}}, choices_of(signer_words, false));
  }
}

DraftSection step_section(const DraftJson& body, const std::string& step) {
  const std::string title = shown_text(value_at(body, step + "/title/en"));
  const DraftJson::json_pointer place(step);
  const int number = std::stoi(place.back()) + 1;
  const int stage = std::stoi(place.parent_pointer().parent_pointer().back()) + 1;
  SectionWriter writer(body, step, {"{0}.{1} {2}", {std::to_string(stage), std::to_string(number), title}});
  writer.group({SHIMWRIGHT_TEXT("sheet", "The step"), {}}, step, false, true);
  writer.field(step + "/id", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Short name, the same over all issues"), {}});
  writer.word(step + "/kind", {SHIMWRIGHT_TEXT("sheet", "Kind"), {}}, kind_choices());
  writer.text(step + "/title", {SHIMWRIGHT_TEXT("sheet", "What to do, in a few words"), {}});
  writer.text(step + "/text", {SHIMWRIGHT_TEXT("sheet", "Instruction (may be blank)"), {}}, true);
  add_kind_fields(writer, step);
  add_step_rules(writer, step);
  add_cautions(writer, step);
  add_channels(writer, step);
  add_choices(writer, step);
  add_step_parts(writer, step);
  return std::move(writer).take();
}

DraftSection stage_section(const DraftJson& body, const std::string& stage) {
  const int number = std::stoi(last_of(stage)) + 1;
  SectionWriter writer(body, stage,
                       {"{0} {1}", {std::to_string(number), shown_text(value_at(body, stage + "/title/en"))}});
  writer.group({SHIMWRIGHT_TEXT("sheet", "The stage"), {}}, stage, false, true);
  writer.field(stage + "/id", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Short name, the same over all issues"), {}});
  writer.text(stage + "/title", {SHIMWRIGHT_TEXT("sheet", "Title"), {}});
  writer.way(stage + "/steps", {SHIMWRIGHT_TEXT("sheet", "Add a step"), {}});
  return std::move(writer).take();
}

DraftSection whole_section(const DraftJson& body) {
  SectionWriter writer(body, "sheet", {SHIMWRIGHT_TEXT("sheet", "Sheet"), {}});
  writer.group({SHIMWRIGHT_TEXT("sheet", "The sheet"), {}});
  writer.field("/name", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Short name, the same over all issues"), {}});
  writer.text("/title", {SHIMWRIGHT_TEXT("sheet", "Title"), {}});
  writer.languages({SHIMWRIGHT_TEXT("sheet", "Languages beside English, as in “de fr”"), {}});
  writer.way("/stages", {SHIMWRIGHT_TEXT("sheet", "Add a stage"), {}});
  return std::move(writer).take();
}

}  // namespace

std::vector<DraftSection> job_sections(const DraftJson& body) {
  std::vector<DraftSection> sections{whole_section(body)};
  const auto size_of = [&body](const std::string& place) {
    const DraftJson* list = value_at(body, place);
    return list != nullptr && list->is_array() ? list->size() : 0;
  };
  for (std::size_t stage = 0; stage < size_of("/stages"); ++stage) {
    const std::string place = "/stages/" + std::to_string(stage);
    sections.push_back(stage_section(body, place));
    for (std::size_t step = 0; step < size_of(place + "/steps"); ++step) {
      sections.push_back(step_section(body, place + "/steps/" + std::to_string(step)));
    }
  }
  return sections;
}

}  // namespace shimwright::sheet
