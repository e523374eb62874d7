#include "shimwright/store/registers.h"

#include <array>

#include "register_put.h"
#include "schema.h"
#include "shimwright/sheet/names.h"

namespace shimwright::store {

namespace {

/// Initials tell people at the bench apart; those of a person who left may come again.
Result<void> check_initials(Connection& connection, const Person& person) {
  if (!person.active || person.initials.empty()) {
    return {};
  }
  auto others = connection.value("SELECT count(*) FROM person WHERE active = 1 AND initials = ? AND id <> ?",
                                 {person.initials, person.id});
  if (!others) {
    return passed_on(others);
  }
  if (*others != Value(std::int64_t{0})) {
    return refuse("initials_taken", "person/initials",
                  SHIMWRIGHT_TEXT("store", "Somebody else here has the initials {0}; take others."), {person.initials});
  }
  return {};
}

/// A workshop without anybody at work could not be worked in.
Result<void> check_not_last(Connection& connection, const Person& person) {
  if (person.active) {
    return {};
  }
  auto at_work = connection.value("SELECT active FROM person WHERE id = ?", {person.id});
  if (!at_work || *at_work != Value(std::int64_t{1})) {
    return at_work ? Result<void>() : passed_on(at_work);
  }
  auto others = connection.value("SELECT count(*) FROM person WHERE active = 1 AND id <> ?", {person.id});
  if (!others) {
    return passed_on(others);
  }
  if (*others == Value(std::int64_t{0})) {
    return refuse("last_person", "person/left_on",
                  SHIMWRIGHT_TEXT("store", "{0} is the last person at work here: enter another one first."),
                  {person.name});
  }
  return {};
}

Result<void> check_person(Connection& connection, const Person& person) {
  if (sheet::is_blank(person.initials)) {
    return refuse("bad_item", "person/initials", SHIMWRIGHT_TEXT("store", "Initials are needed; enter them."));
  }
  if (auto checked = check_date("person/left_on", person.left_on); !checked) {
    return checked;
  }
  if (auto checked = check_not_last(connection, person); !checked) {
    return checked;
  }
  return check_initials(connection, person);
}

nlohmann::json body_of(const Person& person) {
  nlohmann::json body{
      {"id", person.id}, {"name", person.name}, {"initials", person.initials}, {"active", person.active}};
  // The PIN's hash stays out of the history: what is changed because it was seen must not live on there.
  body["has_pin"] = person.pin_hash.has_value();
  if (person.role != PersonRole::technician) {
    body["role"] = name_of(person.role);
  }
  add_if_there(body, "left_on", person.left_on);
  add_if_there(body, "feel_nm", person.feel_nm);
  add_if_there(body, "feel_on", person.feel_on);
  return body;
}

Result<void> write_person(Connection& connection, const Person& person) {
  return connection.execute(
      "INSERT INTO person (id, name, initials, pin_hash, active, role, left_on, feel_nm, feel_on) VALUES (?, ?, ?, ?, "
      "?, ?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET name = excluded.name, initials = excluded.initials, pin_hash = "
      "excluded.pin_hash, active = excluded.active, role = excluded.role, left_on = excluded.left_on, feel_nm = "
      "excluded.feel_nm, feel_on = excluded.feel_on",
      {person.id, person.name, person.initials, optional_value(person.pin_hash), flag_value(person.active),
       text_value(name_of(person.role)), optional_value(person.left_on), optional_value(person.feel_nm),
       optional_value(person.feel_on)});
}

Result<void> check_instrument(const KeptInstrument& kept) {
  const job::Instrument& instrument = kept.instrument;
  for (const auto& [place, day] : {std::pair("instrument/calibrated_to", &instrument.calibrated_to),
                                   std::pair("instrument/calibrated_on", &instrument.calibrated_on),
                                   std::pair("instrument/repeatability_on", &kept.repeatability_on)}) {
    if (auto checked = check_date(place, *day); !checked) {
      return checked;
    }
  }
  if (instrument.resolution == 0) {
    return refuse("bad_amount", "instrument/resolution",
                  SHIMWRIGHT_TEXT("store", "Every instrument has a smallest step that it shows: enter that of {0}."),
                  {instrument.name});
  }
  for (const auto& [place, amount] : {std::pair("instrument/resolution", instrument.resolution),
                                      std::pair("instrument/permissible_error", instrument.permissible_error),
                                      std::pair("instrument/repeatability", instrument.repeatability.value_or(0))}) {
    if (auto checked = check_least(place, amount, 0); !checked) {
      return checked;
    }
  }
  return instrument.turn ? check_least("instrument/turn", instrument.turn->count(), 1) : Result<void>();
}

nlohmann::json body_of(const KeptInstrument& kept) {
  const job::Instrument& instrument = kept.instrument;
  nlohmann::json body{{"id", instrument.id},
                      {"name", instrument.name},
                      {"kind", sheet::name_of(instrument.kind)},
                      {"resolution", instrument.resolution},
                      {"permissible_error", instrument.permissible_error}};
  add_if_there(body, "calibrated_to", instrument.calibrated_to);
  add_if_there(body, "turn", instrument.turn ? std::optional(instrument.turn->count()) : std::nullopt);
  add_if_there(body, "calibrated_on", instrument.calibrated_on);
  add_if_there(body, "repeatability", instrument.repeatability);
  add_if_there(body, "repeatability_on", kept.repeatability_on);
  if (!kept.in_use) {
    body["in_use"] = false;
  }
  return body;
}

Result<void> write_instrument(Connection& connection, const KeptInstrument& kept) {
  const job::Instrument& instrument = kept.instrument;
  const auto turn = instrument.turn ? std::optional(instrument.turn->count()) : std::nullopt;
  return connection.execute(
      "INSERT INTO instrument (id, name, kind, resolution, permissible_error, calibrated_to, turn_um, calibrated_on, "
      "repeatability, repeatability_on, in_use) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO UPDATE "
      "SET "
      "name = excluded.name, kind = excluded.kind, resolution = excluded.resolution, permissible_error = "
      "excluded.permissible_error, calibrated_to = excluded.calibrated_to, turn_um = excluded.turn_um, calibrated_on = "
      "excluded.calibrated_on, repeatability = excluded.repeatability, repeatability_on = excluded.repeatability_on, "
      "in_use = excluded.in_use",
      {instrument.id, instrument.name, text_value(sheet::name_of(instrument.kind)), number_value(instrument.resolution),
       number_value(instrument.permissible_error), optional_value(instrument.calibrated_to), optional_value(turn),
       optional_value(instrument.calibrated_on), optional_value(instrument.repeatability),
       optional_value(kept.repeatability_on), flag_value(kept.in_use)});
}

KeptInstrument instrument_in(const Row& row) {
  const auto kind = sheet::instrument_kind_named(text_in(row, 2));
  const auto turn = optional_number_in(row, 6);
  KeptInstrument kept;
  kept.instrument = {text_in(row, 0),
                     text_in(row, 1),
                     kind ? *kind : sheet::InstrumentKind::dial_gauge,
                     number_in(row, 3),
                     number_in(row, 4),
                     optional_text_in(row, 5),
                     turn ? std::optional(quantity::Length(*turn)) : std::nullopt,
                     optional_text_in(row, 7),
                     optional_number_in(row, 8)};
  kept.repeatability_on = optional_text_in(row, 9);
  kept.in_use = number_in(row, 10) != 0;
  return kept;
}

}  // namespace

std::string_view name_of(PersonRole role) {
  return role == PersonRole::checker ? "checker" : "technician";
}

std::optional<PersonRole> person_role_named(std::string_view name) {
  for (const PersonRole role : {PersonRole::technician, PersonRole::checker}) {
    if (name == name_of(role)) {
      return role;
    }
  }
  return std::nullopt;
}

Result<void> Registers::put(const Person& person, const By& by) {
  if (auto checked = check_person(*connection_, person); !checked) {
    return checked;
  }
  return put_item(*connection_, {"person", person.id, person.name, body_of(person)}, by,
                  [&person](Connection& connection) { return write_person(connection, person); });
}

Result<void> Registers::put(const KeptInstrument& kept, const By& by) {
  if (auto checked = check_instrument(kept); !checked) {
    return checked;
  }
  return put_item(*connection_, {"instrument", kept.instrument.id, kept.instrument.name, body_of(kept)}, by,
                  [&kept](Connection& connection) { return write_instrument(connection, kept); });
}

Result<std::vector<Person>> Registers::persons() const {
  auto own_values = has_own_values(*connection_);
  if (!own_values) {
    return passed_on(own_values);
  }
  auto rows = connection_->rows(
      *own_values ? "SELECT id, name, initials, pin_hash, active, role, left_on, feel_nm, feel_on FROM person ORDER BY "
                    "name, id"
                  : "SELECT id, name, initials, pin_hash, active, 'technician', NULL, NULL, NULL FROM person ORDER BY "
                    "name, id");
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<Person> persons;
  for (const Row& row : *rows) {
    persons.push_back({text_in(row, 0), text_in(row, 1), text_in(row, 2), optional_text_in(row, 3),
                       number_in(row, 4) != 0, person_role_named(text_in(row, 5)).value_or(PersonRole::technician),
                       optional_text_in(row, 6), optional_number_in(row, 7), optional_text_in(row, 8)});
  }
  return persons;
}

Result<std::vector<KeptInstrument>> Registers::kept_instruments() const {
  auto own_values = has_own_values(*connection_);
  if (!own_values) {
    return passed_on(own_values);
  }
  auto rows = connection_->rows(
      *own_values ? "SELECT id, name, kind, resolution, permissible_error, calibrated_to, turn_um, calibrated_on, "
                    "repeatability, repeatability_on, in_use FROM instrument ORDER BY name, id"
                  : "SELECT id, name, kind, resolution, permissible_error, calibrated_to, turn_um, NULL, NULL, NULL, 1 "
                    "FROM instrument ORDER BY name, id");
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<KeptInstrument> instruments;
  for (const Row& row : *rows) {
    instruments.push_back(instrument_in(row));
  }
  return instruments;
}

Result<std::vector<job::Instrument>> Registers::instruments() const {
  auto all = kept_instruments();
  if (!all) {
    return passed_on(all);
  }
  std::vector<job::Instrument> in_use;
  for (KeptInstrument& each : *all) {
    if (each.in_use) {
      in_use.push_back(std::move(each.instrument));
    }
  }
  return in_use;
}

}  // namespace shimwright::store
