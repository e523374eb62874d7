#include "side_spec_reader.h"

#include <algorithm>
#include <utility>

#include "fields.h"
#include "float_spec_reader.h"
#include "shimwright/sheet/names.h"
#include "spec_ranges.h"

namespace shimwright::sheet {

namespace {

constexpr std::size_t most_shims = 200;
constexpr std::size_t most_constants = 20;
constexpr std::int64_t most_places = 8;
constexpr WordList<bool, 2> order_words{{{false, "fewest"}, {true, "thick_to_thin"}}};

Result<SpecShim> read_shim(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"id", "thickness_mm", "u_mm"});
  SpecShim shim;
  shim.id = fields.string("id");
  if (!is_shim_id(shim.id)) {
    fields.refuse(
        "wrong_id", "id",
        SHIMWRIGHT_TEXT("sheet", "A shim is named as it is marked, with 1 to 16 plain letters, digits and signs."));
  }
  shim.thickness = read_length(fields, "thickness_mm", thickness_range);
  shim.u_mm = read_decimal(fields, "u_mm", uncertainty_range);
  return fields.finish(std::move(shim));
}

void refuse_repeated_shims(Fields& tray, const std::vector<SpecShim>& shims) {
  for (auto shim = shims.begin(); shim != shims.end(); ++shim) {
    const auto index = static_cast<std::size_t>(shim - shims.begin());
    const std::string place = json::pointer(tray.place_of("shims"), index);
    if (std::any_of(shims.begin(), shim, [shim](const SpecShim& each) { return each.id == shim->id; })) {
      tray.refuse_at("repeated_shim", json::pointer(place, "id"),
                     SHIMWRIGHT_TEXT("sheet", "The shim '{0}' stands in this tray twice; remove one of the two."),
                     {shim->id});
    }
    if (std::any_of(shims.begin(), shim, [shim](const SpecShim& each) { return each.thickness == shim->thickness; })) {
      tray.refuse_at(
          "repeated_shim", json::pointer(place, "thickness_mm"),
          SHIMWRIGHT_TEXT("sheet", "Another shim of this tray is as thick as '{0}'; correct one of the two."),
          {shim->id});
    }
  }
}

struct TraySpec {
  std::string name;
  std::vector<SpecShim> shims;
  std::string source;
};

Result<TraySpec> read_tray(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"name", "source", "shims"});
  TraySpec tray;
  tray.name = fields.line("name");
  tray.source = fields.line("source");
  tray.shims = fields.list("shims", 1, most_shims, read_shim);
  refuse_repeated_shims(fields, tray.shims);
  return fields.finish(std::move(tray));
}

Result<Prior> read_prior(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"mean_mm", "sd_mm", "source"});
  Prior prior;
  prior.mean_mm = read_decimal(fields, "mean_mm", prior_mean_range);
  prior.sd_mm = read_decimal(fields, "sd_mm", prior_sd_range);
  prior.source = fields.line("source");
  return fields.finish(std::move(prior));
}

Result<GaugeFitSpec> read_gauge_fit(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"snug_band_mm", "feel_u_mm", "prior", "order", "source"});
  GaugeFitSpec spec;
  spec.snug_band = read_length(fields, "snug_band_mm", snug_band_range);
  spec.feel_u_mm = read_decimal(fields, "feel_u_mm", feel_range);
  if (fields.has_value("prior")) {
    spec.prior = fields.take(read_prior(*fields.member("prior"), fields.place_of("prior")));
  }
  const auto thick_to_thin = fields.word("order", order_words);
  spec.thick_to_thin = thick_to_thin && *thick_to_thin;
  spec.source = fields.line("source");
  return fields.finish(std::move(spec));
}

Result<DepthConstant> read_constant(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"name", "add_mm", "source"});
  DepthConstant constant;
  constant.name = fields.line("name");
  constant.add = read_length(fields, "add_mm", any_length);
  constant.source = fields.line("source");
  return fields.finish(std::move(constant));
}

Result<DepthBin> read_bin(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"from_mm", "to_mm", "shim"});
  DepthBin bin;
  bin.from = read_length(fields, "from_mm", any_length);
  bin.to = read_length(fields, "to_mm", any_length);
  bin.shim = fields.string("shim");
  return fields.finish(std::move(bin));
}

void refuse_wrong_bins(Fields& fields, const std::vector<DepthBin>& bins, const std::vector<SpecShim>& tray) {
  for (std::size_t index = 0; index < bins.size(); ++index) {
    const DepthBin& bin = bins[index];
    const std::string place = json::pointer(fields.place_of("bins"), index);
    if (bin.from > bin.to) {
      fields.refuse_at("bin_order", place,
                       SHIMWRIGHT_TEXT("sheet", "The range ends before it begins; exchange its two ends."));
    }
    if (index > 0 && bin.from < bins[index - 1].to) {
      fields.refuse_at(
          "bin_order", json::pointer(place, "from_mm"),
          SHIMWRIGHT_TEXT("sheet", "The range begins before the one above it ends; put them in order, thin to thick."));
    }
    if (std::none_of(tray.begin(), tray.end(), [&bin](const SpecShim& shim) { return shim.id == bin.shim; })) {
      fields.refuse_at("unknown_shim", json::pointer(place, "shim"),
                       SHIMWRIGHT_TEXT("sheet", "There is no shim '{0}' in this side's tray; correct the name."),
                       {bin.shim});
    }
  }
}

Result<DepthSpec> read_depth(const json::Value& value, const std::string& place, const std::vector<SpecShim>& tray) {
  Fields fields = Fields::open(
      value, place, {"places", "constants", "stamp_used", "max_spread_mm", "u_reading_mm", "bins", "source"});
  DepthSpec spec;
  spec.places = static_cast<int>(fields.integer("places", 2, most_places));
  spec.constants = fields.list("constants", 0, most_constants, read_constant);
  spec.stamp_used = fields.flag("stamp_used");
  spec.max_spread = read_length(fields, "max_spread_mm", spread_range);
  spec.u_reading_mm = read_decimal(fields, "u_reading_mm", uncertainty_range);
  if (fields.has_value("bins")) {
    spec.bins = fields.list("bins", 1, most_shims, read_bin);
    refuse_wrong_bins(fields, *spec.bins, tray);
  }
  spec.source = fields.line("source");
  return fields.finish(std::move(spec));
}

/// The section of the method is there, the other one is not: a left-over could be taken for what holds.
void check_section(Fields& side, Method method, Method section) {
  const std::string_view name = name_of(section);
  if (method == section && !side.has_value(name)) {
    side.refuse("missing_field", name,
                SHIMWRIGHT_TEXT("sheet", "The shim of this side is found by '{0}', so this section is needed; add it."),
                {std::string(name_of(method))});
  }
  if (method != section && side.has(name)) {
    side.refuse(
        "wrong_method", name,
        SHIMWRIGHT_TEXT("sheet", "The shim of this side is found by '{0}'; remove this section or correct the method."),
        {std::string(name_of(method))});
  }
}

}  // namespace

Result<SideSpec> read_side_spec(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"method", "tray", "float"}, {"gauge_fit", "depth"});
  SideSpec spec;
  if (const auto method = fields.word("method", method_words)) {
    spec.method = *method;
    check_section(fields, spec.method, Method::gauge_fit);
    check_section(fields, spec.method, Method::depth);
  }
  if (const json::Value* tray = fields.member("tray")) {
    TraySpec read = fields.take(read_tray(*tray, fields.place_of("tray")));
    spec.tray_name = std::move(read.name);
    spec.tray = std::move(read.shims);
    spec.tray_source = std::move(read.source);
  }
  if (const json::Value* section = fields.member("gauge_fit")) {
    spec.gauge_fit = fields.take(read_gauge_fit(*section, fields.place_of("gauge_fit")));
  }
  if (const json::Value* section = fields.member("depth")) {
    spec.depth = fields.take(read_depth(*section, fields.place_of("depth"), spec.tray));
  }
  if (const json::Value* section = fields.member("float")) {
    spec.disc_float = fields.take(read_float_spec(*section, fields.place_of("float")));
  }
  return fields.finish(std::move(spec));
}

}  // namespace shimwright::sheet
