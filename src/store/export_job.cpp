#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

#include "disk.h"
#include "job_file_check.h"
#include "job_file_reading.h"
#include "load.h"
#include "opening.h"
#include "photos.h"
#include "seal_rows.h"
#include "shimwright/store/exchange.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

namespace {

Result<void> add_names(Connection& connection, JobLine& line, const std::vector<job::Entry>& entries) {
  auto id = connection.value("SELECT id FROM store");
  if (!id) {
    return passed_on(id);
  }
  line.store = std::holds_alternative<std::string>(*id) ? std::get<std::string>(*id) : std::string();
  const Registers registers(connection);
  auto workshop = registers.workshop();
  if (!workshop) {
    return passed_on(workshop);
  }
  if (const std::optional<Workshop>& known = *workshop) {
    line.workshop = known->name;
  }
  auto persons = registers.persons();
  if (!persons) {
    return passed_on(persons);
  }
  const std::set<std::string> named = persons_of(entries);
  for (const Person& each : *persons) {
    if (named.count(each.id) != 0) {
      line.persons.push_back({each.id, each.name, each.initials});
    }
  }
  return {};
}

Result<void> add_sheets(Connection& connection, JobLine& line, const job::Opened& opened) {
  const Registers registers(connection);
  auto sheet = registers.job_sheet(opened.sheet_hash);
  auto spec = registers.spec_sheet(opened.spec_hash);
  if (!sheet || !spec) {
    return sheet ? passed_on(spec) : passed_on(sheet);
  }
  line.job_sheet = std::move(sheet->json);
  line.spec_sheet = std::move(spec->json);
  return {};
}

Result<void> add_texts(Connection& connection, JobLine& line, const job::Opened& opened) {
  for (const job::PrivateReference& each : texts_of(opened)) {
    auto rows = connection.rows("SELECT salt, text FROM private_text WHERE id = ? AND text IS NOT NULL", {each.id});
    if (!rows) {
      return passed_on(rows);
    }
    if (!rows->empty()) {
      line.personal[each.id] = {text_in(rows->front(), 1), text_in(rows->front(), 0)};
    }
  }
  return {};
}

Result<void> add_seal(Connection& connection, JobLine& line) {
  auto seal = seal_rows(connection, line.job);
  if (!seal && seal.error().code != "not_sealed") {
    return passed_on(seal);
  }
  if (seal) {
    line.seal = std::move(*seal);
  }
  return {};
}

tl::unexpected<Error> photo_is_missing(const std::string& sha256) {
  return refuse("photo_missing", sha256,
                SHIMWRIGHT_TEXT("store",
                                "This photo of the job is gone or changed, so the job file would not be whole; run "
                                "the check of the store."));
}

Result<void> add_photos(const Connection& connection, JobLine& line, const std::vector<job::Entry>& entries) {
  for (const std::string& sha256 : photos_of(entries)) {
    const QFileInfo file(photo_place(connection.path(), sha256));
    if (!file.isFile() || file.size() == 0) {
      return photo_is_missing(sha256);
    }
    line.photos.push_back({sha256, file.size()});
  }
  return {};
}

/// The first line, from one view of the store.
Result<CheckedJobFile> gathered(Connection& connection, const std::string& job) {
  const auto view = OneView::begin(connection);
  if (!view) {
    return tl::make_unexpected(view.error());
  }
  auto stored = stored_entries(connection, job);
  if (!stored) {
    return passed_on(stored);
  }
  if (stored->empty()) {
    return refuse("unknown_job", job, SHIMWRIGHT_TEXT("store", "This job is not in the store."));
  }
  JobLine line;
  line.job = job;
  line.entries = std::move(*stored);
  std::vector<job::Entry> entries;
  for (const record::StoredEntry& each : line.entries) {
    auto entry = record::decoded(each);
    if (!entry) {
      return passed_on(entry);
    }
    entries.push_back(std::move(*entry));
  }
  const auto* opened = std::get_if<job::Opened>(&entries.front().body);
  Result<void> added = opened == nullptr ? Result<void>() : add_sheets(connection, line, *opened);
  added = added && opened != nullptr ? add_texts(connection, line, *opened) : added;
  added = added ? add_names(connection, line, entries) : added;
  added = added ? add_seal(connection, line) : added;
  added = added ? add_photos(connection, line, entries) : added;
  if (!added) {
    return passed_on(added);
  }
  auto whole = checked(std::move(line));
  if (!whole) {
    return refuse("job_damaged", job,
                  SHIMWRIGHT_TEXT("store",
                                  "This job is not as it was written, so it is not handed on; run the check of the "
                                  "store."));
  }
  return whole;
}

/// Whether an older export of this job lies there, or nothing.
Result<void> check_free(const QString& out, const std::string& job) {
  if (!QFileInfo::exists(out)) {
    return {};
  }
  auto reading = JobFileReading::begin(out);
  auto line = reading ? (*reading)->job() : tl::make_unexpected(reading.error());
  if (!line || line->job != job) {
    return refuse("file_in_the_way", "",
                  SHIMWRIGHT_TEXT("store",
                                  "Something other than an older file of this job lies there and is not written "
                                  "over; choose another name."));
  }
  return {};
}

tl::unexpected<Error> export_stopped() {
  return refuse("stopped", "", SHIMWRIGHT_TEXT("store", "The export was stopped; no file was left."));
}

Result<QByteArray> photo_content(const Connection& connection, const FilePhoto& photo) {
  QFile file(photo_place(connection.path(), photo.sha256));
  if (!file.open(QIODevice::ReadOnly)) {
    return photo_is_missing(photo.sha256);
  }
  QByteArray content = file.readAll();
  if (content.size() != photo.bytes ||
      record::sha256_hex({content.constData(), static_cast<std::size_t>(content.size())}) != photo.sha256) {
    return photo_is_missing(photo.sha256);
  }
  return content;
}

/// Writes lines and keeps the hash over them.
class HashedLines {
 public:
  explicit HashedLines(WholeFile& file) : file_(&file) {}
  [[nodiscard]] Result<void> write(const QByteArray& line) {
    hash_.addData(line);
    hash_.addData(QByteArrayView("\n"));
    return file_->write(line + '\n');
  }
  [[nodiscard]] Result<void> write_end() { return file_->write(end_line(hash_.result().toHex().toStdString()) + '\n'); }

 private:
  WholeFile* file_;
  QCryptographicHash hash_{QCryptographicHash::Sha256};
};

Result<void> write_lines(const Connection& connection, const JobLine& line, WholeFile& file, const BackupWatch& watch) {
  HashedLines lines(file);
  auto first = written(line);
  if (!first) {
    return passed_on(first);
  }
  if (auto done = lines.write(*first); !done) {
    return done;
  }
  std::int64_t done = 0;
  for (const FilePhoto& each : line.photos) {
    if (watch.stop != nullptr && watch.stop->load()) {
      return export_stopped();
    }
    auto content = photo_content(connection, each);
    if (!content) {
      return passed_on(content);
    }
    if (auto wrote = lines.write(photo_line(each.sha256, *content)); !wrote) {
      return wrote;
    }
    if (watch.progress) {
      watch.progress(++done, static_cast<std::int64_t>(line.photos.size()) + 1);
    }
  }
  return lines.write_end();
}

/// As an import would read it.
Result<void> read_again(const QString& path) {
  auto reading = JobFileReading::begin(path);
  auto line = reading ? (*reading)->job() : tl::make_unexpected(reading.error());
  if (!line) {
    return passed_on(line);
  }
  for (const FilePhoto& each : line->photos) {
    if (auto photo = (*reading)->photo(each); !photo) {
      return passed_on(photo);
    }
  }
  return (*reading)->end();
}

}  // namespace

std::string export_name(const std::string& number, const std::string& job) {
  std::string plain;
  for (const char each : number) {
    const bool stays = (each >= '0' && each <= '9') || (each >= 'A' && each <= 'Z') || (each >= 'a' && each <= 'z');
    plain += stays ? each : '-';
  }
  return "job-" + plain.substr(0, 60) + "-" + job + ".jsonl";
}

Result<ExportReport> export_job(const std::string& store_path, const std::string& job, const std::string& out,
                                const BackupWatch& watch) {
  for (const std::string& path : {store_path, out}) {
    if (auto checked_path = check_path(path); !checked_path) {
      return passed_on(checked_path);
    }
  }
  auto connection = connect_checked(QString::fromStdString(store_path), Access::look);
  if (!connection) {
    return passed_on(connection);
  }
  auto whole = gathered(**connection, job);
  if (!whole) {
    return passed_on(whole);
  }
  const QString place = QString::fromStdString(out);
  if (auto free = check_free(place, job); !free) {
    return passed_on(free);
  }
  auto file = WholeFile::begin(place);
  if (!file) {
    return passed_on(file);
  }
  auto done = write_lines(**connection, whole->line, *file, watch);
  auto part = done ? file->unnamed() : tl::make_unexpected(done.error());
  done = part ? read_again(*part) : passed_on(part);
  done = done ? file->name() : done;
  if (!done) {
    return passed_on(done);
  }
  return ExportReport{out, whole->opened.number, static_cast<std::int64_t>(whole->entries.size()),
                      static_cast<std::int64_t>(whole->line.photos.size())};
}

}  // namespace shimwright::store
