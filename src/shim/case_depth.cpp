#include "case_sections.h"

namespace shimwright::shim {

namespace {

std::vector<quantity::Length> read_readings(Fields& section) {
  std::vector<quantity::Length> readings;
  const json::Array& elements = section.filled_list("readings_mm");
  for (std::size_t index = 0; index < elements.size() && !section.fault().any(); ++index) {
    const std::string place = json::pointer(section.place_of("readings_mm"), index);
    readings.push_back(section.fault().take(read_length(elements[index], place, any_number)));
  }
  return readings;
}

std::vector<DepthConstant> read_constants(Fields& section) {
  std::vector<DepthConstant> constants;
  const json::Array& elements = section.list("constants");
  for (std::size_t index = 0; index < elements.size() && !section.fault().any(); ++index) {
    Fields fields(elements[index], json::pointer(section.place_of("constants"), index), section.fault(),
                  {"name", "add_mm"});
    DepthConstant constant;
    constant.name = fields.text("name");
    constant.add = fields.length("add_mm");
    constants.push_back(std::move(constant));
  }
  return constants;
}

void read_stamp(Fields& section, DepthCase& depth) {
  depth.stamp_used = section.flag("stamp_used");
  depth.stamp = section.length_or_null("stamp_mm");
  if (depth.stamp_used && !depth.stamp) {
    section.fault().note(
        "stamp_missing", section.place_of("stamp_mm"),
        SHIMWRIGHT_TEXT("shim", "Enter the deviation marked on the pack; 0 is a value, blank is not."));
  }
}

std::optional<std::vector<DepthBin>> read_bins(Fields& section, const Tray& tray) {
  if (section.value("bins").is_null()) {
    return std::nullopt;
  }
  std::vector<DepthBin> bins;
  const json::Array& elements = section.filled_list("bins");
  for (std::size_t index = 0; index < elements.size() && !section.fault().any(); ++index) {
    const std::string place = json::pointer(section.place_of("bins"), index);
    Fields fields(elements[index], place, section.fault(), {"from_mm", "to_mm", "shim"});
    DepthBin bin;
    bin.from = fields.length("from_mm");
    if (!bins.empty() && bin.from < bins.back().to) {
      section.fault().note("bin_order", fields.place_of("from_mm"),
                           SHIMWRIGHT_TEXT("shim", "This bin begins before the one above it ends; put them in order."));
    }
    bin.to = fields.length("to_mm");
    if (bin.to < bin.from) {
      section.fault().note("bin_order", place,
                           SHIMWRIGHT_TEXT("shim", "This bin ends before it begins; exchange its two ends."));
    }
    bin.shim = read_known_shim(fields, "shim", tray);
    bins.push_back(std::move(bin));
  }
  return bins;
}

}  // namespace

DepthCase read_depth(const json::Value& value, const Tray& tray, FirstFault& fault) {
  Fields fields(
      value, "/depth", fault,
      {"readings_mm", "reference_mm", "constants", "stamp_used", "stamp_mm", "max_spread_mm", "u_reading_mm", "bins"});
  DepthCase depth;
  depth.readings = read_readings(fields);
  depth.reference = fields.length("reference_mm");
  depth.constants = read_constants(fields);
  read_stamp(fields, depth);
  depth.max_spread = fields.length("max_spread_mm", more_than_zero);
  depth.u_reading_mm = fields.number("u_reading_mm", more_than_zero);
  depth.bins = read_bins(fields, tray);
  return depth;
}

}  // namespace shimwright::shim
