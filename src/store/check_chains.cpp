#include <cstdlib>

#include "chain_heads.h"
#include "check_parts.h"
#include "shimwright/job/codec.h"

namespace shimwright::store {

namespace {

constexpr const char* heads_sql =
    "SELECT position, job, seq, hash, list_hash FROM chain_head WHERE position > ? ORDER BY position LIMIT 1000";

struct Line {
  std::int64_t position = 0;
  std::string job;
  Head head;
  std::string list_hash;
};

Line line_of(const Row& row) {
  return {number_in(row, 0), text_in(row, 1), {number_in(row, 2), text_in(row, 3)}, text_in(row, 4)};
}

/// Follows the list line by line. Only the first fault is told: all after it follow from it.
class ListWalk {
 public:
  explicit ListWalk(CheckReport& report) : report_(&report) {}

  [[nodiscard]] std::int64_t position() const { return position_; }
  [[nodiscard]] LastHeads take() { return std::move(last_); }

  void take_line(Line line) {
    if (!faulty_) {
      look_at(line);
    }
    position_ = line.position;
    before_ = std::move(line.list_hash);
    last_.insert_or_assign(std::move(line.job), std::move(line.head));
  }

 private:
  void look_at(const Line& line) {
    if (line.position != position_ + 1) {
      tell("heads_gap", line,
           {SHIMWRIGHT_TEXT("store", "Line {0} is missing in the list of chain heads."),
            {std::to_string(position_ + 1)}});
    } else if (line.list_hash != list_hash(before_, line.position, line.job, line.head.seq, line.head.hash)) {
      tell("heads_changed", line,
           {SHIMWRIGHT_TEXT("store", "Line {0} of the list of chain heads was changed after it was written."),
            {std::to_string(line.position)}});
    }
  }
  void tell(const char* code, const Line& line, Message message) {
    add_finding(*report_, code, "chain_head", line.job, line.head.seq, std::move(message));
    faulty_ = true;
  }

  CheckReport* report_;
  std::int64_t position_ = 0;
  std::string before_;
  bool faulty_ = false;
  LastHeads last_;
};

/// A chain is refused at `entry 7`.
std::int64_t seq_in(const std::string& place) {
  return std::strtoll(place.c_str() + place.find(' ') + 1, nullptr, 10);
}

void check_end(const CheckedJob& job, const Head& head, CheckReport& report) {
  const std::int64_t last = job.stored.back().seq;
  if (last < head.seq) {
    add_finding(report, "dropped_tail", "entry", job.id, head.seq,
                {SHIMWRIGHT_TEXT("store", "This entry and perhaps others before it were stored and are gone."), {}});
  } else if (last > head.seq) {
    add_finding(report, "entry_without_head", "chain_head", job.id, last,
                {SHIMWRIGHT_TEXT("store",
                                 "This entry was not stored by this program: the list of chain heads does not "
                                 "know it."),
                 {}});
  } else if (job.stored.back().hash != head.hash) {
    add_finding(report, "other_head", "entry", job.id, last,
                {SHIMWRIGHT_TEXT("store", "This entry is not the one that was stored in its place."), {}});
  }
}

}  // namespace

Result<LastHeads> check_heads(Connection& connection, CheckReport& report) {
  ListWalk walk(report);
  while (true) {
    auto rows = connection.rows(heads_sql, {number_value(walk.position())});
    if (!rows) {
      return passed_on(rows);
    }
    if (rows->empty()) {
      return walk.take();
    }
    for (const Row& row : *rows) {
      walk.take_line(line_of(row));
    }
  }
}

void check_job_chain(const CheckedJob& job, const LastHeads& heads, CheckReport& report) {
  if (auto chained = record::check_chain(job.id, job.stored); !chained) {
    add_finding(report, chained.error().code, "entry", job.id, seq_in(chained.error().place), chained.error().message);
  }
  if (!job.readable()) {
    const record::StoredEntry& unreadable = job.stored[job.entries.size()];
    const auto read = job::decode(unreadable.kind, unreadable.kind_version, unreadable.body);
    if (!read) {
      add_finding(report, read.error().code, "entry", job.id, unreadable.seq, read.error().message);
    }
  }
  const auto head = heads.find(job.id);
  check_end(job, head == heads.end() ? Head() : head->second, report);
}

}  // namespace shimwright::store
