#include <map>

#include "chain_heads.h"
#include "check_parts.h"
#include "shimwright/job/codec.h"

namespace shimwright::store {

namespace {

struct Head {
  std::int64_t position = 0;
  std::string job;
  std::int64_t seq = 0;
  std::string hash;
  std::string list_hash;
};

using Jobs = std::map<std::string, const CheckedJob*>;

Result<std::vector<Head>> heads_of(Connection& connection) {
  auto rows = connection.rows("SELECT position, job, seq, hash, list_hash FROM chain_head ORDER BY position");
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<Head> heads;
  for (const Row& row : *rows) {
    heads.push_back({number_in(row, 0), text_in(row, 1), number_in(row, 2), text_in(row, 3), text_in(row, 4)});
  }
  return heads;
}

/// The list by itself: no position left out, each standing on the one before. Only the first fault: all after follow
/// from it.
void check_list(const std::vector<Head>& heads, CheckReport& report) {
  std::string before;
  std::int64_t expected = 1;
  for (const Head& head : heads) {
    if (head.position != expected) {
      add_finding(
          report, "heads_gap", "chain_head", head.job, head.seq,
          {SHIMWRIGHT_TEXT("store", "Line {0} is missing in the list of chain heads."), {std::to_string(expected)}});
      return;
    }
    if (head.list_hash != list_hash(before, head.position, head.job, head.seq, head.hash)) {
      add_finding(report, "heads_changed", "chain_head", head.job, head.seq,
                  {SHIMWRIGHT_TEXT("store", "Line {0} of the list of chain heads was changed after it was written."),
                   {std::to_string(head.position)}});
      return;
    }
    before = head.list_hash;
    ++expected;
  }
}

/// One head against the entry it names.
void check_head(const Head& head, const Jobs& jobs, CheckReport& report) {
  const auto job = jobs.find(head.job);
  if (job == jobs.end()) {
    add_finding(report, "missing_job", "entry", head.job, std::nullopt,
                {SHIMWRIGHT_TEXT("store", "This job was stored and is gone."), {}});
    return;
  }
  const auto& stored = job->second->stored;
  if (stored.back().seq < head.seq) {
    add_finding(report, "dropped_tail", "entry", head.job, head.seq,
                {SHIMWRIGHT_TEXT("store", "This entry and perhaps others after it were stored and are gone."), {}});
    return;
  }
  for (const record::StoredEntry& entry : stored) {
    if (entry.seq == head.seq && entry.hash != head.hash) {
      add_finding(report, "other_head", "entry", head.job, head.seq,
                  {SHIMWRIGHT_TEXT("store", "This entry is not the one that was stored in its place."), {}});
    }
  }
}

/// The last head of each job.
std::map<std::string, Head> last_heads(const std::vector<Head>& heads) {
  std::map<std::string, Head> last;
  for (const Head& head : heads) {
    last.insert_or_assign(head.job, head);
  }
  return last;
}

}  // namespace

void check_job_chain(const CheckedJob& job, CheckReport& report) {
  if (auto chained = record::check_chain(job.id, job.stored); !chained) {
    // The place is `entry 7`.
    const std::string& place = chained.error().place;
    add_finding(report, chained.error().code, "entry", job.id, std::stoll(place.substr(place.find(' ') + 1)),
                chained.error().message);
  }
  if (!job.readable()) {
    const record::StoredEntry& unreadable = job.stored[job.entries.size()];
    const auto read = job::decode(unreadable.kind, unreadable.kind_version, unreadable.body);
    if (!read) {
      add_finding(report, read.error().code, "entry", job.id, unreadable.seq, read.error().message);
    }
  }
}

Result<void> check_heads(Connection& connection, const std::vector<CheckedJob>& jobs, CheckReport& report) {
  auto heads = heads_of(connection);
  if (!heads) {
    return passed_on(heads);
  }
  check_list(*heads, report);
  Jobs by_id;
  for (const CheckedJob& job : jobs) {
    by_id.emplace(job.id, &job);
  }
  const auto last = last_heads(*heads);
  for (const auto& [job, head] : last) {
    check_head(head, by_id, report);
  }
  for (const CheckedJob& job : jobs) {
    const auto head = last.find(job.id);
    if (head == last.end() || head->second.seq < job.stored.back().seq) {
      add_finding(report, "entry_without_head", "chain_head", job.id, job.stored.back().seq,
                  {SHIMWRIGHT_TEXT("store",
                                   "This entry was not stored by this program: the list of chain heads does "
                                   "not know it."),
                   {}});
    }
  }
  return {};
}

}  // namespace shimwright::store
