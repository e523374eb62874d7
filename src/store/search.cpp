#include <algorithm>
#include <array>
#include <set>

#include "job_lists.h"
#include "search_index.h"
#include "search_text.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

namespace {

constexpr std::array<std::string_view, 7> place_names = {
    "vehicle", "plate", "number", "customer_reference", "gearbox_serial", "pack_serial", "batch"};

FoundIn place_named(const std::string& name) {
  for (std::size_t index = 0; index < place_names.size(); ++index) {
    if (place_names.at(index) == name) {
      return static_cast<FoundIn>(index);
    }
  }
  return FoundIn::vehicle;
}

/// Parts of which one at least stands whole in every term to be found. A wrong character leaves one half of what is
/// sought as it is, and so do two swapped ones, unless they are the two at the cut; those are swapped back here.
std::vector<std::u32string> parts_of(const std::u32string& sought) {
  if (sought.size() < forgiven_from) {
    return {sought};
  }
  const std::size_t cut = sought.size() / 2;
  std::u32string swapped = sought;
  std::swap(swapped[cut - 1], swapped[cut]);
  return {sought.substr(0, cut), sought.substr(cut), swapped};
}

Result<std::set<std::int64_t>> candidates(Connection& connection, const std::u32string& sought) {
  std::set<std::int64_t> terms;
  for (const std::u32string& part : parts_of(sought)) {
    auto found = terms_that_may_hold(connection, part);
    if (!found) {
      return passed_on(found);
    }
    terms.insert(found->begin(), found->end());
  }
  return terms;
}

constexpr const char* term_sql =
    "SELECT search_term.job, search_term.place, search_term.term, job.opened_at_ms FROM search_term JOIN job ON job.id "
    "= search_term.job WHERE search_term.id = ?";

struct MatchingTerm {
  std::string job;
  FoundIn place = FoundIn::vehicle;
  std::string term;
  bool exact = false;
  std::int64_t opened_at_ms = 0;
};

Result<std::vector<MatchingTerm>> matching_terms(Connection& connection, const std::u32string& sought) {
  auto terms = candidates(connection, sought);
  if (!terms) {
    return passed_on(terms);
  }
  std::vector<MatchingTerm> matching;
  for (const std::int64_t term : *terms) {
    auto rows = connection.rows(term_sql, {number_value(term)});
    if (!rows) {
      return passed_on(rows);
    }
    for (const Row& row : *rows) {
      const std::string text = text_in(row, 2);
      const Match matched =
          match(QString::fromStdString(text).toStdU32String(), sought, sought.size() >= forgiven_from);
      if (matched != Match::none) {
        matching.push_back(
            {text_in(row, 0), place_named(text_in(row, 1)), text, matched == Match::exact, number_in(row, 3)});
      }
    }
  }
  return matching;
}

/// Each job once, by its best term: exact ones first, then the latest.
void sort_and_cut(std::vector<MatchingTerm>& terms, std::size_t most) {
  std::sort(terms.begin(), terms.end(), [](const MatchingTerm& left, const MatchingTerm& right) {
    return std::tuple(left.job, !left.exact, left.place) < std::tuple(right.job, !right.exact, right.place);
  });
  const auto same_job = [](const MatchingTerm& left, const MatchingTerm& right) { return left.job == right.job; };
  terms.erase(std::unique(terms.begin(), terms.end(), same_job), terms.end());
  std::sort(terms.begin(), terms.end(), [](const MatchingTerm& left, const MatchingTerm& right) {
    return std::tuple(!left.exact, right.opened_at_ms, right.job) <
           std::tuple(!right.exact, left.opened_at_ms, left.job);
  });
  terms.resize(std::min(terms.size(), most));
}

}  // namespace

std::string_view name_of(FoundIn place) {
  return place_names.at(static_cast<std::size_t>(place));
}

Result<std::vector<Found>> Store::search(const std::string& text, std::int64_t most) const {
  const std::u32string sought = search_key(text);
  if (sought.size() < shortest_search) {
    return refuse("search_too_short", "",
                  SHIMWRIGHT_TEXT("store", "Two letters or digits at least are needed to search."));
  }
  auto terms = matching_terms(*connection_, sought);
  if (!terms) {
    return passed_on(terms);
  }
  sort_and_cut(*terms, static_cast<std::size_t>(std::max<std::int64_t>(most, 0)));
  std::vector<Found> found;
  for (const MatchingTerm& term : *terms) {
    auto jobs = job_list(*connection_, "WHERE job.id = ?", {term.job});
    if (!jobs) {
      return passed_on(jobs);
    }
    for (JobSummary& job : *jobs) {
      found.push_back({std::move(job), term.place, term.term, term.exact});
    }
  }
  return found;
}

}  // namespace shimwright::store
