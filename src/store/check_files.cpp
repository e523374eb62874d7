#include <QFileInfo>

#include "check_parts.h"
#include "copy.h"
#include "own_schema.h"
#include "photos.h"

namespace shimwright::store {

namespace {

Result<void> check_schema(Connection& connection, CheckReport& report) {
  auto ours = has_own_schema(connection);
  if (!ours) {
    return passed_on(ours);
  }
  if (!*ours) {
    add_finding(
        report, "schema_differs", "sqlite_schema", "", std::nullopt,
        {SHIMWRIGHT_TEXT("store", "A table, index or trigger of the store was changed, added or taken away."), {}});
  }
  return {};
}

Result<void> check_sheets_of(Connection& connection, const char* table, const char* sql, CheckReport& report) {
  auto rows = connection.rows(sql);
  if (!rows) {
    return passed_on(rows);
  }
  for (const Row& row : *rows) {
    if (record::sha256_hex(bytes_in(row, 1)) != text_in(row, 0)) {
      add_finding(report, "sheet_changed", table, "", std::nullopt,
                  {SHIMWRIGHT_TEXT("store", "The issue {0} was changed after it was stored."), {text_in(row, 0)}});
    }
  }
  return {};
}

Result<void> check_text(Connection& connection, const CheckedJob& job, const job::PrivateReference& reference,
                        CheckReport& report) {
  auto rows = connection.rows("SELECT salt, text FROM private_text WHERE id = ?", {reference.id});
  if (!rows) {
    return passed_on(rows);
  }
  if (rows->empty()) {
    add_finding(
        report, "text_missing", "private_text", job.id, 1,
        {SHIMWRIGHT_TEXT("store", "A personal text of this job is gone; erasing would have left its place."), {}});
    return {};
  }
  const auto salt = optional_text_in(rows->front(), 0);
  const auto text = optional_text_in(rows->front(), 1);
  if (!salt || !text) {
    ++report.erased_texts;
  } else if (record::private_digest(*salt, *text) != reference.digest) {
    add_finding(report, "text_changed", "private_text", job.id, 1,
                {SHIMWRIGHT_TEXT("store", "A personal text of this job was changed after it was stored."), {}});
  }
  return {};
}

void check_photo(const QString& store_path, const CheckedJob& job, std::int64_t seq, const job::PhotoTaken& photo,
                 CheckReport& report) {
  ++report.photos;
  const QString place = photo_place(store_path, photo.sha256);
  if (!QFileInfo::exists(place)) {
    add_finding(report, "photo_missing", "photo", job.id, seq,
                {SHIMWRIGHT_TEXT("store", "The photo {0} is gone from the folder of photos."), {photo.sha256}});
  } else if (hash_of_file(place) != photo.sha256) {
    add_finding(report, "photo_changed", "photo", job.id, seq,
                {SHIMWRIGHT_TEXT("store", "The photo {0} was changed after it was taken."), {photo.sha256}});
  }
}

}  // namespace

Result<void> check_file_and_schema(Connection& connection, CheckReport& report) {
  auto fault = fault_of_file(connection);
  if (!fault) {
    return passed_on(fault);
  }
  if (const auto& found = *fault) {
    add_finding(report, "file_damaged", "sqlite_schema", "", std::nullopt,
                {SHIMWRIGHT_TEXT("store", "The file itself is damaged: {0}."), {*found}});
  }
  return check_schema(connection, report);
}

Result<void> check_sheets(Connection& connection, CheckReport& report) {
  if (auto checked = check_sheets_of(connection, "job_sheet", "SELECT hash, json FROM job_sheet", report); !checked) {
    return checked;
  }
  return check_sheets_of(connection, "spec_sheet", "SELECT hash, json FROM spec_sheet", report);
}

Result<void> check_private_texts(Connection& connection, const CheckedJob& job, CheckReport& report) {
  const auto* opened = job.entries.empty() ? nullptr : std::get_if<job::Opened>(&job.entries.front().body);
  if (opened == nullptr) {
    return {};
  }
  for (const auto* reference : {&opened->plate, &opened->customer_reference, &opened->complaint}) {
    if (*reference) {
      if (auto checked = check_text(connection, job, **reference, report); !checked) {
        return checked;
      }
    }
  }
  return {};
}

bool CheckReport::whole_but_for_photos() const {
  return std::all_of(findings.begin(), findings.end(), [](const Finding& each) { return each.table == "photo"; });
}

void check_photos(const QString& store_path, const CheckedJob& job, CheckReport& report) {
  for (const job::Entry& entry : job.entries) {
    const auto* photo = std::get_if<job::PhotoTaken>(&entry.body);
    if (photo != nullptr) {
      check_photo(store_path, job, entry.seq, *photo, report);
    }
  }
}

}  // namespace shimwright::store
