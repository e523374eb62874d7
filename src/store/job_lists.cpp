#include "job_lists.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>
#include <set>

#include "shimwright/store/store.h"

namespace shimwright::store {

namespace {

constexpr std::array<std::string_view, 3> standing_names = {"open", "parked", "closed"};

JobStanding standing_named(const std::string& name) {
  for (std::size_t index = 0; index < standing_names.size(); ++index) {
    if (standing_names.at(index) == name) {
      return static_cast<JobStanding>(index);
    }
  }
  return JobStanding::open;
}

}  // namespace

std::string_view name_of(JobStanding standing) {
  return standing_names.at(static_cast<std::size_t>(standing));
}

JobSummary summary_of(const Row& row, std::size_t first_column) {
  std::size_t column = first_column;
  JobSummary summary;
  summary.id = text_in(row, column++);
  summary.number = text_in(row, column++);
  summary.vehicle_key = text_in(row, column++);
  summary.gearbox = text_in(row, column++);
  summary.plate = optional_text_in(row, column++);
  summary.standing = standing_named(text_in(row, column++));
  summary.stage = text_in(row, column++);
  summary.next_step = text_in(row, column++);
  summary.assembly = static_cast<int>(number_in(row, column++));
  summary.waits_for = text_in(row, column++);
  summary.due = optional_text_in(row, column++);
  summary.at_bench = text_in(row, column++);
  summary.opened_at_ms = number_in(row, column++);
  summary.last_at_ms = number_in(row, column++);
  summary.last_seq = number_in(row, column++);
  return summary;
}

Result<std::vector<JobSummary>> job_list(Connection& connection, FixedText rest, const Row& values) {
  auto rows = connection.rows(std::string("SELECT ") + summary_columns +
                                  " FROM job LEFT JOIN private_text AS plate ON plate.id = job.plate " +
                                  std::string(rest.text()),
                              values);
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<JobSummary> list;
  for (const Row& row : *rows) {
    list.push_back(summary_of(row));
  }
  return list;
}

Result<std::vector<JobSummary>> Store::jobs(std::int64_t most) const {
  return job_list(*connection_, "ORDER BY job.opened_at_ms DESC, job.id DESC LIMIT ?", {number_value(most)});
}

Result<std::int64_t> Store::job_count() const {
  auto rows = connection_->rows("SELECT count(*) FROM job", {});
  if (!rows) {
    return passed_on(rows);
  }
  return rows->empty() ? 0 : number_in(rows->front(), 0);
}

Result<std::vector<JobSummary>> Store::open_jobs(std::int64_t most) const {
  // The inner query is answered by the index alone: rows are read of those only that are given.
  return job_list(*connection_,
                  "WHERE job.id IN (SELECT id FROM job WHERE standing IN ('open', 'parked')"
                  " ORDER BY last_at_ms DESC, id DESC LIMIT ?) ORDER BY job.last_at_ms DESC, job.id DESC",
                  {number_value(most)});
}

Result<std::int64_t> Store::open_job_count() const {
  auto rows = connection_->rows("SELECT count(*) FROM job WHERE standing IN ('open', 'parked')", {});
  if (!rows) {
    return passed_on(rows);
  }
  return rows->empty() ? 0 : number_in(rows->front(), 0);
}

Result<std::vector<JobSummary>> Store::jobs_of_vehicle(const std::string& vehicle_key) const {
  return job_list(*connection_, "WHERE job.vehicle = ? ORDER BY job.opened_at_ms DESC, job.id DESC", {vehicle_key});
}

Result<std::vector<JobSummary>> Store::jobs_numbered(const std::string& number) const {
  return job_list(*connection_, "WHERE job.number = ? ORDER BY job.opened_at_ms DESC, job.id DESC", {number});
}

namespace {

constexpr std::size_t most_digits = 18;

/// Nothing where the number is not all digits, or has more of them than can be counted on.
std::optional<std::int64_t> counted(const std::string& number) {
  if (number.size() > most_digits) {
    return std::nullopt;
  }
  std::int64_t count = 0;
  const char* const end = number.data() + number.size();
  const auto read = std::from_chars(number.data(), end, count);
  return read.ec == std::errc() && read.ptr == end && count >= 0 ? std::optional(count) : std::nullopt;
}

}  // namespace

Result<std::string> Store::next_job_number() const {
  auto rows = connection_->rows(
      "SELECT number, CASE WHEN EXISTS (SELECT 1 FROM register_change WHERE register_change.register = 'job' AND "
      "register_change.item = job.id) THEN 1 ELSE 0 END FROM job",
      {});
  if (!rows) {
    return passed_on(rows);
  }
  std::set<std::string> given;
  std::int64_t highest = 0;
  for (const Row& row : *rows) {
    given.insert(text_in(row, 0));
    const bool from_elsewhere = number_in(row, 1) != 0;
    highest = from_elsewhere ? highest : std::max(highest, counted(text_in(row, 0)).value_or(0));
  }
  std::int64_t next = highest + 1;
  while (given.count(std::to_string(next)) > 0) {
    ++next;
  }
  return std::to_string(next);
}

}  // namespace shimwright::store
