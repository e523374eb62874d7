#include "float_spec_reader.h"

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "fields.h"
#include "spec_ranges.h"

namespace shimwright::sheet {

namespace {

constexpr std::size_t least_spots = 3;
constexpr std::size_t most_spots = 12;
constexpr std::int64_t most_runs = 10;

Result<SensitivitySpec> read_sensitivity(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"mean", "sd", "source"});
  SensitivitySpec sensitivity;
  sensitivity.mean = read_decimal(fields, "mean", sensitivity_range);
  sensitivity.sd = read_decimal(fields, "sd", sensitivity_range);
  sensitivity.source = fields.line("source");
  return fields.finish(std::move(sensitivity));
}

void read_limits(Fields& fields, FloatSpec& spec) {
  spec.least = read_length(fields, "least_mm", float_range);
  spec.most = read_length(fields, "most_mm", float_range);
  if (spec.least >= spec.most) {
    fields.refuse("limits_order", "most_mm",
                  SHIMWRIGHT_TEXT("sheet", "The upper limit has to be larger than the lower one; correct the two."));
  }
  if (!fields.has_value("target_mm")) {
    return;
  }
  spec.target = read_length(fields, "target_mm", float_range);
  if (*spec.target < spec.least || *spec.target > spec.most) {
    fields.refuse(
        "outside_limits", "target_mm",
        SHIMWRIGHT_TEXT("sheet", "The target lies outside the limits; correct it, or write null for the middle."));
  }
}

Result<std::string> read_angle_text(const json::Value& value, const std::string& place) {
  const std::string* text = value.string();
  const auto millionths = text == nullptr ? std::nullopt : millionths_from(*text);
  if (!millionths || *millionths < angle_range.least || *millionths > angle_range.most) {
    return refuse(
        "out_of_range", place,
        SHIMWRIGHT_TEXT("sheet", "An angle from 0 to below 360 in quotation marks has to stand here, like \"120\"."));
  }
  return decimal_text(*millionths);
}

std::vector<double> read_angles(Fields& fields) {
  constexpr std::string_view key = "spot_angles_deg";
  const std::vector<std::string> texts = fields.list(key, least_spots, most_spots, read_angle_text);
  std::vector<double> angles;
  for (std::size_t index = 0; index < texts.size(); ++index) {
    const auto end = texts.begin() + static_cast<std::ptrdiff_t>(index);
    if (std::find(texts.begin(), end, texts[index]) != end) {
      fields.refuse_at("repeated_angle", json::pointer(fields.place_of(key), index),
                       SHIMWRIGHT_TEXT("sheet", "The angle {0} stands here twice; each spot needs its own."),
                       {texts[index]});
    }
    if (const auto millionths = millionths_from(texts[index])) {
      angles.push_back(as_number(*millionths));
    }
  }
  return angles;
}

}  // namespace

Result<FloatSpec> read_float_spec(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place,
                               {"least_mm", "most_mm", "target_mm", "max_spread_mm", "repeatability_mm", "guard_factor",
                                "sensitivity", "history_u_mm", "spot_angles_deg", "least_runs", "as_found", "source"});
  FloatSpec spec;
  read_limits(fields, spec);
  spec.max_spread = read_length(fields, "max_spread_mm", spread_range);
  spec.repeatability_mm = read_decimal(fields, "repeatability_mm", repeatability_range);
  spec.guard_factor = read_decimal(fields, "guard_factor", guard_factor_range);
  if (fields.has_value("sensitivity")) {
    spec.sensitivity = fields.take(read_sensitivity(*fields.member("sensitivity"), fields.place_of("sensitivity")));
  }
  spec.history_u_mm = read_decimal(fields, "history_u_mm", uncertainty_range);
  spec.spot_angles_deg = read_angles(fields);
  spec.least_runs = static_cast<int>(fields.integer("least_runs", 1, most_runs));
  spec.as_found = fields.flag("as_found");
  spec.source = fields.line("source");
  return fields.finish(std::move(spec));
}

}  // namespace shimwright::sheet
