#pragma once

#include <string>
#include <vector>

#include "shimwright/sheet/draft.h"

/// Drafts the tests work on.
namespace shimwright::sheet::test {

inline const std::string draft_id = "01930000-0000-7000-8000-0000000000d1";

[[nodiscard]] SheetDraft shipped_draft(SheetKind kind);
/// An empty spec sheet with every field filled in by one value after the other, as a person would.
[[nodiscard]] SheetDraft filled_spec();
[[nodiscard]] std::vector<DraftField> fields_of(const SheetDraft& draft);
/// Blank where there is no such field.
[[nodiscard]] std::string field_text(const SheetDraft& draft, const std::string& place);

}  // namespace shimwright::sheet::test
