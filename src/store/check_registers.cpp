#include <algorithm>
#include <array>

#include <nlohmann/json.hpp>

#include "check_parts.h"
#include "schema.h"
#include "shimwright/record/hash.h"

namespace shimwright::store {

namespace {

using nlohmann::json;

void add_text(json& body, const char* key, const Row& row, std::size_t column) {
  if (auto text = optional_text_in(row, column)) {
    body[key] = std::move(*text);
  }
}

void add_number(json& body, const char* key, const Row& row, std::size_t column) {
  if (const auto number = optional_number_in(row, column)) {
    body[key] = *number;
  }
}

Result<json> person_body(Connection&, const Row& row) {
  json body{{"id", text_in(row, 0)},
            {"name", text_in(row, 1)},
            {"initials", text_in(row, 2)},
            {"active", number_in(row, 3) != 0},
            {"has_pin", number_in(row, 4) != 0}};
  if (text_in(row, 5) != "technician") {
    body["role"] = text_in(row, 5);
  }
  add_text(body, "left_on", row, 6);
  add_number(body, "feel_nm", row, 7);
  add_text(body, "feel_on", row, 8);
  return body;
}

Result<json> instrument_body(Connection&, const Row& row) {
  json body{{"id", text_in(row, 0)},
            {"name", text_in(row, 1)},
            {"kind", text_in(row, 2)},
            {"resolution", number_in(row, 3)},
            {"permissible_error", number_in(row, 4)}};
  add_text(body, "calibrated_to", row, 5);
  add_number(body, "turn", row, 6);
  add_text(body, "calibrated_on", row, 7);
  add_number(body, "repeatability", row, 8);
  add_text(body, "repeatability_on", row, 9);
  if (number_in(row, 10) == 0) {
    body["in_use"] = false;
  }
  return body;
}

Result<json> workshop_body(Connection&, const Row& row) {
  json body{{"id", text_in(row, 0)}, {"name", text_in(row, 1)}, {"address", text_in(row, 2)}};
  if (const auto type = optional_text_in(row, 3)) {
    body["logo"] = {{"media_type", *type}, {"sha256", record::sha256_hex(bytes_in(row, 4))}};
  }
  return body;
}

Result<bool> add_readings(Connection& connection, const std::string& tray, json& shim) {
  auto rows = connection.rows(
      "SELECT base, decimals, unit, instrument FROM tray_reading WHERE tray = ? AND shim = ? ORDER BY item",
      {tray, shim["shim"].get<std::string>()});
  if (!rows) {
    return passed_on(rows);
  }
  for (const Row& each : *rows) {
    shim["readings"].push_back({{"base", number_in(each, 0)},
                                {"decimals", number_in(each, 1)},
                                {"unit", text_in(each, 2)},
                                {"instrument", text_in(each, 3)}});
  }
  return true;
}

Result<json> tray_body_of(Connection& connection, const Row& row, const char* sql, bool with_readings) {
  auto rows = connection.rows(sql, {text_in(row, 0)});
  if (!rows) {
    return passed_on(rows);
  }
  json shims = json::array();
  for (const Row& each : *rows) {
    json shim{{"shim", text_in(each, 0)}, {"thickness", number_in(each, 1)}, {"u_nm", number_in(each, 2)}};
    add_number(shim, "count", each, 3);
    add_number(shim, "reorder_at", each, 4);
    add_number(shim, "counted_at_ms", each, 5);
    if (with_readings) {
      if (auto added = add_readings(connection, text_in(row, 0), shim); !added) {
        return passed_on(added);
      }
    }
    shims.push_back(std::move(shim));
  }
  return json{{"id", text_in(row, 0)}, {"name", text_in(row, 1)}, {"shims", std::move(shims)}};
}

Result<json> tray_body(Connection& connection, const Row& row) {
  return tray_body_of(connection, row,
                      "SELECT shim, thickness_um, u_nm, count, reorder_at, counted_at_ms FROM tray_shim WHERE tray = ? "
                      "ORDER BY shim",
                      true);
}

Result<json> old_tray_body(Connection& connection, const Row& row) {
  return tray_body_of(connection, row,
                      "SELECT shim, thickness_um, u_nm, count, NULL, NULL FROM tray_shim WHERE tray = ? ORDER BY shim",
                      false);
}

/// What is kept of one kind; the id comes first.
struct Register {
  const char* table;
  const char* items;
  Result<json> (*body)(Connection&, const Row&);
};

using FourRegisters = std::array<Register, 4>;

constexpr FourRegisters registers = {{
    {"person",
     "SELECT id, name, initials, active, pin_hash IS NOT NULL, role, left_on, feel_nm, feel_on FROM person ORDER BY id",
     person_body},
    {"instrument",
     "SELECT id, name, kind, resolution, permissible_error, calibrated_to, turn_um, calibrated_on, repeatability, "
     "repeatability_on, in_use FROM instrument ORDER BY id",
     instrument_body},
    {"tray", "SELECT id, name FROM tray ORDER BY id", tray_body},
    {"workshop", "SELECT id, name, address, logo_type, logo FROM workshop ORDER BY id", workshop_body},
}};

/// As they were before the workshop's own values were kept.
constexpr FourRegisters old_registers = {{
    {"person",
     "SELECT id, name, initials, active, pin_hash IS NOT NULL, 'technician', NULL, NULL, NULL FROM person ORDER BY id",
     person_body},
    {"instrument",
     "SELECT id, name, kind, resolution, permissible_error, calibrated_to, turn_um, NULL, NULL, NULL, 1 FROM "
     "instrument ORDER BY id",
     instrument_body},
    {"tray", "SELECT id, name FROM tray ORDER BY id", old_tray_body},
    {"workshop", "SELECT id, name, address, NULL, NULL FROM workshop ORDER BY id", workshop_body},
}};

/// What the history says last of each item.
Result<std::map<std::string, json>> last_bodies(Connection& connection, const char* table) {
  auto rows =
      connection.rows("SELECT item, body FROM register_change WHERE register = ? ORDER BY item, position", {table});
  if (!rows) {
    return passed_on(rows);
  }
  std::map<std::string, json> bodies;
  for (const Row& row : *rows) {
    json body = json::parse(bytes_in(row, 1), nullptr, false);
    // A tray is written down as it was entered; only what lies in it counts.
    if (body.is_object() && body.contains("shims") && body["shims"].is_array()) {
      json& shims = body["shims"];
      std::sort(shims.begin(), shims.end(), [](const json& one, const json& other) {
        return one.is_object() && other.is_object() && one.value("shim", json()) < other.value("shim", json());
      });
    }
    bodies[text_in(row, 0)] = std::move(body);
  }
  return bodies;
}

Result<void> check_register(Connection& connection, const Register& each, CheckReport& report) {
  auto last = last_bodies(connection, each.table);
  if (!last) {
    return passed_on(last);
  }
  auto rows = connection.rows(each.items);
  if (!rows) {
    return passed_on(rows);
  }
  for (const Row& row : *rows) {
    auto body = each.body(connection, row);
    if (!body) {
      return passed_on(body);
    }
    const auto entered = last->find(text_in(row, 0));
    if (entered == last->end() || entered->second != *body) {
      add_finding(report, "register_differs", each.table, "", std::nullopt,
                  {SHIMWRIGHT_TEXT("store", "“{0}” is not as it was last entered here; look at it and enter it anew."),
                   {text_in(row, 1)}});
    }
    last->erase(text_in(row, 0));
  }
  for (const auto& [item, body] : *last) {
    add_finding(report, "register_item_missing", each.table, "", std::nullopt,
                {SHIMWRIGHT_TEXT("store", "{0} was entered here and is gone."), {item}});
  }
  return {};
}

}  // namespace

Result<void> check_registers(Connection& connection, CheckReport& report) {
  auto own_values = has_own_values(connection);
  if (!own_values) {
    return passed_on(own_values);
  }
  for (const Register& each : *own_values ? registers : old_registers) {
    if (auto checked = check_register(connection, each, report); !checked) {
      return checked;
    }
  }
  return {};
}

}  // namespace shimwright::store
