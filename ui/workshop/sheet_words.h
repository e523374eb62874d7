#pragma once

#include <vector>

#include <QString>

#include "shimwright/store/sheet_checks.h"
#include "shimwright/store/sheet_drafts.h"

/// What is said of sheets in sentences.
namespace shimwright::workshop {

/// `D7, issue 2`; a sheet without a name yet is called new.
/// A language in its own word: `Deutsch`.
[[nodiscard]] QString language_name(const std::string& code);
[[nodiscard]] QString issue_title(const std::string& name, std::int64_t issue);
/// `Used by 212 jobs, 2 of them open.`
[[nodiscard]] QString use_in_words(const store::SheetUse& use);
/// `Entered by RT, checked by MK on 14 Aug 2026.`, and where nobody did, what that means.
[[nodiscard]] QString check_in_words(const store::By& entered, const std::vector<store::SheetCheck>& checks,
                                     const std::vector<store::Person>& persons, bool demonstration);
/// `Begun by RT on 14 Aug 2026; 12 values are still to be filled in.`
[[nodiscard]] QString draft_in_words(const store::KeptDraft& draft, std::size_t faults,
                                     const std::vector<store::Person>& persons);
[[nodiscard]] QString initials_in(const std::vector<store::Person>& persons, const std::string& id);

}  // namespace shimwright::workshop
