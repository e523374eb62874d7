#include "shimwright/record/measurement_table.h"

#include <array>
#include <chrono>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "record_json_parts.h"
#include "shimwright/json/canonical.h"
#include "shimwright/record/measurements.h"

namespace shimwright::record {

namespace {

using parts_json::Json;
using quantity::Dimension;

constexpr std::array<Dimension, 11> dimensions = {Dimension::length,  Dimension::torque,      Dimension::mass,
                                                  Dimension::angle,   Dimension::temperature, Dimension::voltage,
                                                  Dimension::volume,  Dimension::pressure,    Dimension::count,
                                                  Dimension::percent, Dimension::distance};

constexpr std::array<const char*, 29> first_heads = {"job",
                                                     "number",
                                                     "vehicle",
                                                     "plate",
                                                     "customer reference",
                                                     "gearbox",
                                                     "gearbox serial",
                                                     "spec sheet",
                                                     "spec sheet issue",
                                                     "opened",
                                                     "closed",
                                                     "entry",
                                                     "at",
                                                     "person",
                                                     "kind",
                                                     "stage",
                                                     "step",
                                                     "step title",
                                                     "assembly",
                                                     "side",
                                                     "channel",
                                                     "channel title",
                                                     "as found",
                                                     "spot",
                                                     "series",
                                                     "attempt",
                                                     "shim",
                                                     "word",
                                                     "counts"};

/// ISO 8601 with the offset of that place and day.
std::string iso_time(const job::Moment& moment) {
  using std::chrono::milliseconds;
  using std::chrono::minutes;
  const std::chrono::sys_time<milliseconds> local(milliseconds(moment.at_ms) + minutes(moment.offset_min));
  const auto day = std::chrono::floor<std::chrono::days>(local);
  const std::chrono::year_month_day date(day);
  const auto seconds = std::chrono::floor<std::chrono::seconds>(local - day).count();
  const int offset = moment.offset_min < 0 ? -moment.offset_min : moment.offset_min;
  return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}{}{:02}:{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()), seconds / 3600,
                     seconds / 60 % 60, seconds % 60, moment.offset_min < 0 ? '-' : '+', offset / 60, offset % 60);
}

std::string in_quotes(const std::string& text) {
  if (text.find_first_of("\",\r\n") == std::string::npos) {
    return text;
  }
  std::string safe = "\"";
  for (const char each : text) {
    safe += each == '"' ? "\"\"" : std::string(1, each);
  }
  return safe + "\"";
}

/// A text of a person; never taken for a formula, not even where a program parts cells at a semicolon or a tabulator
/// that stands in it.
std::string words(const std::string& text) {
  constexpr std::string_view begins_formula = "=+-@\t\r\n";
  constexpr std::string_view parts_cells = ";\t\r\n";
  std::string safe;
  bool begins_cell = true;
  for (const char each : text) {
    if (begins_cell && begins_formula.find(each) != std::string_view::npos) {
      safe += '\'';
    }
    safe += each;
    begins_cell = parts_cells.find(each) != std::string_view::npos;
  }
  return in_quotes(safe);
}

template <class Number>
std::string whole(const std::optional<Number>& number) {
  return number ? std::to_string(*number) : std::string();
}

std::string yes_or_no(bool yes) {
  return yes ? "1" : "0";
}

/// Nothing: none was given.
std::string text_of_personal(const std::optional<Personal>& personal) {
  if (!personal) {
    return {};
  }
  return personal->content ? personal->content->text : std::string("erased");
}

/// In the unit of the column, as many digits as it takes to give the stored value back.
std::string in_column(std::int64_t base, Dimension dimension) {
  const quantity::Unit unit = quantity::default_unit(dimension);
  return quantity::digits_of({base, quantity::finest_decimals(unit), unit});
}

std::string column(Dimension dimension, std::string_view before) {
  const std::string_view symbol = quantity::symbol_of(quantity::default_unit(dimension));
  return fmt::format("{}{} [{}]", before, quantity::name_of(dimension), symbol.empty() ? "pieces" : symbol);
}

std::vector<std::string> job_cells(const std::string& job, const Record& record) {
  return {words(job),
          words(record.job.number),
          words(record.vehicle.key),
          words(text_of_personal(record.vehicle.plate)),
          words(text_of_personal(record.vehicle.customer_reference)),
          words(record.vehicle.gearbox),
          words(record.vehicle.gearbox_serial.value_or(std::string())),
          words(record.job.spec.name),
          std::to_string(record.job.spec.issue),
          iso_time(record.job.opened.moment),
          record.job.closed ? iso_time(record.job.closed->moment) : std::string()};
}

void add_line_cells(std::vector<std::string>& cells, const Measurement& line) {
  const bool has_assembly = !line.place.once && line.kind != MeasurementKind::odometer;
  for (std::string& cell : std::vector<std::string>{
           std::to_string(line.stamp.entry), iso_time(line.stamp.moment), words(line.stamp.initials),
           std::string(name_of(line.kind)), words(line.place.stage), words(line.place.step), words(line.place.title),
           has_assembly ? std::to_string(line.place.assembly) : std::string(),
           line.side ? std::string(sheet::name_of(*line.side)) : std::string(), words(line.channel),
           words(line.channel_title),
           line.kind == MeasurementKind::float_run ? yes_or_no(line.as_found) : std::string(), whole(line.spot),
           whole(line.series), whole(line.attempt), words(line.shim), words(line.word), yes_or_no(line.counts)}) {
    cells.push_back(std::move(cell));
  }
}

void add_number_cells(std::vector<std::string>& cells, const Measurement& line) {
  cells.push_back(line.number ? words(quantity::text_of(*line.number)) : std::string());
  for (const Dimension dimension : dimensions) {
    const bool here = line.number && quantity::dimension_of(line.number->unit) == dimension;
    cells.push_back(here ? in_column(line.number->base, dimension) : std::string());
    const bool limited = here && line.limit;
    cells.push_back(limited && line.limit->least ? in_column(*line.limit->least, dimension) : std::string());
    cells.push_back(limited && line.limit->most ? in_column(*line.limit->most, dimension) : std::string());
  }
  cells.emplace_back(job::name_of(line.verdict));
  cells.push_back(line.instrument ? words(line.instrument->name) : std::string());
}

std::string line_of(const std::vector<std::string>& cells) {
  std::string line;
  for (const std::string& cell : cells) {
    line += &cell == &cells.front() ? cell : "," + cell;
  }
  return line + "\r\n";
}

Json number_json(const Measurement& line) {
  Json json;
  json["kind"] = std::string(name_of(line.kind));
  json["stamp"] = parts_json::of(line.stamp);
  json["counts"] = line.counts;
  if (!line.place.step.empty()) {
    json["place"] = parts_json::of(line.place);
  } else if (line.kind != MeasurementKind::odometer) {
    json["assembly"] = line.place.assembly;
  }
  if (line.side) {
    json["side"] = std::string(sheet::name_of(*line.side));
  }
  for (const auto& [key, text] : {std::pair("channel", &line.channel), std::pair("channel_title", &line.channel_title),
                                  std::pair("shim", &line.shim), std::pair("word", &line.word)}) {
    if (!text->empty()) {
      json[key] = *text;
    }
  }
  if (line.kind == MeasurementKind::float_run) {
    json["as_found"] = line.as_found;
  }
  parts_json::put(json, "spot", line.spot);
  parts_json::put(json, "series", line.series);
  parts_json::put(json, "attempt", line.attempt);
  parts_json::put(json, "number", line.number);
  if (line.verdict != ReadingVerdict::none) {
    json["verdict"] = std::string(job::name_of(line.verdict));
  }
  parts_json::put(json, "limit", line.limit);
  parts_json::put(json, "instrument", line.instrument);
  return json;
}

}  // namespace

std::string csv_head() {
  std::vector<std::string> heads(first_heads.begin(), first_heads.end());
  heads.emplace_back("as typed");
  for (const Dimension dimension : dimensions) {
    for (const std::string_view before : {"", "least ", "most "}) {
      heads.push_back(column(dimension, before));
    }
  }
  heads.emplace_back("verdict");
  heads.emplace_back("instrument");
  return line_of(heads);
}

std::string csv_lines(const std::string& job, const Record& record) {
  const std::vector<std::string> of_job = job_cells(job, record);
  std::string lines;
  for (const Measurement& each : measurements(record)) {
    std::vector<std::string> cells = of_job;
    add_line_cells(cells, each);
    add_number_cells(cells, each);
    lines += line_of(cells);
  }
  return lines;
}

std::string measurements_begin() {
  return R"({"format":"shimwright.measurements","jobs":[)";
}

std::string measurements_end() {
  return R"(],"min_reader":1,"version":1})";
}

std::string measurements_json(const std::string& job, const Record& record) {
  Json lines = Json::array();
  for (const Measurement& each : measurements(record)) {
    lines.push_back(number_json(each));
  }
  Json json{{"job", job},
            {"number", record.job.number},
            {"vehicle", record.vehicle.key},
            {"gearbox", record.vehicle.gearbox},
            {"spec_sheet", {{"name", record.job.spec.name}, {"issue", record.job.spec.issue}}},
            {"demonstration", record.demonstration()},
            {"opened", iso_time(record.job.opened.moment)},
            {"measurements", std::move(lines)}};
  if (record.job.closed) {
    json["closed"] = iso_time(record.job.closed->moment);
  }
  parts_json::put(json, "gearbox_serial", record.vehicle.gearbox_serial);
  if (record.vehicle.plate) {
    json["plate"] = text_of_personal(record.vehicle.plate);
  }
  if (record.vehicle.customer_reference) {
    json["customer_reference"] = text_of_personal(record.vehicle.customer_reference);
  }
  // As of a record: what can be in it was read as UTF-8, and its numbers are bounded.
  const auto bytes = json::canonical(json);
  return bytes ? *bytes : std::string();
}

}  // namespace shimwright::record
