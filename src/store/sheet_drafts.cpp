#include "shimwright/store/sheet_drafts.h"

#include <algorithm>
#include <array>

#include <nlohmann/json.hpp>

#include "connection.h"
#include "schema.h"
#include "sheet_issues.h"
#include "shimwright/record/hash.h"
#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/sheet/taken_over.h"
#include "shimwright/store/ids.h"

namespace shimwright::store {

namespace {

constexpr const char* draft_columns =
    "SELECT id, register, begun_as, begun_from, body, reasons, begun_by, begun_at_ms, changed_by, changed_at_ms FROM "
    "sheet_draft ";

const SheetTable& table_of(sheet::SheetKind kind) {
  return kind == sheet::SheetKind::job_sheet ? job_sheet_table : spec_sheet_table;
}

std::string written_reasons(const std::vector<sheet::TakenAway>& reasons) {
  auto list = nlohmann::json::array();
  for (const sheet::TakenAway& each : reasons) {
    list.push_back({{"step", each.step}, {"kind", name_of(each.guard)}, {"text", each.text}, {"reason", each.reason}});
  }
  return list.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::vector<sheet::TakenAway> read_reasons(const std::string& bytes) {
  std::vector<sheet::TakenAway> reasons;
  const auto list = nlohmann::json::parse(bytes, nullptr, false);
  for (const auto& each : list.is_array() ? list : nlohmann::json::array()) {
    const auto word = [&each](const char* key) {
      return each.is_object() && each.contains(key) && each[key].is_string() ? each[key].get<std::string>()
                                                                             : std::string();
    };
    const auto guard = word("kind") == "caution" ? sheet::Guard::caution : sheet::Guard::hold_point;
    reasons.push_back({word("step"), guard, word("text"), word("reason")});
  }
  return reasons;
}

Begun begun_named(const std::string& name) {
  for (const Begun begun : {Begun::as_copy, Begun::as_next_issue, Begun::from_file}) {
    if (name == name_of(begun)) {
      return begun;
    }
  }
  return Begun::from_nothing;
}

KeptDraft draft_in(const Row& row) {
  KeptDraft kept;
  kept.id = text_in(row, 0);
  kept.draft = {text_in(row, 1) == "job_sheet" ? sheet::SheetKind::job_sheet : sheet::SheetKind::spec_sheet,
                bytes_in(row, 4)};
  kept.begun = begun_named(text_in(row, 2));
  kept.begun_from = optional_text_in(row, 3);
  kept.reasons = read_reasons(bytes_in(row, 5));
  kept.begun_by = text_in(row, 6);
  kept.begun_at_ms = number_in(row, 7);
  kept.changed_by = text_in(row, 8);
  kept.changed_at_ms = number_in(row, 9);
  return kept;
}

Result<void> may_write_drafts(const Store& store) {
  if (store.looks_only()) {
    return refuse("look_only", "",
                  SHIMWRIGHT_TEXT("store", "The store can only be looked at here; nothing was saved."));
  }
  return {};
}

/// The sheet a draft is measured by; nothing where it began by itself.
Result<std::optional<SheetIssue>> original_of(Connection& connection, const KeptDraft& draft) {
  if (!draft.begun_from) {
    return std::optional<SheetIssue>();
  }
  auto issue = sheet_with_hash(connection, table_of(draft.draft.kind), *draft.begun_from);
  return issue ? Result<std::optional<SheetIssue>>(std::move(*issue)) : passed_on(issue);
}

Result<void> keeps_mark_of_original(Connection& connection, const KeptDraft& draft) {
  auto read = original_of(connection, draft);
  if (!read) {
    return passed_on(read);
  }
  const std::optional<SheetIssue>& original = *read;
  if (!original) {
    return {};
  }
  auto marked = is_demonstration(table_of(draft.draft.kind), *original);
  if (!marked) {
    return passed_on(marked);
  }
  if (*marked && !sheet::head_of(draft.draft).demonstration) {
    return refuse("mark_lost", "/demonstration",
                  SHIMWRIGHT_TEXT("store",
                                  "{0} is a demonstration sheet and its issues stay so; enter a sheet with real "
                                  "values under another name."),
                  {original->name});
  }
  return {};
}

/// What it lost against the sheet it is a copy of: the issues of one name are compared where they are added.
Result<std::vector<sheet::TakenAway>> lost_by_copy(Connection& connection, const KeptDraft& draft,
                                                   const std::string& file) {
  auto read = original_of(connection, draft);
  if (!read) {
    return passed_on(read);
  }
  const std::optional<SheetIssue>& original = *read;
  if (draft.begun != Begun::as_copy || !original) {
    return std::vector<sheet::TakenAway>();
  }
  auto before = sheet::read_job_sheet(original->json);
  auto after = sheet::read_job_sheet(file);
  if (!before || !after) {
    return tl::make_unexpected(before ? std::move(after.error()) : std::move(before.error()));
  }
  return sheet::taken_away(*before, *after);
}

/// A step taken over may have the short name of one that went: what both lost is told once.
void add_since_taken_over(std::vector<sheet::TakenAway>& lost, const sheet::SheetDraft& draft) {
  for (sheet::TakenAway& each : sheet::taken_away_since_taken_over(draft)) {
    if (std::find(lost.begin(), lost.end(), each) == lost.end()) {
      lost.push_back(std::move(each));
    }
  }
}

/// Code: `no_reason`.
Result<std::vector<sheet::TakenAway>> lost_beside_the_issue_before(Connection& connection, const KeptDraft& draft,
                                                                   const std::string& file) {
  auto lost = lost_by_copy(connection, draft, file);
  if (!lost) {
    return lost;
  }
  add_since_taken_over(*lost, draft.draft);
  return sheet::with_reasons(std::move(*lost), draft.reasons);
}

Result<std::string> make_issue_within(Connection& connection, const KeptDraft& draft, const By& by) {
  const std::string file = sheet::file_of(draft.draft);
  if (auto kept = keeps_mark_of_original(connection, draft); !kept) {
    return passed_on(kept);
  }
  Result<std::string> hash;
  if (draft.draft.kind == sheet::SheetKind::spec_sheet) {
    hash = add_spec_sheet_within(connection, file, by);
  } else {
    auto lost = lost_beside_the_issue_before(connection, draft, file);
    hash = lost ? add_job_sheet_within(connection, file, draft.reasons, by, *lost) : passed_on(lost);
  }
  if (!hash) {
    return hash;
  }
  auto deleted = connection.execute("DELETE FROM sheet_draft WHERE id = ?", {draft.id});
  return deleted ? std::move(hash) : passed_on(deleted);
}

}  // namespace

std::string_view name_of(Begun begun) {
  constexpr std::array<std::string_view, 4> names{"new", "copy", "issue", "file"};
  return names.at(static_cast<std::size_t>(begun));
}

Result<std::vector<KeptDraft>> sheet_drafts(const Store& store, sheet::SheetKind kind) {
  auto there = has_sheet_checks(store.connection());
  if (!there || !*there) {
    return there ? Result<std::vector<KeptDraft>>() : passed_on(there);
  }
  auto rows = store.connection().rows(std::string(draft_columns) + "WHERE register = ? ORDER BY changed_at_ms DESC, id",
                                      {text_value(name_of(kind))});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<KeptDraft> drafts;
  for (const Row& row : *rows) {
    drafts.push_back(draft_in(row));
  }
  return drafts;
}

Result<KeptDraft> sheet_draft(const Store& store, const std::string& id) {
  auto rows = store.connection().rows(std::string(draft_columns) + "WHERE id = ?", {id});
  if (!rows) {
    return passed_on(rows);
  }
  if (rows->empty()) {
    return refuse("unknown_draft", id,
                  SHIMWRIGHT_TEXT("store", "This draft is not in the store: it became an issue or was thrown away."));
  }
  return draft_in(rows->front());
}

Result<void> keep_draft(Store& store, const KeptDraft& draft, const By& by) {
  if (auto may = may_write_drafts(store); !may) {
    return may;
  }
  if (!is_uuid(draft.id)) {
    return refuse("bad_id", "sheet_draft/id",
                  SHIMWRIGHT_TEXT("store", "The id of this is not a UUID; report this fault."));
  }
  return store.connection().execute(
      "INSERT INTO sheet_draft (id, register, begun_as, begun_from, body, reasons, begun_by, begun_at_ms, changed_by, "
      "changed_at_ms) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET body = excluded.body, "
      "reasons = excluded.reasons, changed_by = excluded.changed_by, changed_at_ms = excluded.changed_at_ms",
      {draft.id, text_value(name_of(draft.draft.kind)), text_value(name_of(draft.begun)),
       optional_value(draft.begun_from), Bytes{draft.draft.body}, Bytes{written_reasons(draft.reasons)}, by.person,
       number_value(by.moment.at_ms), by.person, number_value(by.moment.at_ms)});
}

Result<void> throw_draft_away(Store& store, const std::string& id) {
  if (auto may = may_write_drafts(store); !may) {
    return may;
  }
  return store.connection().execute("DELETE FROM sheet_draft WHERE id = ?", {id});
}

Result<std::vector<sheet::TakenAway>> lost_by_draft(const Store& store, const KeptDraft& draft) {
  if (draft.draft.kind != sheet::SheetKind::job_sheet) {
    return std::vector<sheet::TakenAway>();
  }
  auto read = original_of(store.connection(), draft);
  if (!read) {
    return passed_on(read);
  }
  const std::optional<SheetIssue>& original = *read;
  const auto after = sheet::read_job_sheet(sheet::file_of(draft.draft));
  // While the draft cannot be read yet, nobody can say what it lost.
  if (!after) {
    return std::vector<sheet::TakenAway>();
  }
  std::vector<sheet::TakenAway> lost;
  if (original) {
    const auto before = sheet::read_job_sheet(original->json);
    lost = before ? sheet::taken_away(*before, *after) : lost;
  }
  add_since_taken_over(lost, draft.draft);
  return lost;
}

Result<std::string> make_issue(Store& store, const std::string& id, const By& by) {
  if (auto may = may_write_drafts(store); !may) {
    return passed_on(may);
  }
  auto draft = sheet_draft(store, id);
  if (!draft) {
    return passed_on(draft);
  }
  auto transaction = Transaction::begin(store.connection());
  if (!transaction) {
    return passed_on(transaction);
  }
  auto hash = make_issue_within(store.connection(), *draft, by);
  if (!hash) {
    return hash;
  }
  auto committed = transaction->commit();
  return committed ? std::move(hash) : passed_on(committed);
}

}  // namespace shimwright::store
