#pragma once

#include <string>

#include "connection.h"
#include "search_terms.h"

namespace shimwright::store {

/// Makes a job be found by a term. Once is enough: the same again changes nothing.
[[nodiscard]] Result<void> add_search_term(Connection& connection, const std::string& job, const SearchTerm& term);
/// Takes out what came from a personal text.
[[nodiscard]] Result<void> remove_search_terms_of(Connection& connection, const std::string& private_text);

/// Ids of the terms that may hold this, two characters or more: every one that does is among them.
[[nodiscard]] Result<std::vector<std::int64_t>> terms_that_may_hold(Connection& connection, const std::u32string& part);

}  // namespace shimwright::store
