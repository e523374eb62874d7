#include "shimwright/record/record_json.h"

#include "record_json_parts.h"
#include "shimwright/json/canonical.h"

namespace shimwright::record {

namespace {

using parts_json::Json;
using parts_json::list_of;
using parts_json::of;

Json sealed_json(const Record& record) {
  return {{"workshop", {{"name", record.workshop_name}, {"address", record.workshop_address}}},
          {"demonstration", record.demonstration()},
          {"entries", record.entries},
          {"job", of(record.job)},
          {"vehicle", of(record.vehicle)},
          {"result", list_of(record.result)},
          {"shims", list_of(record.shims)},
          {"old_shims", list_of(record.old_shims)},
          {"floats", list_of(record.floats)},
          {"readings", list_of(record.readings)},
          {"peaks", list_of(record.peaks)},
          {"teach_ins", list_of(record.teach_ins)},
          {"parts", list_of(record.parts)},
          {"deviations", list_of(record.deviations)},
          {"disagreements", list_of(record.disagreements)},
          {"not_measured", list_of(record.not_measured)},
          {"answers", list_of(record.answers)},
          {"confirmations", list_of(record.confirmations)},
          {"photos", list_of(record.photos)},
          {"signatures", list_of(record.signatures)},
          {"notes", list_of(record.notes)},
          {"stops", list_of(record.stops)},
          {"assemblies", list_of(record.assemblies)},
          {"taken_back", list_of(record.taken_back)},
          {"work_values", list_of(record.work_values)}};
}

/// What was erased is not there: its digest in the vehicle part says that it once was.
Json personal_json(const Record& record) {
  Json texts = Json::object();
  for (const auto* each : {&record.vehicle.plate, &record.vehicle.customer_reference, &record.vehicle.complaint}) {
    if (*each && (*each)->content) {
      texts[(*each)->id] = {{"text", (*each)->content->text}, {"salt", (*each)->content->salt}};
    }
  }
  return texts;
}

/// Text in a record comes from entries and sheets that were read as UTF-8, and numbers in it are bounded by the number
/// reader, so this does not fail; were it to, an empty text says so better than half a record.
std::string bytes_of(const Json& value) {
  const auto bytes = json::canonical(value);
  return bytes ? *bytes : std::string();
}

}  // namespace

std::string sealed_part(const Record& record) {
  return bytes_of(sealed_json(record));
}

std::string sealed_part_with_shims_joined(const Record& record) {
  Record joined = record;
  joined.shims.clear();
  for (const ShimUse& use : record.shims) {
    const bool follows = !joined.shims.empty() && joined.shims.back().side == use.side;
    if (!follows || !use.trials.empty() || !use.depths.empty() || !use.choices.empty()) {
      joined.shims.push_back(use);
      continue;
    }
    ShimUse& before = joined.shims.back();
    before.assemblies.insert(before.assemblies.end(), use.assemblies.begin(), use.assemblies.end());
    before.measured.insert(before.measured.end(), use.measured.begin(), use.measured.end());
  }
  return sealed_part(joined);
}

std::string record_json(const Record& record) {
  return bytes_of({{"format", "shimwright.record"},
                   {"version", 1},
                   {"min_reader", 1},
                   {"record", sealed_json(record)},
                   {"personal", personal_json(record)}});
}

}  // namespace shimwright::record
