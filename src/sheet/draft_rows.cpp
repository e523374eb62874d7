#include <algorithm>
#include <map>

#include "draft_json.h"

namespace shimwright::sheet {

namespace {

DraftJson blank_text(const DraftJson& body) {
  DraftJson text = DraftJson::object();
  for (const std::string& language : languages_of(body)) {
    text[language] = "";
  }
  return text;
}

DraftJson blank_gauge_fit() {
  return {{"snug_band_mm", ""}, {"feel_u_mm", ""}, {"prior", nullptr}, {"order", "fewest"}, {"source", ""}};
}

DraftJson blank_depth() {
  return {{"places", 2},        {"constants", DraftJson::array()},
          {"stamp_used", ""},   {"max_spread_mm", ""},
          {"u_reading_mm", ""}, {"bins", nullptr},
          {"source", ""}};
}

DraftJson blank_channel(const DraftJson& body) {
  return {{"id", ""}, {"title", blank_text(body)}, {"unit", "mm"}};
}

DraftJson blank_step(const DraftJson& body) {
  return {{"id", ""}, {"kind", "do"}, {"title", blank_text(body)}, {"text", blank_text(body)}};
}

DraftJson blank_choice(const DraftJson& body) {
  return {{"id", ""}, {"title", blank_text(body)}};
}

DraftJson blank_stage(const DraftJson& body) {
  return {{"id", ""}, {"title", blank_text(body)}, {"steps", DraftJson::array({blank_step(body)})}};
}

/// The list or part by the last word of its place.
DraftJson row_of(const DraftJson& body, const std::string& list) {
  const std::map<std::string, DraftJson> rows = {
      {"shims", {{"id", ""}, {"thickness_mm", ""}, {"u_mm", ""}}},
      {"prior", {{"mean_mm", ""}, {"sd_mm", ""}, {"source", ""}}},
      {"sensitivity", {{"mean", ""}, {"sd", ""}, {"source", ""}}},
      {"constants", {{"name", ""}, {"add_mm", ""}, {"source", ""}}},
      {"bins", {{"from_mm", ""}, {"to_mm", ""}, {"shim", ""}}},
      {"spot_angles_deg", ""},
      {"limits", {{"title", blank_text(body)}, {"unit", "mm"}, {"source", ""}}},
      {"work_values", {{"title", blank_text(body)}, {"value", ""}, {"source", ""}}},
      {"parts", {{"id", ""}, {"title", blank_text(body)}, {"number", ""}, {"quantity", 1}, {"one_time", ""}}},
      {"stages", blank_stage(body)},
      {"steps", blank_step(body)},
      {"cautions", {{"hazard", blank_text(body)}, {"precaution", blank_text(body)}}},
      {"channels", blank_channel(body)},
      {"choices", blank_choice(body)}};
  const auto found = rows.find(list);
  return found == rows.end() ? DraftJson() : found->second;
}

/// A section that the other method has no use for is put aside, not thrown away: the method may be chosen back.
void exchange_sections(DraftJson& side, const std::string& wanted, const std::string& other) {
  if (side.contains(other)) {
    side["#" + other] = std::move(side[other]);
    side.erase(other);
  }
  if (side.contains("#" + wanted)) {
    side[wanted] = std::move(side["#" + wanted]);
    side.erase("#" + wanted);
  } else if (!side.contains(wanted)) {
    side[wanted] = wanted == "depth" ? blank_depth() : blank_gauge_fit();
  }
}

/// What a kind of step has beyond every step's fields.
DraftJson body_of_kind(const DraftJson& body, const std::string& kind) {
  const std::map<std::string, DraftJson> bodies = {
      {"choose", {{"choices", {blank_choice(body), blank_choice(body)}}}},
      {"read", {{"channels", DraftJson::array({blank_channel(body)})}}},
      {"teach_in", {{"channels", DraftJson::array({blank_channel(body)})}}},
      {"peak", {{"channel", blank_channel(body)}}},
      {"part", {{"parts", DraftJson::array({""})}}},
      {"sign", {{"signer", "technician"}}}};
  const auto found = bodies.find(kind);
  return found == bodies.end() ? DraftJson::object() : found->second;
}

DraftJson blank_side() {
  DraftJson disc = {{"least_mm", ""},         {"most_mm", ""},          {"target_mm", nullptr},
                    {"max_spread_mm", ""},    {"repeatability_mm", ""}, {"guard_factor", ""},
                    {"sensitivity", nullptr}, {"history_u_mm", ""},     {"spot_angles_deg", {"0", "120", "240"}},
                    {"least_runs", 2},        {"as_found", ""},         {"source", ""}};
  return {{"method", "gauge_fit"},
          {"tray", {{"name", ""}, {"source", ""}, {"shims", DraftJson::array()}}},
          {"gauge_fit", blank_gauge_fit()},
          {"float", std::move(disc)}};
}

/// The rows that jobs by a sheet ask for, in its order.
class AskedFor {
 public:
  explicit AskedFor(const JobSheet& sheet) {
    for (const Step* step : sheet.steps()) {
      if (const auto* read = std::get_if<ReadStep>(&step->body)) {
        add_channels(read->channels);
      } else if (const auto* teach_in = std::get_if<TeachInStep>(&step->body)) {
        add_channels(teach_in->channels);
      } else if (const auto* peak = std::get_if<PeakStep>(&step->body)) {
        add_channels({peak->channel});
        if (peak->attempts_limit) {
          add_limit(*peak->attempts_limit, step->title.in_english(), quantity::Unit::piece);
        }
      } else if (const auto* part = std::get_if<PartStep>(&step->body)) {
        add_parts(part->parts);
      }
    }
  }

  DraftJson limits = DraftJson::object();
  DraftJson parts = DraftJson::array();

 private:
  void add_channels(const std::vector<Channel>& channels) {
    for (const Channel& channel : channels) {
      if (channel.limit) {
        add_limit(*channel.limit, channel.title.in_english(), channel.unit);
      }
    }
  }

  void add_limit(const std::string& key, const std::string& title, quantity::Unit unit) {
    if (!limits.contains(key)) {
      limits[key] = {{"title", {{"en", title}}}, {"unit", quantity::symbol_of(unit)}, {"source", ""}};
    }
  }

  void add_parts(const std::vector<std::string>& ids) {
    for (const std::string& id : ids) {
      if (std::none_of(parts.begin(), parts.end(), [&id](const DraftJson& part) { return part["id"] == id; })) {
        parts.push_back({{"id", id}, {"title", {{"en", ""}}}, {"number", ""}, {"quantity", 1}, {"one_time", ""}});
      }
    }
  }
};

}  // namespace

DraftJson blank_row(const DraftJson& body, const std::string& place) {
  const std::string list = last_of(place);
  // The parts of a step are names only.
  return list == "parts" && place != "/parts" ? DraftJson("") : row_of(body, list);
}

bool put_method(DraftJson& body, const std::string& place, const std::string& word) {
  if (place != "/lower/method" && place != "/upper/method") {
    return false;
  }
  DraftJson& side = *object_at(body, parent_of(place));
  side["method"] = word;
  exchange_sections(side, word, word == "depth" ? "gauge_fit" : "depth");
  return true;
}

bool put_step_kind(DraftJson& body, const std::string& place, const std::string& word) {
  if (last_of(place) != "kind") {
    return false;
  }
  DraftJson* const there = object_at(body, parent_of(place));
  if (there == nullptr) {
    return true;
  }
  DraftJson& step = *there;
  const bool has_aside = step.contains("#bodies") && step["#bodies"].is_object();
  DraftJson aside = has_aside ? step["#bodies"] : DraftJson::object();
  DraftJson kept = DraftJson::object();
  for (const char* field :
       {"choices", "channels", "channel", "attempts_limit", "parts", "least", "as_found", "signer"}) {
    if (step.contains(field)) {
      kept[field] = step[field];
      step.erase(field);
    }
  }
  const bool has_kind = step.contains("kind") && step["kind"].is_string();
  aside[has_kind ? step["kind"].get<std::string>() : std::string("do")] = std::move(kept);
  const bool was_there = aside.contains(word) && aside[word].is_object();
  const DraftJson fitting = was_there ? aside[word] : body_of_kind(body, word);
  step["kind"] = word;
  for (const auto& [field, value] : fitting.items()) {
    step[field] = value;
  }
  step["#bodies"] = std::move(aside);
  return true;
}

SheetDraft empty_spec_sheet(const std::string& id, const JobSheet& for_jobs) {
  AskedFor asked(for_jobs);
  const DraftJson body = {{"format", "shimwright.spec-sheet"},
                          {"version", 1},
                          {"min_reader", 1},
                          {"id", id},
                          {"gearbox", ""},
                          {"issue", 1},
                          {"demonstration", false},
                          {"title", {{"en", ""}}},
                          {"source", ""},
                          {"limits", std::move(asked.limits)},
                          {"work_values", DraftJson::object()},
                          {"parts", std::move(asked.parts)},
                          {"lower", blank_side()},
                          {"upper", blank_side()}};
  return draft_of(SheetKind::spec_sheet, body);
}

SheetDraft empty_job_sheet(const std::string& id) {
  DraftJson body = {{"format", "shimwright.job-sheet"},
                    {"version", 1},
                    {"min_reader", 1},
                    {"id", id},
                    {"name", ""},
                    {"issue", 1},
                    {"demonstration", false},
                    {"title", {{"en", ""}}},
                    {"stages", DraftJson::array()}};
  DraftJson stage = blank_stage(body);
  stage["steps"][0] = {{"id", "sign"}, {"kind", "sign"}, {"title", {{"en", ""}}}, {"signer", "technician"}};
  body["stages"].push_back(std::move(stage));
  return draft_of(SheetKind::job_sheet, body);
}

}  // namespace shimwright::sheet
