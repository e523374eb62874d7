#include <algorithm>

#include <QFileInfo>

#include "append.h"
#include "arrival.h"
#include "disk.h"
#include "job_file_check.h"
#include "job_file_reading.h"
#include "load.h"
#include "opening.h"
#include "photos.h"
#include "seal_rows.h"
#include "shimwright/job/evolve.h"
#include "shimwright/store/exchange.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

namespace {

bool stop_wanted(const BackupWatch& watch) {
  return watch.stop != nullptr && watch.stop->load();
}

tl::unexpected<Error> import_stopped() {
  return refuse("stopped", "", SHIMWRIGHT_TEXT("store", "The import was stopped; the store is as it was."));
}

/// The whole file once, from its first line to its last.
Result<CheckedJobFile> looked_through(const QString& path, const BackupWatch& watch) {
  auto reading = JobFileReading::begin(path);
  auto line = reading ? (*reading)->job() : tl::make_unexpected(reading.error());
  auto file = line ? checked(std::move(*line)) : tl::make_unexpected(line.error());
  if (!file) {
    return file;
  }
  for (const FilePhoto& each : file->line.photos) {
    if (stop_wanted(watch)) {
      return import_stopped();
    }
    if (auto photo = (*reading)->photo(each); !photo) {
      return passed_on(photo);
    }
  }
  if (auto ended = (*reading)->end(); !ended) {
    return passed_on(ended);
  }
  return file;
}

/// How many entries of the job are here already: the first of the file, or all of it and more.
Result<std::int64_t> entries_here(Connection& connection, const JobLine& line) {
  auto here = stored_entries(connection, line.job);
  if (!here) {
    return passed_on(here);
  }
  const std::size_t both = std::min(here->size(), line.entries.size());
  for (std::size_t at = 0; at < both; ++at) {
    if ((*here)[at] != line.entries[at]) {
      return refuse("job_forked", "",
                    SHIMWRIGHT_TEXT("store",
                                    "From entry {0} on this job went another way here than in the file, so it stays "
                                    "as it is; what the file has more can be noted by hand."),
                    {std::to_string(at + 1)});
    }
  }
  return static_cast<std::int64_t>(here->size());
}

Result<std::int64_t> write_photos(const QString& store_path, const QString& path, const BackupWatch& watch) {
  auto reading = JobFileReading::begin(path);
  auto line = reading ? (*reading)->job() : tl::make_unexpected(reading.error());
  if (!line) {
    return passed_on(line);
  }
  std::int64_t fresh = 0;
  std::int64_t done = 0;
  for (const FilePhoto& each : line->photos) {
    if (stop_wanted(watch)) {
      return import_stopped();
    }
    auto content = (*reading)->photo(each);
    if (!content) {
      return passed_on(content);
    }
    const QString place = photo_place(store_path, each.sha256);
    if (hash_of_file(place) != each.sha256) {
      if (auto wrote = write_photo(place, *content); !wrote) {
        return passed_on(wrote);
      }
      ++fresh;
    }
    if (watch.progress) {
      watch.progress(++done, static_cast<std::int64_t>(line->photos.size()) + 1);
    }
  }
  return fresh;
}

/// Who worked on the job elsewhere is known here by name, and works here no more than before.
Result<void> add_persons(Connection& connection, const JobLine& line, const By& by, ImportReport& report) {
  Registers registers(connection);
  auto here = registers.persons();
  if (!here) {
    return passed_on(here);
  }
  for (const FilePerson& each : line.persons) {
    const auto known =
        std::find_if(here->begin(), here->end(), [&each](const Person& person) { return person.id == each.id; });
    if (known == here->end()) {
      if (auto put = registers.put(Person{each.id, each.name, each.initials, std::nullopt, false}, by); !put) {
        return put;
      }
    } else if (known->name != each.name || known->initials != each.initials) {
      report.told.push_back({SHIMWRIGHT_TEXT("store", "“{0}” of the file is “{1}” here; the name here stays."),
                             {each.name, known->name}});
    }
  }
  return {};
}

Result<void> add_sheet_rows(Connection& connection, const CheckedJobFile& file, const By& by) {
  const SheetIssue sheet{file.opened.sheet_hash, file.sheets.job->id, file.sheets.job->name,
                         file.sheets.job->issue, file.line.job_sheet, by.moment.at_ms};
  const SheetIssue spec{file.opened.spec_hash,   file.sheets.spec->id, file.sheets.spec->gearbox,
                        file.sheets.spec->issue, file.line.spec_sheet, by.moment.at_ms};
  if (auto kept = keep_sheet_of_arrival(connection, "job_sheet", sheet); !kept) {
    return kept;
  }
  return keep_sheet_of_arrival(connection, "spec_sheet", spec);
}

/// What is here stays, erased or not; gives those that can be read here.
Result<std::vector<job::PrivateText>> add_private_texts(Connection& connection, const CheckedJobFile& file) {
  std::vector<job::PrivateText> readable;
  for (const job::PrivateReference& each : texts_of(file.opened)) {
    const auto given = file.line.personal.find(each.id);
    const bool there = given != file.line.personal.end();
    auto inserted = connection.execute(
        "INSERT INTO private_text (id, salt, text) VALUES (?, ?, ?) ON CONFLICT (id) DO NOTHING",
        {each.id, there ? text_value(given->second.salt) : Value(), there ? text_value(given->second.text) : Value()});
    if (!inserted) {
      return passed_on(inserted);
    }
    auto kept = connection.rows("SELECT salt, text FROM private_text WHERE id = ? AND text IS NOT NULL", {each.id});
    if (!kept) {
      return passed_on(kept);
    }
    if (kept->empty()) {
      continue;
    }
    job::PrivateText text{each.id, text_in(kept->front(), 0), text_in(kept->front(), 1), each.digest};
    if (record::private_digest(text.salt, text.text) != each.digest) {
      return refuse("job_file_wrong", "/personal",
                    SHIMWRIGHT_TEXT("store",
                                    "This job file does not hold together here, so nothing was taken from it: have it "
                                    "exported anew."));
    }
    readable.push_back(std::move(text));
  }
  return readable;
}

Result<void> add_seal_rows(Connection& connection, const JobLine& line, std::int64_t here) {
  if (!line.seal) {
    return {};
  }
  const record::SignedRecord& seal = *line.seal;
  if (seal.statement.entries + 1 > here) {
    if (auto put = insert_seal(connection, seal.statement, seal.signatures, seal.record, seal.code); !put) {
      return put;
    }
  }
  for (const record::SignedAddendum& each : seal.addenda) {
    if (each.statement.entry > here) {
      if (auto put = insert_addendum(connection, each); !put) {
        return put;
      }
    }
  }
  return {};
}

Result<void> add_entries(Connection& connection, const CheckedJobFile& file, std::int64_t here, const By& by) {
  auto texts = add_private_texts(connection, file);
  if (!texts) {
    return passed_on(texts);
  }
  const JobLine& line = file.line;
  const std::vector<record::StoredEntry> stored(line.entries.begin() + here, line.entries.end());
  const std::vector<job::Entry> entries(file.entries.begin() + here, file.entries.end());
  const job::JobState after = job::fold(file.sheets, file.entries);
  if (auto kept = append_chained(connection, {line.job, stored, entries, *texts}, after); !kept) {
    return kept;
  }
  if (auto sealed = add_seal_rows(connection, line, here); !sealed) {
    return sealed;
  }
  return note_arrival(connection, line.job, {line.store, here + 1, line.entries.back().seq}, by);
}

Result<void> tell_equal_numbers(Connection& connection, ImportReport& report) {
  auto others = connection.value("SELECT count(*) FROM job WHERE number = ? AND id <> ?", {report.number, report.job});
  if (!others) {
    return passed_on(others);
  }
  if (*others != number_value(0)) {
    report.told.push_back(
        {SHIMWRIGHT_TEXT("store",
                         "Another job here has the number {0} as well: tell the two apart by vehicle and date."),
         {report.number}});
  }
  return {};
}

/// All that is new, in one transaction.
Result<void> take_in(Connection& connection, const CheckedJobFile& file, const By& by, ImportReport& report) {
  auto transaction = Transaction::begin(connection);
  if (!transaction) {
    return passed_on(transaction);
  }
  auto here = entries_here(connection, file.line);
  if (!here) {
    return passed_on(here);
  }
  report.entries_there = *here;
  report.entries_new = std::max<std::int64_t>(static_cast<std::int64_t>(file.entries.size()) - *here, 0);
  if (report.entries_new == 0) {
    return {};
  }
  Result<void> added = add_sheet_rows(connection, file, by);
  added = added ? add_persons(connection, file.line, by, report) : added;
  added = added ? add_entries(connection, file, *here, by) : added;
  added = added ? tell_equal_numbers(connection, report) : added;
  return added ? transaction->commit() : added;
}

}  // namespace

Result<ImportReport> import_job(const std::string& store_path, const std::string& file, const By& by,
                                const BackupWatch& watch) {
  if (auto path = check_path(store_path); !path) {
    return passed_on(path);
  }
  const QString place = QString::fromStdString(file);
  auto checked_file = looked_through(place, watch);
  if (!checked_file) {
    return passed_on(checked_file);
  }
  auto connection = connect_beside(QString::fromStdString(store_path));
  if (!connection) {
    return passed_on(connection);
  }
  const JobLine& line = checked_file->line;
  ImportReport report;
  report.job = line.job;
  report.number = checked_file->opened.number;
  report.from_store = line.store;
  report.from_workshop = line.workshop;
  report.sealed = line.seal.has_value();
  if (auto here = entries_here(**connection, line); !here) {
    return passed_on(here);
  }
  auto photos = write_photos((*connection)->path(), place, watch);
  if (!photos) {
    return passed_on(photos);
  }
  report.photos_new = *photos;
  if (auto taken = take_in(**connection, *checked_file, by, report); !taken) {
    return passed_on(taken);
  }
  return report;
}

}  // namespace shimwright::store
