#include "shimwright/store/job_record.h"

#include <optional>
#include <utility>

#include "load.h"
#include "shimwright/job/evolve.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

namespace {

Result<record::RecordNames> record_names(Store& store, const LoadedJob& job) {
  record::RecordNames names;
  auto workshop = store.registers().workshop();
  if (!workshop) {
    return passed_on(workshop);
  }
  if (const std::optional<Workshop>& known = *workshop) {
    names.workshop_name = known->name;
    names.workshop_address = known->address;
  }
  auto persons = store.registers().persons();
  if (!persons) {
    return passed_on(persons);
  }
  for (const Person& each : *persons) {
    names.persons[each.id] = {each.initials, each.name};
  }
  for (const auto& [id, text] : job.private_texts) {
    const auto salt = job.private_salts.find(id);
    names.texts[id] = text && salt != job.private_salts.end() ? std::optional(record::PersonalText{*text, salt->second})
                                                              : std::nullopt;
  }
  return names;
}

}  // namespace

Result<record::Record> record_of(Store& store, const std::string& job) {
  auto loaded = store.load(job);
  if (!loaded) {
    return passed_on(loaded);
  }
  auto sheets = read_sheets(loaded->sheet_json, loaded->spec_json);
  if (!sheets) {
    return passed_on(sheets);
  }
  auto names = record_names(store, *loaded);
  if (!names) {
    return passed_on(names);
  }
  return record::make_record(job::fold(std::move(*sheets), loaded->entries), *names);
}

}  // namespace shimwright::store
