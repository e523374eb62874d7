#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/job/entry.h"
#include "shimwright/job/state.h"
#include "shimwright/store/types.h"

namespace shimwright::store {

/// One text a job is found by.
struct SearchTerm {
  FoundIn place = FoundIn::vehicle;
  std::u32string key;                       ///< as search_key() makes it; never empty
  std::optional<std::string> private_text;  ///< id of the personal text it was taken from: goes when that is erased
  friend auto operator<=>(const SearchTerm&, const SearchTerm&) = default;
};

/// Personal texts by id; an erased one is not among them.
using PrivateTexts = std::map<std::string, std::string>;

/// What an entry adds to what its job is found by. `sheet` says which texts are serials of packs.
[[nodiscard]] std::vector<SearchTerm> search_terms_of(const job::Entry& entry, const sheet::JobSheet* sheet,
                                                      const PrivateTexts& texts);

/// The batches and written texts of an entry, those of any step as serials: for where it is known already what is one.
[[nodiscard]] std::vector<SearchTerm> terms_of_texts(const job::EntryBody& body);

}  // namespace shimwright::store
