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

Result<void> check_jobs(Connection& connection, std::vector<CheckedJob>& jobs, CheckReport& report) {
  auto ids = jobs_with_entries(connection);
  if (!ids) {
    return passed_on(ids);
  }
  for (const std::string& id : *ids) {
    auto job = checked_job(connection, id);
    if (!job) {
      return passed_on(job);
    }
    check_job_chain(*job, report);
    report.entries += static_cast<std::int64_t>(job->stored.size());
    jobs.push_back(std::move(*job));
  }
  report.jobs = static_cast<std::int64_t>(jobs.size());
  return {};
}

/// One view of the store from the first to the last read, though somebody may write meanwhile.
class Reading {
 public:
  explicit Reading(Connection& connection) : connection_(&connection) {}
  [[nodiscard]] Result<void> begin() { return connection_->execute("BEGIN"); }
  ~Reading() { static_cast<void>(connection_->execute("ROLLBACK")); }
  Reading(const Reading&) = delete;
  Reading& operator=(const Reading&) = delete;

 private:
  Connection* connection_;
};

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

Result<CheckReport> check_connection(Connection& connection, std::vector<CheckedJob>& jobs) {
  CheckReport report;
  Reading reading(connection);
  if (auto begun = reading.begin(); !begun) {
    return passed_on(begun);
  }
  if (auto checked = check_file_and_schema(connection, report); !checked) {
    return passed_on(checked);
  }
  if (auto checked = check_jobs(connection, jobs, report); !checked) {
    return passed_on(checked);
  }
  if (auto checked = check_heads(connection, jobs, report); !checked) {
    return passed_on(checked);
  }
  if (auto checked = check_sheets(connection, report); !checked) {
    return passed_on(checked);
  }
  if (auto checked = check_derived(connection, jobs, report); !checked) {
    return passed_on(checked);
  }
  if (auto checked = check_private_texts(connection, jobs, report); !checked) {
    return passed_on(checked);
  }
  return report;
}

Result<CheckReport> check(const Store& store) {
  std::vector<CheckedJob> jobs;
  auto report = check_connection(store.connection(), jobs);
  if (report) {
    check_photos(store.connection().path(), jobs, *report);
  }
  return report;
}

}  // namespace shimwright::store
