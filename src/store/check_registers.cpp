#include <algorithm>
#include <array>

#include <nlohmann/json.hpp>

#include "check_parts.h"

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
  return json{{"id", text_in(row, 0)},
              {"name", text_in(row, 1)},
              {"initials", text_in(row, 2)},
              {"active", number_in(row, 3) != 0},
              {"has_pin", number_in(row, 4) != 0}};
}

Result<json> instrument_body(Connection&, const Row& row) {
  json body{{"id", text_in(row, 0)},
            {"name", text_in(row, 1)},
            {"kind", text_in(row, 2)},
            {"resolution", number_in(row, 3)},
            {"permissible_error", number_in(row, 4)}};
  add_text(body, "calibrated_to", row, 5);
  add_number(body, "turn", row, 6);
  return body;
}

Result<json> workshop_body(Connection&, const Row& row) {
  return json{{"id", text_in(row, 0)}, {"name", text_in(row, 1)}, {"address", text_in(row, 2)}};
}

Result<json> tray_body(Connection& connection, const Row& row) {
  auto rows = connection.rows("SELECT shim, thickness_um, u_nm, count FROM tray_shim WHERE tray = ? ORDER BY shim",
                              {text_in(row, 0)});
  if (!rows) {
    return passed_on(rows);
  }
  json shims = json::array();
  for (const Row& each : *rows) {
    json shim{{"shim", text_in(each, 0)}, {"thickness", number_in(each, 1)}, {"u_nm", number_in(each, 2)}};
    add_number(shim, "count", each, 3);
    shims.push_back(std::move(shim));
  }
  return json{{"id", text_in(row, 0)}, {"name", text_in(row, 1)}, {"shims", std::move(shims)}};
}

/// What is kept of one kind; the id comes first.
struct Register {
  const char* table;
  const char* items;
  Result<json> (*body)(Connection&, const Row&);
};

constexpr std::array<Register, 4> registers = {{
    {"person", "SELECT id, name, initials, active, pin_hash IS NOT NULL FROM person ORDER BY id", person_body},
    {"instrument",
     "SELECT id, name, kind, resolution, permissible_error, calibrated_to, turn_um FROM instrument ORDER BY id",
     instrument_body},
    {"tray", "SELECT id, name FROM tray ORDER BY id", tray_body},
    {"workshop", "SELECT id, name, address FROM workshop ORDER BY id", workshop_body},
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
  for (const Register& each : registers) {
    if (auto checked = check_register(connection, each, report); !checked) {
      return checked;
    }
  }
  return {};
}

}  // namespace shimwright::store
