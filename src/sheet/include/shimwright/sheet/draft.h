#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/sheet/job_sheet.h"

/// A sheet while it is written: the file as far as it goes. Every change gives a new draft; what is typed stays as it
/// was typed, also where the reader of the file would refuse it.
namespace shimwright::sheet {

enum class SheetKind { job_sheet, spec_sheet };
/// `job_sheet`, `spec_sheet`: the registers of the store.
[[nodiscard]] std::string_view name_of(SheetKind kind);

struct SheetDraft {
  SheetKind kind = SheetKind::spec_sheet;
  std::string body;  ///< JSON; members whose names begin with # are put aside and no part of the sheet
  friend bool operator==(const SheetDraft&, const SheetDraft&) = default;
};

/// Nothing but blanks, with a row for each limit and part that jobs by this sheet ask for.
[[nodiscard]] SheetDraft empty_spec_sheet(const std::string& id, const JobSheet& for_jobs);
[[nodiscard]] SheetDraft empty_job_sheet(const std::string& id);
/// The values of a sheet under a name still to be given, issue 1. A demonstration sheet's copy is one.
[[nodiscard]] SheetDraft copy_of(SheetKind kind, const std::string& file, const std::string& id);
[[nodiscard]] SheetDraft next_issue_of(SheetKind kind, const std::string& file, const std::string& id,
                                       std::int64_t issue);
/// A file from outside, as it is. Codes: `no_json`, and `wrong_format`, `newer_file` as the readers say; `wrong_type`,
/// `unknown_field` where it has no form of a sheet.
[[nodiscard]] Result<SheetDraft> draft_of_file(SheetKind kind, const std::string& file);

enum class FieldKind {
  line,     ///< words
  length,   ///< as typed numbers are, in mm
  decimal,  ///< a plain decimal
  measure,  ///< as typed numbers are, in the field's unit
  count,    ///< a whole number
  yes_no,   ///< `yes` or `no`
  word,     ///< one of the choices
};

struct WordChoice {
  std::string word;
  Message shown;
  friend bool operator==(const WordChoice&, const WordChoice&) = default;
};

/// One value to fill in.
struct DraftField {
  std::string place;  ///< JSON pointer; `#name` at its end: the name of the row itself, `#languages`: of all texts
  FieldKind kind = FieldKind::line;
  Message label;
  std::string unit;  ///< symbol, blank where there is none
  std::string text;  ///< as typed
  bool may_be_blank = false;
  std::vector<WordChoice> choices;
  std::string language;  ///< of a translation; blank for English and for what is no text
  friend bool operator==(const DraftField&, const DraftField&) = default;
};

/// Fields that belong together: a row of a list, or a part of the sheet.
struct DraftGroup {
  std::string place;  ///< of the row; blank for what cannot be taken out
  Message heading;    ///< blank: the heading above still holds
  std::vector<DraftField> fields;
  bool row = false;      ///< short: its fields stand side by side
  bool movable = false;  ///< its order counts
};

/// A list that another row can be added to, or a part that can be there or not.
struct RowWay {
  std::string place;
  Message label;
};

struct DraftSection {
  std::string id;
  Message title;
  std::vector<DraftGroup> groups;
  std::vector<RowWay> ways;
};

[[nodiscard]] std::vector<DraftSection> sections_of(const SheetDraft& draft);

/// What the draft says of itself.
struct DraftHead {
  std::string name;  ///< blank while none is given
  std::int64_t issue = 1;
  bool demonstration = false;
};
[[nodiscard]] DraftHead head_of(const SheetDraft& draft);

/// The field's text put in. Code: `repeated_field`, where a row would get the name of another one.
[[nodiscard]] Result<SheetDraft> with_text(const SheetDraft& draft, const std::string& place, const std::string& text);
/// Another row at the end of that list, or the part that was not there; of a list of steps after the last one.
[[nodiscard]] SheetDraft with_row(const SheetDraft& draft, const std::string& place);
[[nodiscard]] SheetDraft without(const SheetDraft& draft, const std::string& place);

/// A row that was moved or came from elsewhere, and where it stands now.
struct MovedRow {
  SheetDraft draft;
  std::string place;
  friend bool operator==(const MovedRow&, const MovedRow&) = default;
};
/// The row changes places with its neighbour: -1 up, 1 down. A step at the border of its stage goes over into the stage
/// before or after; where there is none it stays. Codes, each of a move that would make it so: `wrong_order` (a step
/// would stand on the wrong side of one it refers to), `no_signature` (the sheet would end without), `too_few`,
/// `too_many` (steps of a stage).
[[nodiscard]] Result<MovedRow> moved(const SheetDraft& draft, const std::string& place, int by);
/// Shims from one thickness to another, added to the tray of a side, each named by its thickness. Codes: those of the
/// number reader, `out_of_range` (the step is not above 0 or does not come out, the range runs backwards, or it
/// is more than 200).
[[nodiscard]] Result<SheetDraft> with_shims(const SheetDraft& draft, Side side, const std::string& from,
                                            const std::string& to, const std::string& step, const std::string& u_mm);

/// What the draft is as a file: nothing put aside, a blank source filled with that of the sheet, blank translations and
/// parts left out. A file from outside that was not changed keeps its bytes.
[[nodiscard]] std::string file_of(const SheetDraft& draft);
/// All that keeps the file from being read, each at its field: empty exactly where the reader of the file takes it.
[[nodiscard]] std::vector<Error> faults_of(const SheetDraft& draft);
/// Whether a fault only says that something is still to be filled in.
[[nodiscard]] bool is_still_blank(const Error& fault);

}  // namespace shimwright::sheet
