#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <set>

#include <nlohmann/json.hpp>

#include "job_lists.h"
#include "schema.h"
#include "search_index.h"
#include "search_text.h"
#include "shimwright/store/store.h"
#include "taken_back.h"

namespace shimwright::store {

namespace {

constexpr std::array<std::string_view, 7> place_names = {
    "vehicle", "plate", "number", "customer_reference", "gearbox_serial", "pack_serial", "batch"};

// A search reads no more terms than this, however many there are: who finds so many types more.
constexpr std::int64_t most_exact = 100;
constexpr std::int64_t most_close = 50;

FoundIn place_named(const std::string& name) {
  for (std::size_t index = 0; index < place_names.size(); ++index) {
    if (place_names.at(index) == name) {
      return static_cast<FoundIn>(index);
    }
  }
  return FoundIn::vehicle;
}

struct MatchingTerm {
  std::string job;
  FoundIn place = FoundIn::vehicle;
  std::string term;
  bool exact = false;
  bool taken_back = false;
};

struct Matching {
  std::vector<MatchingTerm> terms;
  bool cut = false;  ///< not all of them were read
};

/// Of batches and serials, which are taken back with their entries.
Result<void> mark_taken_back(Connection& connection, std::vector<MatchingTerm>& terms) {
  const auto key = [](const MatchingTerm& term) {
    return TermOfJob(term.job, std::string(name_of(term.place)), term.term);
  };
  std::set<TermOfJob> asked;
  for (const MatchingTerm& each : terms) {
    if (each.place == FoundIn::batch || each.place == FoundIn::pack_serial) {
      asked.insert(key(each));
    }
  }
  auto back = taken_back(connection, asked);
  if (!back) {
    return passed_on(back);
  }
  for (MatchingTerm& each : terms) {
    each.taken_back = back->count(key(each)) != 0;
  }
  return {};
}

Result<void> add(Connection& connection, Matching& matching, std::vector<HoldingTerm> terms, bool exact) {
  matching.cut = matching.cut || static_cast<std::int64_t>(terms.size()) >= (exact ? most_exact : most_close);
  std::vector<MatchingTerm> added;
  for (HoldingTerm& each : terms) {
    added.push_back({std::move(each.job), place_named(each.place), std::move(each.term), exact, false});
  }
  if (auto marked = mark_taken_back(connection, added); !marked) {
    return marked;
  }
  std::move(added.begin(), added.end(), std::back_inserter(matching.terms));
  return {};
}

/// In a store of before the index of suffixes, which is only looked at, every term is read.
Result<Matching> matching_of_all(Connection& connection, const std::u32string& sought) {
  auto rows = connection.rows("SELECT job, place, term FROM search_term", {});
  if (!rows) {
    return passed_on(rows);
  }
  Matching matching;
  for (const Row& row : *rows) {
    const std::string text = text_in(row, 2);
    const Match matched = match(QString::fromStdString(text).toStdU32String(), sought, forgives(sought));
    if (matched != Match::none) {
      matching.terms.push_back({text_in(row, 0), place_named(text_in(row, 1)), text, matched == Match::exact, false});
    }
  }
  if (auto marked = mark_taken_back(connection, matching.terms); !marked) {
    return passed_on(marked);
  }
  return matching;
}

/// Each job once, by its best term: exact ones first, then the latest. An id begins with the time the job was opened
/// (UUID version 7), so no job is read for it.
void sort_by_job(std::vector<MatchingTerm>& terms) {
  std::sort(terms.begin(), terms.end(), [](const MatchingTerm& left, const MatchingTerm& right) {
    return std::tuple(left.job, !left.exact, left.taken_back, left.place) <
           std::tuple(right.job, !right.exact, right.taken_back, right.place);
  });
  const auto same_job = [](const MatchingTerm& left, const MatchingTerm& right) { return left.job == right.job; };
  terms.erase(std::unique(terms.begin(), terms.end(), same_job), terms.end());
  std::sort(terms.begin(), terms.end(), [](const MatchingTerm& left, const MatchingTerm& right) {
    return std::tie(right.exact, right.job) < std::tie(left.exact, left.job);
  });
}

Result<Matching> matching_by_suffix(Connection& connection, const std::u32string& sought, std::size_t most) {
  Matching matching;
  auto exact = terms_that_hold(connection, {sought}, most_exact);
  if (!exact) {
    return passed_on(exact);
  }
  if (auto added = add(connection, matching, std::move(*exact), true); !added) {
    return passed_on(added);
  }
  sort_by_job(matching.terms);
  // Who has found enough without a slip has made none.
  if (forgives(sought) && matching.terms.size() < most) {
    auto close = terms_that_hold(connection, one_fault_from(sought), most_close);
    if (!close) {
      return passed_on(close);
    }
    if (auto added = add(connection, matching, std::move(*close), false); !added) {
      return passed_on(added);
    }
  }
  return matching;
}

/// The jobs of these terms, in their order; no more than `most`.
Result<FoundJobs> found_jobs(Connection& connection, Matching matching, std::size_t most) {
  sort_by_job(matching.terms);
  FoundJobs found;
  found.more = matching.cut || matching.terms.size() > most;
  matching.terms.resize(std::min(matching.terms.size(), most));
  nlohmann::json ids = nlohmann::json::array();
  for (const MatchingTerm& term : matching.terms) {
    ids.push_back(term.job);
  }
  auto jobs = job_list(connection, "WHERE job.id IN (SELECT value FROM json_each(?) AS wanted)", {ids.dump()});
  if (!jobs) {
    return passed_on(jobs);
  }
  std::map<std::string, JobSummary> by_id;
  for (JobSummary& job : *jobs) {
    by_id.emplace(job.id, std::move(job));
  }
  for (MatchingTerm& term : matching.terms) {
    if (auto job = by_id.extract(term.job)) {
      found.jobs.push_back({std::move(job.mapped()), term.place, std::move(term.term), term.exact, term.taken_back});
    }
  }
  return found;
}

}  // namespace

std::string_view name_of(FoundIn place) {
  return place_names.at(static_cast<std::size_t>(place));
}

Result<FoundJobs> Store::search(const std::string& text, std::int64_t most) const {
  const std::u32string sought = search_key(text);
  if (sought.size() < shortest_search) {
    return refuse("search_too_short", "",
                  SHIMWRIGHT_TEXT("store", "Two letters or digits at least are needed to search."));
  }
  const auto wanted = static_cast<std::size_t>(std::max<std::int64_t>(most, 0));
  auto indexed = has_suffixes(*connection_);
  if (!indexed) {
    return passed_on(indexed);
  }
  auto matching = *indexed ? matching_by_suffix(*connection_, sought, wanted) : matching_of_all(*connection_, sought);
  if (!matching) {
    return passed_on(matching);
  }
  return found_jobs(*connection_, std::move(*matching), wanted);
}

}  // namespace shimwright::store
