#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/sheet/draft.h"
#include "shimwright/sheet/taken_away.h"
#include "shimwright/store/store.h"

/// Sheets that are being written. What was typed is on the disk at each field, so that nothing is lost by leaving.
namespace shimwright::store {

enum class Begun { from_nothing, as_copy, as_next_issue, from_file };
/// `new`, `copy`, `issue`, `file`.
[[nodiscard]] std::string_view name_of(Begun begun);

struct KeptDraft {
  std::string id;  ///< UUID
  sheet::SheetDraft draft;
  Begun begun = Begun::from_nothing;
  std::optional<std::string> begun_from;  ///< hash of the issue a copy or next issue was begun from
  std::vector<sheet::TakenAway> reasons;  ///< for what a job sheet loses, as far as they were given
  std::string begun_by;                   ///< person; filled in by keep_draft(), as are the next three
  std::int64_t begun_at_ms = 0;
  std::string changed_by;
  std::int64_t changed_at_ms = 0;
  friend bool operator==(const KeptDraft&, const KeptDraft&) = default;
};

/// Latest first; none in a store of before there were drafts.
[[nodiscard]] Result<std::vector<KeptDraft>> sheet_drafts(const Store& store, sheet::SheetKind kind);
/// Code: `unknown_draft`.
[[nodiscard]] Result<KeptDraft> sheet_draft(const Store& store, const std::string& id);
/// Keeps the draft as it is now; on the disk when this returns. Codes: `bad_id`, `not_utf8`.
[[nodiscard]] Result<void> keep_draft(Store& store, const KeptDraft& draft, const By& by);
[[nodiscard]] Result<void> throw_draft_away(Store& store, const std::string& id);

/// What the draft loses against the issue it is measured by: of a next issue the one before it, of a copy its original;
/// and of what it took over, what came with it.
[[nodiscard]] Result<std::vector<sheet::TakenAway>> lost_by_draft(const Store& store, const KeptDraft& draft);

/// Makes the draft an issue, kept for ever, and takes the draft away; gives the hash. Codes: those of
/// Registers::add_job_sheet() and add_spec_sheet(), `mark_lost` (also of a copy), `no_reason`, `unknown_draft`.
[[nodiscard]] Result<std::string> make_issue(Store& store, const std::string& id, const By& by);

}  // namespace shimwright::store
