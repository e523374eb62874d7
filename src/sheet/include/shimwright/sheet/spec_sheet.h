#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/quantity/quantity.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/text.h"
#include "shimwright/sheet/words.h"

namespace shimwright::sheet {

/// A limit of one reading, inclusive. In base units of the unit's dimension; one of the two at least.
struct Limit {
  Text title;
  quantity::Unit unit = quantity::Unit::millimetre;
  std::optional<std::int64_t> least;
  std::optional<std::int64_t> most;
  int decimals = 0;  ///< as the sheet writes it, for print
  std::string source;
  friend bool operator==(const Limit&, const Limit&) = default;
};

/// A torque or other value to work to, shown at steps and on the record; nothing is judged by it.
struct WorkValue {
  Text title;
  std::string value;  ///< `25 N·m, then 90°`
  std::string source;
  friend bool operator==(const WorkValue&, const WorkValue&) = default;
};

struct PartItem {
  std::string id;
  Text title;
  std::string number;
  std::int64_t quantity = 1;
  bool one_time = false;  ///< renewed at every assembly
  friend bool operator==(const PartItem&, const PartItem&) = default;
};

struct SpecShim {
  std::string id;  ///< the size as marked: `1.65`
  quantity::Length thickness;
  double u_mm = 0;
  friend bool operator==(const SpecShim&, const SpecShim&) = default;
};

struct Prior {
  double mean_mm = 0;
  double sd_mm = 0;
  std::string source;
  friend bool operator==(const Prior&, const Prior&) = default;
};

struct GaugeFitSpec {
  quantity::Length snug_band;
  double feel_u_mm = 0;
  std::optional<Prior> prior;
  bool thick_to_thin = false;
  std::string source;
  friend bool operator==(const GaugeFitSpec&, const GaugeFitSpec&) = default;
};

struct DepthConstant {
  std::string name;
  quantity::Length add;
  std::string source;
  friend bool operator==(const DepthConstant&, const DepthConstant&) = default;
};

struct DepthBin {
  quantity::Length from;
  quantity::Length to;
  std::string shim;
  friend bool operator==(const DepthBin&, const DepthBin&) = default;
};

struct DepthSpec {
  int places = 2;  ///< how many opposite places are asked for
  std::vector<DepthConstant> constants;
  bool stamp_used = false;
  quantity::Length max_spread;
  double u_reading_mm = 0;
  std::optional<std::vector<DepthBin>> bins;
  std::string source;
  friend bool operator==(const DepthSpec&, const DepthSpec&) = default;
};

struct SensitivitySpec {
  double mean = 0;
  double sd = 0;
  std::string source;
  friend bool operator==(const SensitivitySpec&, const SensitivitySpec&) = default;
};

struct FloatSpec {
  quantity::Length least;
  quantity::Length most;
  std::optional<quantity::Length> target;
  quantity::Length max_spread;
  double repeatability_mm = 0;
  double guard_factor = 0;
  std::optional<SensitivitySpec> sensitivity;
  double history_u_mm = 0;
  std::vector<double> spot_angles_deg;  ///< three at least
  int least_runs = 2;                   ///< runs asked for at each spot
  bool as_found = true;                 ///< whether the method allows a float as found
  std::string source;
  friend bool operator==(const FloatSpec&, const FloatSpec&) = default;
};

struct SideSpec {
  Method method = Method::gauge_fit;
  std::string tray_name;
  std::vector<SpecShim> tray;
  std::string tray_source;
  std::optional<GaugeFitSpec> gauge_fit;  ///< there where method is gauge_fit
  std::optional<DepthSpec> depth;         ///< there where method is depth
  FloatSpec disc_float;
  friend bool operator==(const SideSpec&, const SideSpec&) = default;
};

/// The values for one gearbox type, one issue. Each value has a source note.
struct SpecSheet {
  std::string id;  ///< UUID, of this issue
  std::string gearbox;
  std::int64_t issue = 1;
  bool demonstration = false;
  Text title;
  std::string source;  ///< which service information, edition, date; or that it was invented
  std::map<std::string, Limit> limits;
  std::map<std::string, WorkValue> work_values;
  std::vector<PartItem> parts;
  SideSpec lower;
  SideSpec upper;

  [[nodiscard]] const SideSpec& side(Side side) const { return side == Side::lower ? lower : upper; }
  [[nodiscard]] const PartItem* part(std::string_view part_id) const;

  friend bool operator==(const SpecSheet&, const SpecSheet&) = default;
};

/// Reads and validates a spec sheet file (docs/formats/spec-sheet.md); numbers in it are strings read by the one number
/// reader, so that no value passes through binary fractions. The place of an error is a JSON pointer.
[[nodiscard]] Result<SpecSheet> read_spec_sheet(std::string_view json_text);

/// Whether a job by this sheet can use these values: every limit, part and method the sheet names is there. The place
/// of an error names the step.
[[nodiscard]] Result<void> fits(const JobSheet& sheet, const SpecSheet& spec);

}  // namespace shimwright::sheet
