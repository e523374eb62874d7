#include <utility>

#include "append.h"
#include "chain_heads.h"
#include "connection.h"
#include "job_row.h"
#include "projections.h"
#include "search_index.h"
#include "sheet_issues.h"
#include "shimwright/job/codec.h"
#include "shimwright/record/hash.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

namespace {

struct Tail {
  std::int64_t seq = 0;
  std::string hash;
};

Result<Tail> tail_of(Connection& connection, const std::string& job) {
  auto last = connection.rows("SELECT seq, hash FROM entry WHERE job = ? ORDER BY seq DESC LIMIT 1", {job});
  if (!last) {
    return passed_on(last);
  }
  return last->empty() ? Tail() : Tail{number_in(last->front(), 0), text_in(last->front(), 1)};
}

Result<void> insert_entry(Connection& connection, const std::string& job, const record::StoredEntry& entry) {
  return connection.execute(
      "INSERT INTO entry (job, seq, at_ms, offset_min, clock_went_back, person, kind, kind_version, body, "
      "previous_hash, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      {job, number_value(entry.seq), number_value(entry.moment.at_ms), number_value(entry.moment.offset_min),
       flag_value(entry.moment.clock_went_back), entry.person, entry.kind, number_value(entry.kind_version),
       Bytes{entry.body}, entry.previous_hash, entry.hash});
}

Result<void> insert_texts(Connection& connection, const std::vector<job::PrivateText>& texts) {
  for (const job::PrivateText& text : texts) {
    if (auto inserted = connection.execute("INSERT INTO private_text (id, salt, text) VALUES (?, ?, ?)",
                                           {text.id, text.salt, text.text});
        !inserted) {
      return inserted;
    }
  }
  return {};
}

tl::unexpected<Error> lost_race(std::int64_t expected, std::int64_t given) {
  return refuse("lost_race", "entry " + std::to_string(given),
                SHIMWRIGHT_TEXT("store",
                                "The job went on elsewhere: entry {0} is due and not entry {1}; open the job "
                                "again and enter this once more."),
                {std::to_string(expected), std::to_string(given)});
}

/// The entries joined to the chain.
Result<std::vector<record::StoredEntry>> chained_to(Tail tail, const std::string& job,
                                                    const std::vector<job::Entry>& entries) {
  std::vector<record::StoredEntry> chain;
  for (const job::Entry& entry : entries) {
    if (entry.seq != tail.seq + 1) {
      return lost_race(tail.seq + 1, entry.seq);
    }
    chain.push_back(record::chained(job, entry, std::move(tail.hash)));
    if (chain.back().body.empty()) {
      return refuse("not_utf8", "entry " + std::to_string(entry.seq),
                    SHIMWRIGHT_TEXT("store", "A text in this has broken characters; enter it again."));
    }
    tail = {chain.back().seq, chain.back().hash};
  }
  return chain;
}

Result<void> insert_vehicle(Connection& connection, const job::Opened& opened) {
  return connection.execute("INSERT INTO vehicle (key, chassis_reason) VALUES (?, ?) ON CONFLICT (key) DO NOTHING",
                            {opened.vehicle_key, optional_value(opened.chassis_reason)});
}

Result<void> insert_projections(Connection& connection, const std::string& job,
                                const std::vector<job::Entry>& entries) {
  for (const job::Entry& entry : entries) {
    for (const ProjectedRow& row : projected_rows(job, entry)) {
      if (auto inserted = connection.execute(insert_into(*row.table), row.values); !inserted) {
        return inserted;
      }
    }
  }
  return {};
}

Result<void> insert_terms(Connection& connection, const std::string& job, const std::vector<job::Entry>& entries,
                          const std::vector<job::PrivateText>& texts, const job::JobState& after) {
  PrivateTexts readable;
  for (const job::PrivateText& text : texts) {
    readable.emplace(text.id, text.text);
  }
  for (const job::Entry& entry : entries) {
    for (const SearchTerm& term : search_terms_of(entry, after.sheets.job.get(), readable)) {
      if (auto added = add_search_term(connection, job, term); !added) {
        return added;
      }
    }
  }
  return {};
}

/// All that is derived: after the entries, since it points at them.
Result<void> insert_derived(Connection& connection, const std::string& job, const std::vector<job::Entry>& entries,
                            const std::vector<job::PrivateText>& texts, const job::JobState& after) {
  for (const job::Entry& entry : entries) {
    const auto* opened = std::get_if<job::Opened>(&entry.body);
    if (opened != nullptr) {
      if (auto inserted = insert_vehicle(connection, *opened); !inserted) {
        return inserted;
      }
    }
  }
  if (auto put = connection.execute(put_job_row, job_row(job, after)); !put) {
    return put;
  }
  if (auto inserted = insert_projections(connection, job, entries); !inserted) {
    return inserted;
  }
  return insert_terms(connection, job, entries, texts, after);
}

Result<void> sheets_are_there(Connection& connection, const job::JobState& after) {
  if (!after.opened) {
    return refuse("not_opened", "",
                  SHIMWRIGHT_TEXT("store", "A job has to be opened before anything is entered in it."));
  }
  auto found = connection.value("SELECT 1 FROM job_sheet, spec_sheet WHERE job_sheet.hash = ? AND spec_sheet.hash = ?",
                                {after.opened->sheet_hash, after.opened->spec_hash});
  if (!found) {
    return passed_on(found);
  }
  if (*found != number_value(1)) {
    return refuse(
        "unknown_sheet", "",
        SHIMWRIGHT_TEXT("store", "The job sheet or spec sheet of this job is not in the store; add it first."));
  }
  return {};
}

}  // namespace

Result<void> append_within(Connection& connection, const std::string& job, const std::vector<job::Entry>& entries,
                           const std::vector<job::PrivateText>& texts, const job::JobState& after) {
  auto tail = tail_of(connection, job);
  if (!tail) {
    return passed_on(tail);
  }
  if (tail->seq == 0) {
    if (auto there = sheets_are_there(connection, after); !there) {
      return there;
    }
  }
  if (auto inserted = insert_texts(connection, texts); !inserted) {
    return inserted;
  }
  auto chain = chained_to(std::move(*tail), job, entries);
  if (!chain) {
    return passed_on(chain);
  }
  return append_chained(connection, {job, *chain, entries, texts}, after);
}

Result<void> append_chained(Connection& connection, const Chained& given, const job::JobState& after) {
  for (const record::StoredEntry& each : given.stored) {
    if (auto inserted = insert_entry(connection, given.job, each); !inserted) {
      return inserted;
    }
  }
  if (auto inserted = insert_derived(connection, given.job, given.entries, given.texts, after); !inserted) {
    return inserted;
  }
  return add_head(connection, given.job, given.stored.back().seq, given.stored.back().hash);
}

Result<void> Store::append(const std::string& job, const std::vector<job::Entry>& entries,
                           const std::vector<job::PrivateText>& texts, const job::JobState& after) {
  if (entries.empty()) {
    return {};
  }
  if (auto may = may_write(); !may) {
    return may;
  }
  auto transaction = Transaction::begin(*connection_);
  if (!transaction) {
    return passed_on(transaction);
  }
  if (auto appended = append_within(*connection_, job, entries, texts, after); !appended) {
    return appended;
  }
  if (entries.front().seq == 1 && after.opened) {
    if (auto may = sheets_may_be_used(*connection_, after.opened->sheet_hash, after.opened->spec_hash); !may) {
      return may;
    }
  }
  return transaction->commit();
}

}  // namespace shimwright::store
