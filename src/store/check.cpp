#include "shimwright/store/check.h"

#include <utility>

#include "check_parts.h"
#include "load.h"

namespace shimwright::store {

namespace {

Result<std::vector<std::string>> jobs_with_entries(Connection& connection) {
  auto rows = connection.rows("SELECT DISTINCT job FROM entry ORDER BY job");
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<std::string> jobs;
  for (const Row& row : *rows) {
    jobs.push_back(text_in(row, 0));
  }
  return jobs;
}

Result<CheckedJob> checked_job(Connection& connection, const std::string& id) {
  auto stored = stored_entries(connection, id);
  if (!stored) {
    return passed_on(stored);
  }
  CheckedJob job{id, std::move(*stored), {}};
  for (const record::StoredEntry& each : job.stored) {
    auto entry = record::decoded(each);
    if (!entry) {
      break;
    }
    job.entries.push_back(std::move(*entry));
  }
  return job;
}

Result<void> check_job(Connection& connection, SheetShelf& shelf, const std::string& id, const LastHeads& heads,
                       const std::optional<QString>& photos_of, CheckReport& report) {
  auto job = checked_job(connection, id);
  if (!job) {
    return passed_on(job);
  }
  ++report.jobs;
  report.entries += static_cast<std::int64_t>(job->stored.size());
  check_job_chain(*job, heads, report);
  if (photos_of) {
    check_photos(*photos_of, *job, report);
  }
  if (auto checked = check_derived(connection, shelf, *job, report); !checked) {
    return checked;
  }
  if (auto checked = check_seal(connection, *job, report); !checked) {
    return checked;
  }
  return check_private_texts(connection, *job, report);
}

Result<void> check_jobs(Connection& connection, LastHeads heads, const std::optional<QString>& photos_of,
                        const BackupWatch& watch, CheckReport& report) {
  auto ids = jobs_with_entries(connection);
  if (!ids) {
    return passed_on(ids);
  }
  SheetShelf shelf(connection);
  for (const std::string& id : *ids) {
    if (watch.stop != nullptr && watch.stop->load()) {
      return refuse("stopped", "", SHIMWRIGHT_TEXT("store", "This was stopped before its end; nothing was changed."));
    }
    if (watch.progress) {
      watch.progress(report.jobs, static_cast<std::int64_t>(ids->size()));
    }
    if (auto checked = check_job(connection, shelf, id, heads, photos_of, report); !checked) {
      return checked;
    }
    heads.erase(id);
  }
  for (const auto& [job, head] : heads) {
    add_finding(report, "missing_job", "entry", job, std::nullopt,
                {SHIMWRIGHT_TEXT("store", "This job was stored and is gone."), {}});
  }
  return check_listed_jobs(connection, report);
}

}  // namespace

std::string Finding::place() const {
  std::string text = job.empty() ? std::string() : "job " + job + ", ";
  text += seq ? "entry " + std::to_string(*seq) + ", " : std::string();
  return text + "table " + table;
}

void add_finding(CheckReport& report, std::string code, std::string table, std::string job,
                 std::optional<std::int64_t> seq, Message message) {
  report.findings.push_back({std::move(code), std::move(table), std::move(job), seq, std::move(message)});
}

Result<CheckReport> check_connection(Connection& connection, const std::optional<QString>& photos_of,
                                     const BackupWatch& watch) {
  CheckReport report;
  const auto view = OneView::begin(connection);
  if (!view) {
    return tl::make_unexpected(view.error());
  }
  if (auto checked = check_file_and_schema(connection, report); !checked) {
    return passed_on(checked);
  }
  if (auto checked = check_sheets(connection, report); !checked) {
    return passed_on(checked);
  }
  if (auto checked = check_registers(connection, report); !checked) {
    return passed_on(checked);
  }
  if (auto checked = check_sheet_lives(connection, report); !checked) {
    return passed_on(checked);
  }
  auto heads = check_heads(connection, report);
  if (!heads) {
    return passed_on(heads);
  }
  if (auto checked = check_jobs(connection, std::move(*heads), photos_of, watch, report); !checked) {
    return passed_on(checked);
  }
  return report;
}

Result<CheckReport> check(const Store& store, const BackupWatch& watch) {
  return check_connection(store.connection(), store.connection().path(), watch);
}

}  // namespace shimwright::store
