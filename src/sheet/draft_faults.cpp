#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>

#include "draft_json.h"
#include "shimwright/sheet/names.h"
#include "shimwright/sheet/spec_sheet.h"

namespace shimwright::sheet {

namespace {

constexpr int most_rounds = 500;

std::optional<Error> first_fault(SheetKind kind, const std::string& file) {
  if (kind == SheetKind::job_sheet) {
    const auto read = read_job_sheet(file);
    return read ? std::nullopt : std::optional(read.error());
  }
  const auto read = read_spec_sheet(file);
  return read ? std::nullopt : std::optional(read.error());
}

/// Puts something good in the place of what was refused, so that the reader comes to the next fault. What is put there
/// is seen by nobody.
class Repair {
 public:
  explicit Repair(SheetKind kind) : kind_(kind) {}

  /// False where nothing can be done about it.
  bool mend(DraftJson& body, const Error& fault) {
    ++round_;
    const bool again = !seen_.insert(fault.code + fault.place).second;
    if (kind_ == SheetKind::job_sheet) {
      return mend_step(body, fault, again);
    }
    return !again && mend_spec(body, fault);
  }

 private:
  [[nodiscard]] std::string unique() const { return "x" + std::to_string(round_); }

  [[nodiscard]] static bool put(DraftJson& body, const std::string& place, DraftJson value) {
    DraftJson* parent = value_at(body, parent_of(place));
    if (parent == nullptr || !parent->is_structured()) {
      return false;
    }
    if (DraftJson* there = value_at(body, place); there != nullptr) {
      *there = std::move(value);
    } else if (parent->is_object()) {
      (*parent)[last_of(place)] = std::move(value);
    }
    return true;
  }

  bool mend_limit(DraftJson& body, const Error& fault, const std::string& key) {
    DraftJson& limit = *value_at(body, parent_of(fault.place));
    if (fault.code == "limits_order") {
      limit.erase("least");
      return true;
    }
    limit.erase(key);
    if (!limit.contains(key == "least" ? "most" : "least")) {
      limit["most"] = "1";
    }
    return true;
  }

  bool mend_float_limits(DraftJson& body, const Error& fault) {
    DraftJson& disc = *value_at(body, parent_of(fault.place));
    if (fault.code == "limits_order" || last_of(fault.place) == "least_mm") {
      disc["least_mm"] = "0";
    }
    if (fault.code == "limits_order" || last_of(fault.place) == "most_mm") {
      disc["most_mm"] = "50";
    }
    return true;
  }

  [[nodiscard]] std::optional<DraftJson> good_value(const std::string& key, const std::string& place) const {
    static const std::map<std::string_view, DraftJson> good = {{"target_mm", nullptr},
                                                               {"max_spread_mm", "1"},
                                                               {"snug_band_mm", "1"},
                                                               {"u_mm", "1"},
                                                               {"feel_u_mm", "1"},
                                                               {"u_reading_mm", "1"},
                                                               {"history_u_mm", "1"},
                                                               {"sd_mm", "1"},
                                                               {"sd", "1"},
                                                               {"mean", "1"},
                                                               {"mean_mm", "1"},
                                                               {"repeatability_mm", "1"},
                                                               {"guard_factor", "1"},
                                                               {"add_mm", "0"},
                                                               {"places", 2},
                                                               {"least_runs", 2},
                                                               {"quantity", 2},
                                                               {"issue", 2},
                                                               {"stamp_used", false},
                                                               {"as_found", false},
                                                               {"one_time", false},
                                                               {"order", "fewest"},
                                                               {"unit", "mm"},
                                                               {"gearbox", "x"},
                                                               {"source", "x"},
                                                               {"name", "x"},
                                                               {"value", "x"},
                                                               {"number", "x"},
                                                               {"demonstration", false},
                                                               {"en", "x"},
                                                               {"prior", nullptr},
                                                               {"sensitivity", nullptr}};
    if (place == "/id") {
      return "00000000-0000-7000-8000-000000000000";
    }
    if (key == "id") {
      return unique();
    }
    if (key == "thickness_mm") {
      return "4" + std::to_string(round_ % 10) + "." + std::to_string(100 + round_);
    }
    if (last_of(parent_of(place)) == "spot_angles_deg") {
      return "0." + std::to_string(100000 + round_);
    }
    const auto found = good.find(key);
    return found == good.end() ? std::nullopt : std::optional(found->second);
  }

  bool mend_list(DraftJson& body, const Error& fault, const std::string& key) {
    if (fault.code == "too_many") {
      auto& list = value_at(body, fault.place)->get_ref<DraftJson::array_t&>();
      list.resize(key == "spot_angles_deg" ? 12 : key == "constants" ? 20 : key == "parts" ? 100 : 200);
      return true;
    }
    if (key == "spot_angles_deg") {
      return put(body, fault.place, {"0", "1", "2"});
    }
    return key == "shims" &&
           put(body, fault.place, DraftJson::array({{{"id", "x"}, {"thickness_mm", "1"}, {"u_mm", "1"}}}));
  }

  bool mend_spec(DraftJson& body, const Error& fault) {
    const std::string key = last_of(fault.place);
    const std::string list = last_of(parent_of(fault.place));
    if (fault.place.find("/bins") != std::string::npos) {
      return put(body, fault.place.substr(0, fault.place.find("/bins") + 5), nullptr);
    }
    if (fault.place == "/source") {
      body["source"] = "x";
      fill_sources(body, "x");
      return true;
    }
    if (fault.code == "too_few" || fault.code == "too_many") {
      return mend_list(body, fault, key);
    }
    if (fault.code == "unknown_field" || fault.code == "wrong_method") {
      value_at(body, parent_of(fault.place))->erase(key);
      return true;
    }
    if (fault.code == "wrong_id" && (list == "limits" || list == "work_values")) {
      DraftJson row = *value_at(body, fault.place);
      value_at(body, parent_of(fault.place))->erase(key);
      return put(body, parent_of(fault.place) + "/" + unique(), std::move(row));
    }
    if (key == "least" || key == "most") {
      return mend_limit(body, fault, key);
    }
    if (key == "least_mm" || key == "most_mm") {
      return mend_float_limits(body, fault);
    }
    if (key == "method") {
      DraftJson& side = *value_at(body, parent_of(fault.place));
      return put_method(body, fault.place, side.contains("depth") ? "depth" : "gauge_fit");
    }
    if (list == "title" && key != "en") {
      value_at(body, parent_of(fault.place))->erase(key);
      return true;
    }
    const auto good = good_value(key, fault.place);
    return good && put(body, fault.place, *good);
  }

  /// The place of the step a fault lies in; blank for a fault of a stage or the sheet.
  [[nodiscard]] static std::string step_of(const std::string& place) {
    const std::size_t steps = place.find("/steps/");
    if (steps == std::string::npos) {
      return "";
    }
    return place.substr(0, place.find('/', steps + 7));
  }

  bool mend_step(DraftJson& body, const Error& fault, bool again) {
    const std::string key = last_of(fault.place);
    const std::string step = step_of(fault.place);
    if (!again && key == "en") {
      return put(body, fault.place, "x");
    }
    if (!again && key == "id") {
      return put(body, fault.place, fault.place == "/id" ? "00000000-0000-7000-8000-000000000000" : unique());
    }
    if (!again && (fault.place == "/name" || fault.place == "/issue")) {
      return put(body, fault.place, fault.place == "/name" ? DraftJson("x") : DraftJson(1));
    }
    // What else is wrong in a step makes it a plain one; the sheet ends with a signature all the same.
    if (step.empty() || mended_.count(step) > 0) {
      return false;
    }
    mended_.insert(step);
    DraftJson plain = {{"id", unique()}, {"kind", "do"}, {"title", {{"en", "x"}}}};
    if (const DraftJson* id = value_at(std::as_const(body), step + "/id"); id != nullptr && id->is_string()) {
      plain["id"] = *id;
    }
    if (value_at(std::as_const(body), step + "/kind") != nullptr &&
        body[DraftJson::json_pointer(step)]["kind"] == "sign") {
      plain["kind"] = "sign";
      plain["signer"] = "technician";
    }
    return put(body, step, std::move(plain));
  }

  SheetKind kind_;
  int round_ = 0;
  std::set<std::string> seen_;
  std::set<std::string> mended_;
};

/// In the words of a form, not of a file.
Error as_in_a_form(Error fault, const DraftJson& body) {
  const DraftJson* value = value_at(body, fault.place);
  const bool blank = value != nullptr && value->is_string() && is_blank(value->get_ref<const std::string&>());
  const bool is_limit = fault.code == "missing_field" && last_of(fault.place) == "most";
  if (blank) {
    return {"empty", std::move(fault.place), {SHIMWRIGHT_TEXT("sheet", "This is still to be filled in."), {}}};
  }
  if (is_limit) {
    return {"empty",
            std::move(fault.place),
            {SHIMWRIGHT_TEXT("sheet", "Fill in the lower or the upper limit, or both."), {}}};
  }
  if (fault.code == "wrong_type" && value != nullptr && value->is_string()) {
    fault.message = {SHIMWRIGHT_TEXT("sheet", "A whole number has to stand here."), {}};
  }
  return fault;
}

}  // namespace

std::vector<Error> faults_of(const SheetDraft& draft) {
  const std::string file = file_of(draft);
  std::vector<Error> faults;
  auto fault = first_fault(draft.kind, file);
  if (!fault) {
    return faults;
  }
  const DraftJson as_written = body_of({draft.kind, file});
  DraftJson body = as_written;
  Repair repair(draft.kind);
  for (int round = 0; fault && round < most_rounds; ++round) {
    const bool told =
        std::any_of(faults.begin(), faults.end(), [&fault](const Error& each) { return each.place == fault->place; });
    if (!told) {
      faults.push_back(as_in_a_form(*fault, as_written));
    }
    if (!repair.mend(body, *fault)) {
      break;
    }
    fault = first_fault(draft.kind, body.dump());
  }
  return faults;
}

bool is_still_blank(const Error& fault) {
  constexpr std::array blank{std::string_view("empty"), std::string_view("too_few"), std::string_view("missing_field"),
                             std::string_view("blank")};
  return std::find(blank.begin(), blank.end(), fault.code) != blank.end();
}

}  // namespace shimwright::sheet
