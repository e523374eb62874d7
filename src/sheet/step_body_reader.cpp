#include "step_body_reader.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

#include "measures.h"
#include "shimwright/sheet/names.h"

namespace shimwright::sheet {

namespace {

constexpr std::size_t most_elements = 20;
constexpr std::int64_t most_photos = 50;

/// A field of the body, the kind it belongs to, and whether that kind needs it.
struct BodyField {
  std::string_view kind;
  std::string_view name;
  bool required;
};
constexpr std::array body_fields{
    BodyField{"choose", "choices", true},       BodyField{"read", "channels", true},
    BodyField{"teach_in", "channels", true},    BodyField{"peak", "channel", true},
    BodyField{"peak", "attempts_limit", false}, BodyField{"part", "parts", true},
    BodyField{"photo", "least", false},         BodyField{"float", "as_found", false},
    BodyField{"sign", "signer", true},
};
constexpr std::array kinds{"do",   "check",     "choose", "read",  "peak",     "part", "photo",
                           "text", "gauge_fit", "depth",  "float", "teach_in", "sign"};

bool is_kind(std::string_view name) {
  return std::any_of(kinds.begin(), kinds.end(), [name](std::string_view kind) { return kind == name; });
}

void check_body_fields(Fields& step, std::string_view kind) {
  for (const BodyField& field : body_fields) {
    const bool of_kind = std::any_of(body_fields.begin(), body_fields.end(), [&field, kind](const BodyField& each) {
      return each.kind == kind && each.name == field.name;
    });
    if (!of_kind && step.has(field.name)) {
      step.refuse(
          "unknown_field", field.name,
          SHIMWRIGHT_TEXT("sheet", "A step of the kind '{0}' has no such field; remove it or correct the kind."),
          {std::string(kind)});
    }
    if (field.kind == kind && field.required && !step.has(field.name)) {
      step.refuse("missing_field", field.name,
                  SHIMWRIGHT_TEXT("sheet", "A step of the kind '{0}' needs this field; add it."), {std::string(kind)});
    }
  }
}

Result<ChannelName> read_channel_name(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"step", "channel"});
  ChannelName name;
  name.step = fields.id("step");
  name.channel = fields.id("channel");
  return fields.finish(std::move(name));
}

std::string read_limit_key(Fields& fields, std::string_view name) {
  std::string key = fields.string(name);
  if (fields.sound() && !is_key(key)) {
    fields.refuse(
        "wrong_id", name,
        SHIMWRIGHT_TEXT("sheet",
                        "'{0}' cannot be the name of a limit; use 1 to 40 small letters, digits and underscores."),
        {key});
  }
  return key;
}

Result<Channel> channel_from(Fields fields) {
  Channel channel;
  channel.id = fields.id("id");
  channel.title = fields.text("title");
  channel.unit = read_unit(fields, "unit");
  if (fields.has("limit")) {
    channel.limit = read_limit_key(fields, "limit");
  }
  if (const json::Value* equals = fields.member("equals"); equals != nullptr) {
    channel.equals = fields.take(read_channel_name(*equals, fields.place_of("equals")));
  }
  channel.instrument = fields.optional_word("instrument", instrument_kind_words);
  channel.signed_value = fields.optional_flag("signed_value");
  if (channel.instrument && dimension_read_by(*channel.instrument) != quantity::dimension_of(channel.unit)) {
    fields.refuse(
        "wrong_instrument", "instrument",
        SHIMWRIGHT_TEXT("sheet", "Such an instrument does not read this unit; correct the instrument or the unit."));
  }
  return fields.finish(std::move(channel));
}

Result<Channel> read_channel(const json::Value& value, const std::string& place) {
  return channel_from(
      Fields::open(value, place, {"id", "title", "unit"}, {"limit", "equals", "instrument", "signed_value"}));
}

// What happened once cannot equal an earlier reading by intention, and a teach-in has two values.
Result<Channel> read_lone_channel(const json::Value& value, const std::string& place) {
  return channel_from(Fields::open(value, place, {"id", "title", "unit"}, {"limit", "instrument", "signed_value"}));
}

Result<Choice> read_choice(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"id", "title"}, {"accepted"});
  Choice choice;
  choice.id = fields.id("id");
  choice.title = fields.text("title");
  choice.accepted = !fields.has("accepted") || fields.flag("accepted");
  return fields.finish(std::move(choice));
}

Result<std::string> read_part_id(const json::Value& value, const std::string& place) {
  const std::string* name = value.string();
  if (name == nullptr || !is_id(*name)) {
    return refuse(
        "wrong_id", place,
        SHIMWRIGHT_TEXT("sheet", "The name of a part in the spec sheet has to stand here, like \"pack-ring\"."));
  }
  return *name;
}

const std::string& id_of(const std::string& part) {
  return part;
}
template <class Named>
const std::string& id_of(const Named& named) {
  return named.id;
}
std::string place_of_id(const std::string& /*part*/, std::string place) {
  return place;
}
template <class Named>
std::string place_of_id(const Named& /*named*/, const std::string& place) {
  return json::pointer(place, "id");
}

template <class Element>
void refuse_repeated_ids(Fields& step, std::string_view key, const std::vector<Element>& elements) {
  for (std::size_t index = 0; index < elements.size(); ++index) {
    const std::string& id = id_of(elements[index]);
    const auto end = elements.begin() + static_cast<std::ptrdiff_t>(index);
    if (std::any_of(elements.begin(), end, [&id](const Element& each) { return id_of(each) == id; })) {
      step.refuse_at(
          "repeated_id", place_of_id(elements[index], json::pointer(step.place_of(key), index)),
          SHIMWRIGHT_TEXT("sheet", "The name '{0}' stands in this list twice; give one of the two another name."),
          {id});
    }
  }
}

template <class Reader>
auto read_named(Fields& step, std::string_view key, std::size_t least, Reader read_element) {
  auto elements = step.list(key, least, most_elements, read_element);
  refuse_repeated_ids(step, key, elements);
  return elements;
}

ChooseStep read_choose(Fields& step) {
  ChooseStep body{read_named(step, "choices", 2, read_choice)};
  if (std::none_of(body.choices.begin(), body.choices.end(), [](const Choice& each) { return each.accepted; })) {
    step.refuse(
        "no_accepted_choice", "choices",
        SHIMWRIGHT_TEXT("sheet", "No choice is accepted, so the step could never be passed; accept one at least."));
  }
  return body;
}

PeakStep read_peak(Fields& step) {
  PeakStep body;
  if (const json::Value* channel = step.member("channel"); channel != nullptr) {
    body.channel = step.take(read_lone_channel(*channel, step.place_of("channel")));
  }
  if (step.has("attempts_limit")) {
    body.attempts_limit = read_limit_key(step, "attempts_limit");
  }
  return body;
}

SignStep read_sign(Fields& step) {
  const auto signer = step.word("signer", signer_words);
  return SignStep{signer ? *signer : Signer::technician};
}

StepBody read_plain_body(Fields& step, std::string_view kind) {
  if (kind == "photo") {
    return PhotoStep{step.has("least") ? static_cast<int>(step.integer("least", 1, most_photos)) : 1};
  }
  if (kind == "float") {
    return FloatStep{step.optional_flag("as_found")};
  }
  if (kind == "check") {
    return CheckStep{};
  }
  if (kind == "text") {
    return TextStep{};
  }
  if (kind == "gauge_fit") {
    return GaugeFitStep{};
  }
  if (kind == "depth") {
    return DepthStep{};
  }
  return DoStep{};
}

}  // namespace

StepBody read_step_body(Fields& step, std::string_view kind) {
  if (!is_kind(kind)) {
    step.refuse("unknown_word", "kind",
                SHIMWRIGHT_TEXT("sheet", "'{0}' is no kind of step; docs/formats/job-sheet.md lists the kinds."),
                {std::string(kind)});
  }
  check_body_fields(step, kind);
  if (kind == "choose") {
    return read_choose(step);
  }
  if (kind == "read") {
    return ReadStep{read_named(step, "channels", 1, read_channel)};
  }
  if (kind == "teach_in") {
    return TeachInStep{read_named(step, "channels", 1, read_lone_channel)};
  }
  if (kind == "peak") {
    return read_peak(step);
  }
  if (kind == "part") {
    return PartStep{read_named(step, "parts", 1, read_part_id)};
  }
  if (kind == "sign") {
    return read_sign(step);
  }
  return read_plain_body(step, kind);
}

}  // namespace shimwright::sheet
