#include "script.h"

#include "script_checks.h"
#include "shimwright/json/object_reader.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/record/signing_key.h"

namespace shimwright::cli {

namespace {

using json::ObjectReader;

template <class Item, class Reader>
Result<std::vector<Item>> read_list(const ObjectReader& reader, std::string_view key, Reader read_item) {
  std::vector<Item> items;
  if (!reader.has(key)) {
    return items;
  }
  auto list = reader.array(key);
  if (!list) {
    return tl::make_unexpected(list.error());
  }
  for (std::size_t at = 0; at < (*list)->size(); ++at) {
    auto item = read_item((**list)[at], json::pointer(reader.place_of(key), at));
    if (!item) {
      return tl::make_unexpected(item.error());
    }
    items.push_back(*std::move(item));
  }
  return items;
}

Result<ScriptPerson> read_person(const json::Value& value, const std::string& place) {
  auto reader = ObjectReader::open(value, place, {"initials", "name"}, {"pin"});
  if (!reader) {
    return tl::make_unexpected(reader.error());
  }
  auto initials = reader->string("initials");
  auto name = reader->string("name");
  if (!initials || !name) {
    return tl::make_unexpected(initials ? name.error() : initials.error());
  }
  auto pin = reader->has("pin") ? reader->string("pin") : Result<std::string>(std::string());
  if (!pin) {
    return tl::make_unexpected(pin.error());
  }
  std::string digits = *pin;
  if (auto fits = record::check_pin(record::Pin::taken_from(digits)); !pin->empty() && !fits) {
    return refuse(fits.error().code, reader->place_of("pin"), fits.error().message.text,
                  fits.error().message.arguments);
  }
  return ScriptPerson{*initials, *name, *pin};
}

quantity::Unit unit_read_by(sheet::InstrumentKind kind) {
  return quantity::default_unit(sheet::dimension_read_by(kind));
}

Result<std::int64_t> read_number_field(const ObjectReader& reader, std::string_view key, quantity::Unit unit) {
  auto text = reader.string(key);
  if (!text) {
    return tl::make_unexpected(text.error());
  }
  auto number = quantity::read_number(*text, unit);
  if (!number) {
    Error error = number.error();
    error.place = reader.place_of(key);
    return tl::make_unexpected(std::move(error));
  }
  return number->base;
}

Result<job::Instrument> read_instrument(const json::Value& value, const std::string& place) {
  auto reader =
      ObjectReader::open(value, place, {"name", "kind", "resolution", "permissible_error"}, {"calibrated_to", "turn"});
  if (!reader) {
    return tl::make_unexpected(reader.error());
  }
  auto name = reader->string("name");
  auto kind_name = reader->string("kind");
  if (!name || !kind_name) {
    return tl::make_unexpected(name ? kind_name.error() : name.error());
  }
  const auto kind = sheet::instrument_kind_named(*kind_name);
  if (!kind) {
    return refuse("unknown_name", reader->place_of("kind"),
                  SHIMWRIGHT_TEXT("cli", "“{0}” is no kind of instrument: see the list in docs/formats/script.md."),
                  {*kind_name});
  }
  job::Instrument instrument;
  instrument.name = *name;
  instrument.kind = *kind;
  auto resolution = read_number_field(*reader, "resolution", unit_read_by(*kind));
  auto error = resolution ? read_number_field(*reader, "permissible_error", unit_read_by(*kind)) : resolution;
  if (!error) {
    return tl::make_unexpected(error.error());
  }
  instrument.resolution = *resolution;
  instrument.permissible_error = *error;
  if (reader->has("calibrated_to")) {
    auto date = reader->string("calibrated_to");
    if (!date) {
      return tl::make_unexpected(date.error());
    }
    instrument.calibrated_to = *date;
  }
  if (reader->has("turn")) {
    auto turn = read_number_field(*reader, "turn", quantity::Unit::millimetre);
    if (!turn) {
      return tl::make_unexpected(turn.error());
    }
    instrument.turn = quantity::Length(*turn);
  }
  return instrument;
}

Result<job::TrayShim> read_tray_shim(const json::Value& value, const std::string& place) {
  auto reader = ObjectReader::open(value, place, {"id", "thickness", "u_um"}, {"count"});
  if (!reader) {
    return tl::make_unexpected(reader.error());
  }
  auto id = reader->string("id");
  if (!id) {
    return tl::make_unexpected(id.error());
  }
  auto thickness = read_number_field(*reader, "thickness", quantity::Unit::millimetre);
  auto uncertainty = thickness ? reader->integer("u_um", 1, 1000) : thickness;
  if (!uncertainty) {
    return tl::make_unexpected(uncertainty.error());
  }
  job::TrayShim shim{*id, quantity::Length(*thickness), static_cast<double>(*uncertainty) / 1000.0, std::nullopt};
  if (reader->has("count")) {
    auto count = reader->integer("count", 0, 100'000);
    if (!count) {
      return tl::make_unexpected(count.error());
    }
    shim.count = static_cast<int>(*count);
  }
  return shim;
}

Result<ScriptTray> read_tray(const json::Value& value, const std::string& place) {
  auto reader = ObjectReader::open(value, place, {"name", "shims"});
  if (!reader) {
    return tl::make_unexpected(reader.error());
  }
  auto name = reader->string("name");
  if (!name) {
    return tl::make_unexpected(name.error());
  }
  auto shims = read_list<job::TrayShim>(*reader, "shims", read_tray_shim);
  if (!shims) {
    return tl::make_unexpected(shims.error());
  }
  if (shims->empty()) {
    return refuse("nothing_there", reader->place_of("shims"),
                  SHIMWRIGHT_TEXT("cli", "This tray has no shims: list them, or leave the tray out."));
  }
  constexpr std::size_t most_shims = 200;  // as on a spec sheet: every trial is planned over all of them
  if (shims->size() > most_shims) {
    return refuse("too_many", reader->place_of("shims"),
                  SHIMWRIGHT_TEXT("cli", "A tray has at most {0} shims, this one has {1}: shorten it."),
                  {std::to_string(most_shims), std::to_string(shims->size())});
  }
  return ScriptTray{*name, *std::move(shims)};
}

Result<void> read_head(const ObjectReader& reader, Script& script) {
  auto format = reader.string("format");
  if (!format || *format != "shimwright.script") {
    return refuse("wrong_format", reader.place_of("format"),
                  SHIMWRIGHT_TEXT("cli", "This is no script: its format must be “shimwright.script”."));
  }
  auto least_reader = reader.integer("min_reader", 1, 1'000'000);
  if (!least_reader) {
    return tl::make_unexpected(least_reader.error());
  }
  if (*least_reader > 1) {
    return refuse("newer_format", reader.place_of("min_reader"),
                  SHIMWRIGHT_TEXT(
                      "cli", "This script was made for a newer version of the program: bring the program up to date."));
  }
  for (const auto& [key, text] :
       {std::pair{"title", &script.title}, std::pair{"sheet", &script.sheet}, std::pair{"spec", &script.spec},
        std::pair{"workshop", &script.workshop_name}, std::pair{"address", &script.workshop_address}}) {
    auto value = reader.string(key);
    if (!value) {
      return tl::make_unexpected(value.error());
    }
    *text = *std::move(value);
  }
  return {};
}

/// Where a text holds the character U+0000, which ends a text for many programs.
// NOLINTNEXTLINE(misc-no-recursion): no deeper than the reader of JSON allows
std::optional<std::string> place_of_nought(const json::Value& value, const std::string& place) {
  if (const std::string* text = value.string()) {
    return text->find('\0') == std::string::npos ? std::nullopt : std::optional(place);
  }
  std::optional<std::string> found;
  if (const json::Array* array = value.array()) {
    for (std::size_t at = 0; at < array->size() && !found; ++at) {
      found = place_of_nought((*array)[at], json::pointer(place, at));
    }
  }
  if (const json::Object* object = value.object()) {
    for (auto each = object->begin(); each != object->end() && !found; ++each) {
      found = place_of_nought(each->second, json::pointer(place, each->first));
    }
  }
  return found;
}

}  // namespace

Result<Script> read_script(std::string_view json_text) {
  auto value = json::parse(json_text);
  if (!value) {
    return tl::make_unexpected(value.error());
  }
  if (const auto place = place_of_nought(*value, "")) {
    return refuse("bad_text", *place,
                  SHIMWRIGHT_TEXT("cli", "This text holds the character U+0000, which no text may: take it out."));
  }
  auto reader = ObjectReader::open(*value, "",
                                   {"format", "version", "min_reader", "title", "workshop", "address", "sheet", "spec",
                                    "people", "instruments", "commands"},
                                   {"trays"});
  if (!reader) {
    return tl::make_unexpected(reader.error());
  }
  Script script;
  if (auto head = read_head(*reader, script); !head) {
    return tl::make_unexpected(head.error());
  }
  auto people = read_list<ScriptPerson>(*reader, "people", read_person);
  if (!people) {
    return tl::make_unexpected(people.error());
  }
  auto instruments = read_list<job::Instrument>(*reader, "instruments", read_instrument);
  if (!instruments) {
    return tl::make_unexpected(instruments.error());
  }
  auto trays = read_list<ScriptTray>(*reader, "trays", read_tray);
  if (!trays) {
    return tl::make_unexpected(trays.error());
  }
  auto commands = read_list<ScriptCommand>(*reader, "commands", read_script_command);
  if (!commands) {
    return tl::make_unexpected(commands.error());
  }
  script.people = *std::move(people);
  script.instruments = *std::move(instruments);
  script.trays = *std::move(trays);
  script.commands = *std::move(commands);
  if (auto names = check_names(script); !names) {
    return tl::make_unexpected(names.error());
  }
  return script;
}

}  // namespace shimwright::cli
