#include "draft_json.h"

namespace shimwright::sheet {

namespace {

const std::string millimetre = "mm";

std::vector<WordChoice> method_choices() {
  return {{"gauge_fit", {SHIMWRIGHT_TEXT("sheet", "gauge trials"), {}}},
          {"depth", {SHIMWRIGHT_TEXT("sheet", "depths"), {}}}};
}

DraftSection sheet_section(const DraftJson& body) {
  SectionWriter writer(body, "sheet", {SHIMWRIGHT_TEXT("sheet", "Sheet"), {}});
  writer.group({SHIMWRIGHT_TEXT("sheet", "The sheet"), {}});
  writer.field("/gearbox", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Gearbox type, as people name it"), {}});
  writer.text("/title", {SHIMWRIGHT_TEXT("sheet", "What the sheet is for"), {}});
  writer.languages({SHIMWRIGHT_TEXT("sheet", "Languages beside English, as in “de fr”"), {}});
  writer.field("/source", FieldKind::line,
               {SHIMWRIGHT_TEXT("sheet", "From: which service information, edition, date"), {}});
  return std::move(writer).take();
}

void add_tray(SectionWriter& writer, const std::string& side) {
  const std::string tray = side + "/tray";
  writer.group({SHIMWRIGHT_TEXT("sheet", "Shim and tray"), {}});
  writer.word(side + "/method", {SHIMWRIGHT_TEXT("sheet", "Shim found by"), {}}, method_choices());
  writer.field(tray + "/name", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Name of the tray"), {}});
  writer.source(tray + "/source");
  const std::string shims = tray + "/shims";
  for (std::size_t at = 0; at < writer.size_of(shims); ++at) {
    const std::string shim = shims + "/" + std::to_string(at);
    writer.group(at == 0 ? Message{SHIMWRIGHT_TEXT("sheet", "Sizes in the tray"), {}} : Message(), shim, true);
    writer.field(shim + "/id", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Marked"), {}});
    writer.field(shim + "/thickness_mm", FieldKind::length, {SHIMWRIGHT_TEXT("sheet", "Thickness"), {}}, millimetre);
    writer.field(shim + "/u_mm", FieldKind::decimal, {SHIMWRIGHT_TEXT("sheet", "Standard uncertainty"), {}},
                 millimetre);
  }
  writer.way(shims, {SHIMWRIGHT_TEXT("sheet", "Add a size"), {}});
}

void add_gauge_fit(SectionWriter& writer, const std::string& fit) {
  writer.group({SHIMWRIGHT_TEXT("sheet", "Gauge trials"), {}});
  writer.field(fit + "/snug_band_mm", FieldKind::length,
               {SHIMWRIGHT_TEXT("sheet", "Snug band: how far below the seat a shim still feels snug"), {}}, millimetre);
  writer.field(fit + "/feel_u_mm", FieldKind::decimal, {SHIMWRIGHT_TEXT("sheet", "Feel, standard uncertainty"), {}},
               millimetre);
  writer.word(fit + "/order", {SHIMWRIGHT_TEXT("sheet", "Order of the trials"), {}},
              {{"fewest", {SHIMWRIGHT_TEXT("sheet", "fewest trials"), {}}},
               {"thick_to_thin", {SHIMWRIGHT_TEXT("sheet", "thick to thin"), {}}}});
  writer.source(fit + "/source");
  const std::string prior = fit + "/prior";
  if (!writer.has(prior)) {
    writer.way(prior, {SHIMWRIGHT_TEXT("sheet", "Add what is known of the seat"), {}});
    return;
  }
  writer.group({SHIMWRIGHT_TEXT("sheet", "Seat known beforehand"), {}}, prior);
  writer.field(prior + "/mean_mm", FieldKind::decimal, {SHIMWRIGHT_TEXT("sheet", "Mean"), {}}, millimetre);
  writer.field(prior + "/sd_mm", FieldKind::decimal, {SHIMWRIGHT_TEXT("sheet", "Standard deviation"), {}}, millimetre);
  writer.source(prior + "/source");
}

void add_constants(SectionWriter& writer, const std::string& constants) {
  for (std::size_t at = 0; at < writer.size_of(constants); ++at) {
    const std::string constant = constants + "/" + std::to_string(at);
    writer.group(at == 0 ? Message{SHIMWRIGHT_TEXT("sheet", "Constants added to the depth"), {}} : Message(), constant);
    writer.field(constant + "/name", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "What it is"), {}});
    writer.field(constant + "/add_mm", FieldKind::length,
                 {SHIMWRIGHT_TEXT("sheet", "Added; with a minus it is taken away"), {}}, millimetre);
    writer.source(constant + "/source");
  }
  writer.way(constants, {SHIMWRIGHT_TEXT("sheet", "Add a constant"), {}});
}

void add_bins(SectionWriter& writer, const std::string& bins) {
  for (std::size_t at = 0; at < writer.size_of(bins); ++at) {
    const std::string bin = bins + "/" + std::to_string(at);
    writer.group(at == 0 ? Message{SHIMWRIGHT_TEXT("sheet", "Which thickness wanted gives which shim"), {}} : Message(),
                 bin, true);
    writer.field(bin + "/from_mm", FieldKind::length, {SHIMWRIGHT_TEXT("sheet", "From thickness"), {}}, millimetre);
    writer.field(bin + "/to_mm", FieldKind::length, {SHIMWRIGHT_TEXT("sheet", "To thickness"), {}}, millimetre);
    writer.field(bin + "/shim", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Shim"), {}});
  }
  writer.way(bins, {SHIMWRIGHT_TEXT("sheet", "Add a range of the shim table"), {}});
}

void add_depth(SectionWriter& writer, const std::string& depth) {
  writer.group({SHIMWRIGHT_TEXT("sheet", "Depths"), {}});
  writer.field(depth + "/places", FieldKind::count, {SHIMWRIGHT_TEXT("sheet", "Opposite places measured"), {}});
  writer.field(depth + "/stamp_used", FieldKind::yes_no,
               {SHIMWRIGHT_TEXT("sheet", "Deviation stamped on the new pack is added"), {}});
  writer.field(depth + "/max_spread_mm", FieldKind::length,
               {SHIMWRIGHT_TEXT("sheet", "Largest spread over the places"), {}}, millimetre);
  writer.field(depth + "/u_reading_mm", FieldKind::decimal,
               {SHIMWRIGHT_TEXT("sheet", "Depth reading, standard uncertainty"), {}}, millimetre);
  writer.source(depth + "/source");
  add_constants(writer, depth + "/constants");
  add_bins(writer, depth + "/bins");
}

void add_float_values(SectionWriter& writer, const std::string& of_disc) {
  const auto length = [&](const char* key, Message label, bool may_be_blank = false) {
    writer.field(of_disc + key, FieldKind::length, std::move(label), millimetre, may_be_blank);
  };
  writer.group({SHIMWRIGHT_TEXT("sheet", "Float"), {}});
  length("/least_mm", {SHIMWRIGHT_TEXT("sheet", "Float, at least"), {}});
  length("/most_mm", {SHIMWRIGHT_TEXT("sheet", "Float, at most"), {}});
  length("/target_mm", {SHIMWRIGHT_TEXT("sheet", "Float aimed at (blank: the middle)"), {}}, true);
  length("/max_spread_mm", {SHIMWRIGHT_TEXT("sheet", "Largest spread over the spots"), {}});
  writer.field(of_disc + "/repeatability_mm", FieldKind::decimal,
               {SHIMWRIGHT_TEXT("sheet", "Repeatability, standard uncertainty"), {}}, millimetre);
  writer.field(of_disc + "/guard_factor", FieldKind::decimal,
               {SHIMWRIGHT_TEXT("sheet", "Guard factor: standard uncertainties kept from a limit"), {}});
  writer.field(of_disc + "/history_u_mm", FieldKind::decimal,
               {SHIMWRIGHT_TEXT("sheet", "Float of other jobs, standard uncertainty"), {}}, millimetre);
  writer.field(of_disc + "/least_runs", FieldKind::count,
               {SHIMWRIGHT_TEXT("sheet", "Runs at each spot, at least"), {}});
  writer.field(of_disc + "/as_found", FieldKind::yes_no,
               {SHIMWRIGHT_TEXT("sheet", "Float as found can be measured"), {}});
  writer.source(of_disc + "/source");
}

void add_float(SectionWriter& writer, const std::string& of_disc) {
  add_float_values(writer, of_disc);
  const std::string spots = of_disc + "/spot_angles_deg";
  for (std::size_t at = 0; at < writer.size_of(spots); ++at) {
    const std::string spot = spots + "/" + std::to_string(at);
    writer.group(at == 0 ? Message{SHIMWRIGHT_TEXT("sheet", "Spots"), {}} : Message(), spot, true);
    writer.field(spot, FieldKind::decimal, {SHIMWRIGHT_TEXT("sheet", "Spot at"), {}}, "°");
  }
  writer.way(spots, {SHIMWRIGHT_TEXT("sheet", "Add a spot"), {}});
  const std::string lost = of_disc + "/sensitivity";
  if (!writer.has(lost)) {
    writer.way(lost, {SHIMWRIGHT_TEXT("sheet", "Add the float lost per mm of shim"), {}});
    return;
  }
  writer.group({SHIMWRIGHT_TEXT("sheet", "Float lost per mm of shim"), {}}, lost);
  writer.field(lost + "/mean", FieldKind::decimal, {SHIMWRIGHT_TEXT("sheet", "Mean"), {}}, "mm/mm");
  writer.field(lost + "/sd", FieldKind::decimal, {SHIMWRIGHT_TEXT("sheet", "Standard deviation"), {}}, "mm/mm");
  writer.source(lost + "/source");
}

DraftSection side_section(const DraftJson& body, const std::string& name, Message title) {
  SectionWriter writer(body, name, std::move(title));
  const std::string side = "/" + name;
  add_tray(writer, side);
  if (writer.has(side + "/gauge_fit")) {
    add_gauge_fit(writer, side + "/gauge_fit");
  }
  if (writer.has(side + "/depth")) {
    add_depth(writer, side + "/depth");
  }
  add_float(writer, side + "/float");
  return std::move(writer).take();
}

DraftJson rows_of(const DraftJson& body, const char* name) {
  return body.contains(name) && body[name].is_object() ? body[name] : DraftJson::object();
}

DraftSection limits_section(const DraftJson& body) {
  SectionWriter writer(body, "limits", {SHIMWRIGHT_TEXT("sheet", "Limits"), {}});
  const DraftJson rows = rows_of(body, "limits");
  for (const auto& [key, limit] : rows.items()) {
    const std::string place = (DraftJson::json_pointer("/limits") / key).to_string();
    const std::string unit = shown_text(value_at(body, place + "/unit"));
    writer.group({"{0}", {shown_text(value_at(body, place + "/title/en"))}}, place);
    writer.name(place, {SHIMWRIGHT_TEXT("sheet", "Name the job sheet has for it"), {}});
    writer.text(place + "/title", {SHIMWRIGHT_TEXT("sheet", "Title"), {}});
    writer.word(place + "/unit", {SHIMWRIGHT_TEXT("sheet", "Unit"), {}}, unit_choices());
    writer.field(place + "/least", FieldKind::measure, {SHIMWRIGHT_TEXT("sheet", "At least (blank: no limit)"), {}},
                 unit, true);
    writer.field(place + "/most", FieldKind::measure, {SHIMWRIGHT_TEXT("sheet", "At most (blank: no limit)"), {}}, unit,
                 true);
    writer.source(place + "/source");
  }
  writer.way("/limits", {SHIMWRIGHT_TEXT("sheet", "Add a limit"), {}});
  return std::move(writer).take();
}

DraftSection work_section(const DraftJson& body) {
  SectionWriter writer(body, "work_values", {SHIMWRIGHT_TEXT("sheet", "Values to work to"), {}});
  const DraftJson rows = rows_of(body, "work_values");
  for (const auto& [key, each] : rows.items()) {
    const std::string place = (DraftJson::json_pointer("/work_values") / key).to_string();
    writer.group({"{0}", {shown_text(value_at(body, place + "/title/en"))}}, place);
    writer.name(place, {SHIMWRIGHT_TEXT("sheet", "Short name"), {}});
    writer.text(place + "/title", {SHIMWRIGHT_TEXT("sheet", "Title"), {}});
    writer.field(place + "/value", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Work to, with unit"), {}});
    writer.source(place + "/source");
  }
  writer.way("/work_values", {SHIMWRIGHT_TEXT("sheet", "Add a value to work to"), {}});
  return std::move(writer).take();
}

DraftSection parts_section(const DraftJson& body) {
  SectionWriter writer(body, "parts", {SHIMWRIGHT_TEXT("sheet", "Parts"), {}});
  for (std::size_t at = 0; at < writer.size_of("/parts"); ++at) {
    const std::string part = "/parts/" + std::to_string(at);
    writer.group({"{0}", {shown_text(value_at(body, part + "/title/en"))}}, part);
    writer.field(part + "/id", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Name the job sheet has for it"), {}});
    writer.text(part + "/title", {SHIMWRIGHT_TEXT("sheet", "Title"), {}});
    writer.field(part + "/number", FieldKind::line, {SHIMWRIGHT_TEXT("sheet", "Part number"), {}});
    writer.field(part + "/quantity", FieldKind::count, {SHIMWRIGHT_TEXT("sheet", "Quantity"), {}});
    writer.field(part + "/one_time", FieldKind::yes_no, {SHIMWRIGHT_TEXT("sheet", "Renewed at every assembly"), {}});
  }
  writer.way("/parts", {SHIMWRIGHT_TEXT("sheet", "Add a part"), {}});
  return std::move(writer).take();
}

}  // namespace

std::vector<DraftSection> spec_sections(const DraftJson& body) {
  return {sheet_section(body),
          side_section(body, "lower", {SHIMWRIGHT_TEXT("sheet", "Lower, large bearing"), {}}),
          side_section(body, "upper", {SHIMWRIGHT_TEXT("sheet", "Upper, small bearing"), {}}),
          limits_section(body),
          work_section(body),
          parts_section(body)};
}

}  // namespace shimwright::sheet
