#include "shimwright/store/job_record.h"

#include <optional>
#include <utility>

#include "record_names.h"
#include "seal_rows.h"
#include "shimwright/job/evolve.h"
#include "shimwright/record/record_json.h"
#include "shimwright/record/seal_code.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

Result<record::RecordNames> record_names(Store& store, const LoadedJob& job) {
  record::RecordNames names;
  auto workshop = store.registers().workshop();
  if (!workshop) {
    return passed_on(workshop);
  }
  if (const std::optional<Workshop>& known = *workshop) {
    names.workshop_name = known->name;
    names.workshop_address = known->address;
    names.logo = known->logo ? known->logo->bytes : std::string();
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

namespace {

/// Made anew from the sealed entries under the names of that day, and shown only where it is what was frozen; that this
/// was signed is another question, which the mark answers.
Result<record::Record> sealed_record(const LoadedJob& job, const record::RecordNames& names,
                                     const record::SignedRecord& sealed, record::SealCheck check) {
  const auto count = static_cast<std::ptrdiff_t>(sealed.statement.entries);
  const std::vector<job::Entry> entries(job.entries.begin(), job.entries.begin() + count);
  record::Record record =
      record::make_record(job::fold(job.sheets, entries), record::names_as_frozen(sealed.record, names));
  if (record::sealed_part(record) != sealed.record && record::sealed_part_with_shims_joined(record) != sealed.record) {
    return refuse("sealed_differs", job.id,
                  SHIMWRIGHT_TEXT("store",
                                  "This record cannot be shown as it was sealed: it was changed, or sealed by another "
                                  "version of the program; see what “verify” says."));
  }
  record.seal = record::SealMark{record::seal_groups(record::digest_of(sealed.statement)), sealed.code,
                                 sealed.statement.moment, true, std::move(check)};
  for (const record::SignedAddendum& each : sealed.addenda) {
    const record::AddendumStatement& said = each.statement;
    record.addenda.push_back({said.signer.initials, said.signer.name, said.moment, said.reason, said.text,
                              record::seal_groups(record::digest_of(said))});
  }
  return record;
}

}  // namespace

Result<record::Record> record_of(Store& store, const std::string& job) {
  auto loaded = store.load(job);
  if (!loaded) {
    return passed_on(loaded);
  }
  auto names = record_names(store, *loaded);
  if (!names) {
    return passed_on(names);
  }
  auto sealed = seal_rows(store.connection(), job);
  if (!sealed && sealed.error().code != "not_sealed") {
    return passed_on(sealed);
  }
  if (sealed) {
    if (sealed->statement.entries >= static_cast<std::int64_t>(loaded->entries.size())) {
      return refuse("seal_damaged", job,
                    SHIMWRIGHT_TEXT("store", "Entries of this sealed job are gone: run the check of the store."));
    }
    auto check = seal_check(store, *loaded);
    return check ? sealed_record(*loaded, *names, *sealed, std::move(*check)) : passed_on(check);
  }
  return record::make_record(job::fold(loaded->sheets, loaded->entries), *names);
}

Result<record::ShiftSlip> shift_slip_of(Store& store, const std::string& job) {
  auto loaded = store.load(job);
  if (!loaded) {
    return passed_on(loaded);
  }
  auto names = record_names(store, *loaded);
  if (!names) {
    return passed_on(names);
  }
  return record::make_shift_slip(job::fold(loaded->sheets, loaded->entries), *names);
}

}  // namespace shimwright::store
