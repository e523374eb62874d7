#include "shimwright/store/registers.h"

#include <cmath>
#include <functional>

#include "register_history.h"
#include "shimwright/store/ids.h"

namespace shimwright::store {

namespace {

using Write = std::function<Result<void>(Connection&)>;

/// An item and its line of history, in one transaction.
Result<void> put_item(Connection& connection, const std::string& table, const std::string& id, const std::string& name,
                      const nlohmann::json& body, const By& by, const Write& write) {
  if (!is_uuid(id)) {
    return refuse("bad_id", table + "/id",
                  SHIMWRIGHT_TEXT("store", "The id of this is not a UUID; report this fault."));
  }
  if (name.empty()) {
    return refuse("bad_item", table + "/name", SHIMWRIGHT_TEXT("store", "A name is needed; enter one."));
  }
  if (connection.looks_only()) {
    return refuse("look_only", "",
                  SHIMWRIGHT_TEXT("store", "The store can only be looked at here; nothing was saved."));
  }
  auto transaction = Transaction::begin(connection);
  if (!transaction) {
    return passed_on(transaction);
  }
  if (auto written = write(connection); !written) {
    return written;
  }
  if (auto added = add_change(connection, table, id, body, by); !added) {
    return added;
  }
  return transaction->commit();
}

template <class Content>
void add_if_there(nlohmann::json& body, const char* key, const std::optional<Content>& content) {
  if (content) {
    body[key] = *content;
  }
}

std::int64_t nanometres(double millimetres) {
  return std::llround(millimetres * 1e6);
}

Result<void> write_tray(Connection& connection, const Tray& tray) {
  auto written = connection.execute(
      "INSERT INTO tray (id, name) VALUES (?, ?) ON CONFLICT (id) DO UPDATE SET name = excluded.name",
      {tray.id, tray.name});
  if (!written) {
    return written;
  }
  if (auto emptied = connection.execute("DELETE FROM tray_shim WHERE tray = ?", {tray.id}); !emptied) {
    return emptied;
  }
  for (const job::TrayShim& shim : tray.shims) {
    const auto count = shim.count ? std::optional<std::int64_t>(*shim.count) : std::nullopt;
    if (auto laid =
            connection.execute("INSERT INTO tray_shim (tray, shim, thickness_um, u_nm, count) VALUES (?, ?, ?, ?, ?)",
                               {tray.id, shim.id, number_value(shim.thickness.count()),
                                number_value(nanometres(shim.u_mm)), optional_value(count)});
        !laid) {
      return laid;
    }
  }
  return {};
}

nlohmann::json body_of(const Tray& tray) {
  auto shims = nlohmann::json::array();
  for (const job::TrayShim& shim : tray.shims) {
    nlohmann::json each{{"shim", shim.id}, {"thickness", shim.thickness.count()}, {"u_nm", nanometres(shim.u_mm)}};
    add_if_there(each, "count", shim.count);
    shims.push_back(std::move(each));
  }
  return {{"id", tray.id}, {"name", tray.name}, {"shims", std::move(shims)}};
}

Result<std::vector<job::TrayShim>> shims_of(Connection& connection, const std::string& tray) {
  auto rows = connection.rows(
      "SELECT shim, thickness_um, u_nm, count FROM tray_shim WHERE tray = ? ORDER BY thickness_um, shim", {tray});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<job::TrayShim> shims;
  for (const Row& row : *rows) {
    const auto count = optional_number_in(row, 3);
    shims.push_back({text_in(row, 0), quantity::Length(number_in(row, 1)), static_cast<double>(number_in(row, 2)) / 1e6,
                     count ? std::optional(static_cast<int>(*count)) : std::nullopt});
  }
  return shims;
}

}  // namespace

Result<void> Registers::put(const Person& person, const By& by) {
  nlohmann::json body{
      {"id", person.id}, {"name", person.name}, {"initials", person.initials}, {"active", person.active}};
  // The PIN's hash stays out of the history: what is changed because it was seen must not live on there.
  body["has_pin"] = person.pin_hash.has_value();
  return put_item(*connection_, "person", person.id, person.name, body, by, [&person](Connection& connection) {
    return connection.execute(
        "INSERT INTO person (id, name, initials, pin_hash, active) VALUES (?, ?, ?, ?, ?) ON CONFLICT (id) DO UPDATE "
        "SET name = excluded.name, initials = excluded.initials, pin_hash = excluded.pin_hash, active = "
        "excluded.active",
        {person.id, person.name, person.initials, optional_value(person.pin_hash), flag_value(person.active)});
  });
}

Result<void> Registers::put(const job::Instrument& instrument, const By& by) {
  const std::string kind(sheet::name_of(instrument.kind));
  const auto turn = instrument.turn ? std::optional(instrument.turn->count()) : std::nullopt;
  nlohmann::json body{{"id", instrument.id},
                      {"name", instrument.name},
                      {"kind", kind},
                      {"resolution", instrument.resolution},
                      {"permissible_error", instrument.permissible_error}};
  add_if_there(body, "calibrated_to", instrument.calibrated_to);
  add_if_there(body, "turn", turn);
  return put_item(*connection_, "instrument", instrument.id, instrument.name, body, by, [&](Connection& connection) {
    return connection.execute(
        "INSERT INTO instrument (id, name, kind, resolution, permissible_error, calibrated_to, turn_um) VALUES (?, ?, "
        "?, ?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET name = excluded.name, kind = excluded.kind, resolution = "
        "excluded.resolution, permissible_error = excluded.permissible_error, calibrated_to = excluded.calibrated_to, "
        "turn_um = excluded.turn_um",
        {instrument.id, instrument.name, kind, number_value(instrument.resolution),
         number_value(instrument.permissible_error), optional_value(instrument.calibrated_to), optional_value(turn)});
  });
}

Result<void> Registers::put(const Tray& tray, const By& by) {
  constexpr std::size_t most_shims = 200;  // as on a spec sheet: every trial is planned over all of them
  if (tray.shims.size() > most_shims) {
    return refuse("too_many", "tray/shims",
                  SHIMWRIGHT_TEXT("store", "A tray has at most {0} shims, this one has {1}; take some out."),
                  {std::to_string(most_shims), std::to_string(tray.shims.size())});
  }
  return put_item(*connection_, "tray", tray.id, tray.name, body_of(tray), by,
                  [&tray](Connection& connection) { return write_tray(connection, tray); });
}

Result<void> Registers::put(const Workshop& workshop, const By& by) {
  const nlohmann::json body{{"id", workshop.id}, {"name", workshop.name}, {"address", workshop.address}};
  return put_item(*connection_, "workshop", workshop.id, workshop.name, body, by, [&workshop](Connection& connection) {
    return connection.execute(
        "INSERT INTO workshop (id, name, address) VALUES (?, ?, ?) ON CONFLICT (id) DO UPDATE "
        "SET name = excluded.name, address = excluded.address",
        {workshop.id, workshop.name, workshop.address});
  });
}

Result<std::vector<Person>> Registers::persons() const {
  auto rows = connection_->rows("SELECT id, name, initials, pin_hash, active FROM person ORDER BY name, id");
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<Person> persons;
  for (const Row& row : *rows) {
    persons.push_back(
        {text_in(row, 0), text_in(row, 1), text_in(row, 2), optional_text_in(row, 3), number_in(row, 4) != 0});
  }
  return persons;
}

Result<std::vector<job::Instrument>> Registers::instruments() const {
  auto rows = connection_->rows(
      "SELECT id, name, kind, resolution, permissible_error, calibrated_to, turn_um FROM instrument ORDER BY name, id");
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<job::Instrument> instruments;
  for (const Row& row : *rows) {
    const auto kind = sheet::instrument_kind_named(text_in(row, 2));
    const auto turn = optional_number_in(row, 6);
    instruments.push_back({text_in(row, 0), text_in(row, 1), kind ? *kind : sheet::InstrumentKind::dial_gauge,
                           number_in(row, 3), number_in(row, 4), optional_text_in(row, 5),
                           turn ? std::optional(quantity::Length(*turn)) : std::nullopt});
  }
  return instruments;
}

Result<std::vector<Tray>> Registers::trays() const {
  auto rows = connection_->rows("SELECT id, name FROM tray ORDER BY name");
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<Tray> trays;
  for (const Row& row : *rows) {
    auto shims = shims_of(*connection_, text_in(row, 0));
    if (!shims) {
      return passed_on(shims);
    }
    trays.push_back({text_in(row, 0), text_in(row, 1), std::move(*shims)});
  }
  return trays;
}

Result<std::optional<Tray>> Registers::tray_named(const std::string& name) const {
  auto rows = connection_->rows("SELECT id FROM tray WHERE name = ?", {name});
  if (!rows) {
    return passed_on(rows);
  }
  if (rows->empty()) {
    return std::optional<Tray>();
  }
  auto shims = shims_of(*connection_, text_in(rows->front(), 0));
  if (!shims) {
    return passed_on(shims);
  }
  return std::optional(Tray{text_in(rows->front(), 0), name, std::move(*shims)});
}

Result<std::optional<Workshop>> Registers::workshop() const {
  auto rows = connection_->rows("SELECT id, name, address FROM workshop ORDER BY id LIMIT 1");
  if (!rows) {
    return passed_on(rows);
  }
  return rows->empty() ? std::optional<Workshop>()
                       : Workshop{text_in(rows->front(), 0), text_in(rows->front(), 1), text_in(rows->front(), 2)};
}

}  // namespace shimwright::store
