#include <cmath>
#include <map>
#include <set>

#include "register_put.h"
#include "schema.h"
#include "shimwright/record/hash.h"
#include "shimwright/sheet/names.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

namespace {

std::int64_t nanometres(double millimetres) {
  return std::llround(millimetres * 1e6);
}

std::optional<std::int64_t> wide(const std::optional<int>& number) {
  return number ? std::optional<std::int64_t>(*number) : std::nullopt;
}

const ShimStock& stock_of(const Tray& tray, const std::string& shim) {
  static const ShimStock nothing;
  const auto found = tray.stock.find(shim);
  return found == tray.stock.end() ? nothing : found->second;
}

/// As the engine takes them, or every reading on that side would go unjudged.
Result<void> check_measure(const std::string& place, const job::TrayShim& shim) {
  if (auto checked = check_least(place + "/thickness", shim.thickness.count(), 1); !checked) {
    return checked;
  }
  constexpr double most_u_mm = 1000.0;
  const bool reckonable = shim.u_mm > 0.0 && shim.u_mm < most_u_mm && nanometres(shim.u_mm) > 0;
  if (!reckonable) {
    return refuse("bad_amount", place + "/uncertainty",
                  SHIMWRIGHT_TEXT("store",
                                  "Nothing is measured without uncertainty: enter the one of {0}, or readings with a "
                                  "micrometer."),
                  {shim.id});
  }
  return {};
}

Result<void> check_alike(const std::string& place, const job::TrayShim& shim,
                         std::map<quantity::Length, std::string>& measured) {
  const auto [other, is_new] = measured.emplace(shim.thickness, shim.id);
  if (!is_new) {
    return refuse("shim_alike", place + "/thickness",
                  SHIMWRIGHT_TEXT("store", "{0} and {1} measure alike: keep one of them here, with the count of both."),
                  {other->second, shim.id});
  }
  return {};
}

Result<void> check_shim(const Tray& tray, const job::TrayShim& shim, std::set<std::string>& seen) {
  if (sheet::is_blank(shim.id)) {
    return refuse("bad_item", "tray/shim", SHIMWRIGHT_TEXT("store", "A name is needed; enter one."));
  }
  if (!seen.insert(shim.id).second) {
    return refuse("shim_twice", "tray/" + shim.id,
                  SHIMWRIGHT_TEXT("store", "{0} lies in this tray already; give the other one another mark."),
                  {shim.id});
  }
  const std::string place = "tray/" + shim.id;
  if (auto checked = check_measure(place, shim); !checked) {
    return checked;
  }
  if (auto checked = check_least(place + "/count", shim.count.value_or(0), 0); !checked) {
    return checked;
  }
  return check_least(place + "/reorder_at", stock_of(tray, shim.id).reorder_at.value_or(0), 0);
}

Result<void> check_tray(const Tray& tray) {
  constexpr std::size_t most_shims = 200;  // as on a spec sheet: every trial is planned over all of them
  if (tray.shims.size() > most_shims) {
    return refuse("too_many", "tray/shims",
                  SHIMWRIGHT_TEXT("store", "A tray has at most {0} shims, this one has {1}; take some out."),
                  {std::to_string(most_shims), std::to_string(tray.shims.size())});
  }
  std::set<std::string> seen;
  std::map<quantity::Length, std::string> measured;
  for (const job::TrayShim& each : tray.shims) {
    if (auto checked = check_shim(tray, each, seen); !checked) {
      return checked;
    }
    if (auto checked = check_alike("tray/" + each.id, each, measured); !checked) {
      return checked;
    }
  }
  return {};
}

Result<void> write_shim(Connection& connection, const Tray& tray, const job::TrayShim& shim) {
  const ShimStock& stock = stock_of(tray, shim.id);
  auto written = connection.execute(
      "INSERT INTO tray_shim (tray, shim, thickness_um, u_nm, count, reorder_at, counted_at_ms) VALUES (?, ?, ?, ?, ?, "
      "?, ?)",
      {tray.id, shim.id, number_value(shim.thickness.count()), number_value(nanometres(shim.u_mm)),
       optional_value(wide(shim.count)), optional_value(wide(stock.reorder_at)), optional_value(stock.counted_at_ms)});
  std::int64_t item = 0;
  for (const ShimReading& each : stock.readings) {
    if (!written) {
      break;
    }
    written = connection.execute(
        "INSERT INTO tray_reading (tray, shim, item, base, decimals, unit, instrument) VALUES (?, ?, ?, ?, ?, ?, ?)",
        {tray.id, shim.id, number_value(++item), number_value(each.number.base), number_value(each.number.decimals),
         text_value(quantity::symbol_of(each.number.unit)), each.instrument});
  }
  return written;
}

Result<void> write_tray(Connection& connection, const Tray& tray) {
  auto written = connection.execute(
      "INSERT INTO tray (id, name) VALUES (?, ?) ON CONFLICT (id) DO UPDATE SET name = excluded.name",
      {tray.id, tray.name});
  for (const char* emptied : {"DELETE FROM tray_reading WHERE tray = ?", "DELETE FROM tray_shim WHERE tray = ?"}) {
    written = written ? connection.execute(emptied, {tray.id}) : written;
  }
  for (const job::TrayShim& shim : tray.shims) {
    written = written ? write_shim(connection, tray, shim) : written;
  }
  return written;
}

nlohmann::json body_of(const ShimReading& reading) {
  return {{"base", reading.number.base},
          {"decimals", reading.number.decimals},
          {"unit", quantity::symbol_of(reading.number.unit)},
          {"instrument", reading.instrument}};
}

nlohmann::json body_of(const Tray& tray) {
  auto shims = nlohmann::json::array();
  for (const job::TrayShim& shim : tray.shims) {
    const ShimStock& stock = stock_of(tray, shim.id);
    nlohmann::json each{{"shim", shim.id}, {"thickness", shim.thickness.count()}, {"u_nm", nanometres(shim.u_mm)}};
    add_if_there(each, "count", shim.count);
    add_if_there(each, "reorder_at", stock.reorder_at);
    add_if_there(each, "counted_at_ms", stock.counted_at_ms);
    for (const ShimReading& reading : stock.readings) {
      each["readings"].push_back(body_of(reading));
    }
    shims.push_back(std::move(each));
  }
  return {{"id", tray.id}, {"name", tray.name}, {"shims", std::move(shims)}};
}

Result<void> read_readings(Connection& connection, Tray& tray) {
  auto rows = connection.rows(
      "SELECT shim, base, decimals, unit, instrument FROM tray_reading WHERE tray = ? ORDER BY shim, item", {tray.id});
  if (!rows) {
    return passed_on(rows);
  }
  for (const Row& row : *rows) {
    const auto unit = quantity::unit_with_symbol(text_in(row, 3)).value_or(quantity::Unit::millimetre);
    tray.stock[text_in(row, 0)].readings.push_back(
        {{number_in(row, 1), static_cast<int>(number_in(row, 2)), unit}, text_in(row, 4)});
  }
  return {};
}

Result<Tray> read_tray(Connection& connection, const std::string& id, const std::string& name, bool own_values) {
  Tray tray{id, name, {}};
  auto rows = connection.rows(
      own_values ? "SELECT shim, thickness_um, u_nm, count, reorder_at, counted_at_ms FROM tray_shim WHERE tray = ? "
                   "ORDER BY thickness_um, shim"
                 : "SELECT shim, thickness_um, u_nm, count, NULL, NULL FROM tray_shim WHERE tray = ? ORDER BY "
                   "thickness_um, shim",
      {id});
  if (!rows) {
    return passed_on(rows);
  }
  const auto small = [](const std::optional<std::int64_t>& number) {
    return number ? std::optional(static_cast<int>(*number)) : std::nullopt;
  };
  for (const Row& row : *rows) {
    const std::string shim = text_in(row, 0);
    tray.shims.push_back({shim, quantity::Length(number_in(row, 1)), static_cast<double>(number_in(row, 2)) / 1e6,
                          small(optional_number_in(row, 3))});
    const ShimStock stock{small(optional_number_in(row, 4)), optional_number_in(row, 5), {}};
    if (stock != ShimStock()) {
      tray.stock[shim] = stock;
    }
  }
  if (own_values) {
    if (auto read = read_readings(connection, tray); !read) {
      return passed_on(read);
    }
  }
  return tray;
}

/// The picture is known by its hash: the history need not hold it.
nlohmann::json body_of(const Workshop& workshop) {
  nlohmann::json body{{"id", workshop.id}, {"name", workshop.name}, {"address", workshop.address}};
  if (workshop.logo) {
    body["logo"] = {{"media_type", workshop.logo->media_type}, {"sha256", record::sha256_hex(workshop.logo->bytes)}};
  }
  return body;
}

bool begins_with(const std::string& bytes, std::string_view beginning) {
  return std::string_view(bytes).substr(0, beginning.size()) == beginning;
}

}  // namespace

Result<void> check_logo(const Logo& logo) {
  constexpr std::size_t most_bytes = 500'000;  // it is in every backup
  const bool is_png = logo.media_type == "image/png" && begins_with(logo.bytes, "\x89PNG");
  const bool is_jpeg = logo.media_type == "image/jpeg" && begins_with(logo.bytes, "\xFF\xD8\xFF");
  if ((!is_png && !is_jpeg) || logo.bytes.size() > most_bytes) {
    return refuse("logo_unusable", "workshop/logo",
                  SHIMWRIGHT_TEXT("store", "A logo is a PNG or JPEG picture of at most 500 kB; choose another."));
  }
  return {};
}

Result<void> Registers::put(const Tray& tray, const By& by) {
  if (auto checked = check_tray(tray); !checked) {
    return checked;
  }
  return put_item(*connection_, {"tray", tray.id, tray.name, body_of(tray)}, by,
                  [&tray](Connection& connection) { return write_tray(connection, tray); });
}

Result<void> Registers::put(const Workshop& workshop, const By& by) {
  if (auto checked = workshop.logo ? check_logo(*workshop.logo) : Result<void>(); !checked) {
    return checked;
  }
  return put_item(
      *connection_, {"workshop", workshop.id, workshop.name, body_of(workshop)}, by,
      [&workshop](Connection& connection) {
        const Value type = workshop.logo ? Value(workshop.logo->media_type) : Value();
        const Value bytes = workshop.logo ? Value(Bytes{workshop.logo->bytes}) : Value();
        return connection.execute(
            "INSERT INTO workshop (id, name, address, logo_type, logo) VALUES (?, ?, ?, ?, ?) ON CONFLICT (id) DO "
            "UPDATE SET name = excluded.name, address = excluded.address, logo_type = excluded.logo_type, logo = "
            "excluded.logo",
            {workshop.id, workshop.name, workshop.address, type, bytes});
      });
}

Result<std::vector<Tray>> Registers::trays() const {
  auto own_values = has_own_values(*connection_);
  if (!own_values) {
    return passed_on(own_values);
  }
  auto rows = connection_->rows("SELECT id, name FROM tray ORDER BY name");
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<Tray> trays;
  for (const Row& row : *rows) {
    auto tray = read_tray(*connection_, text_in(row, 0), text_in(row, 1), *own_values);
    if (!tray) {
      return passed_on(tray);
    }
    trays.push_back(std::move(*tray));
  }
  return trays;
}

Result<std::optional<Tray>> Registers::tray_named(const std::string& name) const {
  auto own_values = has_own_values(*connection_);
  if (!own_values) {
    return passed_on(own_values);
  }
  auto rows = connection_->rows("SELECT id FROM tray WHERE name = ?", {name});
  if (!rows) {
    return passed_on(rows);
  }
  if (rows->empty()) {
    return std::optional<Tray>();
  }
  auto tray = read_tray(*connection_, text_in(rows->front(), 0), name, *own_values);
  if (!tray) {
    return passed_on(tray);
  }
  return std::optional(std::move(*tray));
}

Result<std::optional<Workshop>> Registers::workshop() const {
  auto own_values = has_own_values(*connection_);
  if (!own_values) {
    return passed_on(own_values);
  }
  auto rows =
      connection_->rows(*own_values ? "SELECT id, name, address, logo_type, logo FROM workshop ORDER BY id LIMIT 1"
                                    : "SELECT id, name, address, NULL, NULL FROM workshop ORDER BY id LIMIT 1");
  if (!rows) {
    return passed_on(rows);
  }
  if (rows->empty()) {
    return std::optional<Workshop>();
  }
  const Row& row = rows->front();
  Workshop workshop{text_in(row, 0), text_in(row, 1), text_in(row, 2)};
  if (const auto type = optional_text_in(row, 3)) {
    workshop.logo = Logo{*type, bytes_in(row, 4)};
  }
  return std::optional(std::move(workshop));
}

}  // namespace shimwright::store
