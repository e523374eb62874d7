#include "load.h"

#include "sheet_shelf.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

namespace {

record::StoredEntry stored_entry(const Row& row) {
  record::StoredEntry entry;
  entry.seq = number_in(row, 0);
  entry.moment = {number_in(row, 1), static_cast<int>(number_in(row, 2)), number_in(row, 3) != 0};
  entry.person = text_in(row, 4);
  entry.kind = text_in(row, 5);
  entry.kind_version = static_cast<int>(number_in(row, 6));
  entry.body = bytes_in(row, 7);
  entry.previous_hash = text_in(row, 8);
  entry.hash = text_in(row, 9);
  return entry;
}

Result<void> decode_all(LoadedJob& job) {
  for (const record::StoredEntry& stored : job.stored) {
    auto entry = record::decoded(stored);
    if (!entry) {
      Error error = std::move(entry.error());
      error.place = "entry " + std::to_string(stored.seq) + error.place;
      return tl::make_unexpected(std::move(error));
    }
    job.entries.push_back(std::move(*entry));
  }
  return {};
}

Result<void> load_texts(Connection& connection, LoadedJob& job) {
  auto rows = connection.rows(
      "SELECT private_text.id, private_text.text, private_text.salt FROM job JOIN private_text ON private_text.id IN "
      "(job.plate, "
      "job.customer_reference, job.complaint) WHERE job.id = ?",
      {job.id});
  if (!rows) {
    return passed_on(rows);
  }
  for (const Row& row : *rows) {
    job.private_texts.emplace(text_in(row, 0), optional_text_in(row, 1));
    job.private_salts.emplace(text_in(row, 0), text_in(row, 2));
  }
  return {};
}

Result<job::Sheets> sheets_of(SheetShelf& shelf, const std::vector<job::Entry>& entries) {
  const auto* opened = std::get_if<job::Opened>(&entries.front().body);
  if (opened == nullptr) {
    return refuse("not_foldable", "entry 1",
                  SHIMWRIGHT_TEXT("store", "This job does not begin with its opening: run the check of the store."));
  }
  return shelf.sheets(opened->sheet_hash, opened->spec_hash);
}

}  // namespace

Result<std::vector<record::StoredEntry>> stored_entries(Connection& connection, const std::string& job) {
  auto rows = connection.rows(
      "SELECT seq, at_ms, offset_min, clock_went_back, person, kind, kind_version, body, previous_hash, hash "
      "FROM entry WHERE job = ? ORDER BY seq",
      {job});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<record::StoredEntry> entries;
  for (const Row& row : *rows) {
    entries.push_back(stored_entry(row));
  }
  return entries;
}

Result<LoadedJob> Store::load(const std::string& job) const {
  auto stored = stored_entries(*connection_, job);
  if (!stored) {
    return passed_on(stored);
  }
  if (stored->empty()) {
    return refuse("unknown_job", job, SHIMWRIGHT_TEXT("store", "This job is not in the store."));
  }
  LoadedJob loaded;
  loaded.id = job;
  loaded.stored = std::move(*stored);
  if (auto decoded = decode_all(loaded); !decoded) {
    return passed_on(decoded);
  }
  if (auto texts = load_texts(*connection_, loaded); !texts) {
    return passed_on(texts);
  }
  auto sheets = sheets_of(*sheet_shelf_, loaded.entries);
  if (!sheets) {
    return passed_on(sheets);
  }
  loaded.sheets = *std::move(sheets);
  return loaded;
}

}  // namespace shimwright::store
