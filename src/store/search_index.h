#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "connection.h"
#include "search_terms.h"

namespace shimwright::store {

/// Makes a job be found by a term. Once is enough: the same again changes nothing.
[[nodiscard]] Result<void> add_search_term(Connection& connection, const std::string& job, const SearchTerm& term);
/// Takes out what came from a personal text.
[[nodiscard]] Result<void> remove_search_terms_of(Connection& connection, const std::string& private_text);

struct HoldingTerm {
  std::string job;
  std::string place;  ///< as name_of(FoundIn) has it
  std::string term;
};

/// Terms that hold one of these texts, of two characters or more each; `most` of them, where there are more.
[[nodiscard]] Result<std::vector<HoldingTerm>> terms_that_hold(Connection& connection,
                                                               const std::vector<std::u32string>& any_of,
                                                               std::int64_t most);

}  // namespace shimwright::store
