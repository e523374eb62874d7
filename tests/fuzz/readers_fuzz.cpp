#include <algorithm>
#include <array>
#include <string>

#include "fuzz_target.h"
#include "shimwright/job/codec.h"
#include "shimwright/record/signed_record.h"
#include "shimwright/sheet/draft.h"
#include "shimwright/sheet/spec_sheet.h"

namespace job = shimwright::job;
namespace record = shimwright::record;
namespace sheet = shimwright::sheet;
using shimwright::fuzz::require;

namespace {

/// Every refusal is one whole sentence on one line, whatever was in the text.
void check(const shimwright::Error& error) {
  const std::string sentence = error.in_english();
  require(!error.code.empty(), "a refusal has a code");
  require(!sentence.empty() && sentence.find('\n') == std::string::npos, "a refusal is one line");
  require(sentence.size() < 2000, "a refusal is short, however long the text is");
}

template <class Content>
bool taken(const shimwright::Result<Content>& read) {
  if (!read) {
    check(read.error());
  }
  return read.has_value();
}

void try_sheet(std::string_view text) {
  static_cast<void>(taken(sheet::read_job_sheet(text)));
  static_cast<void>(taken(sheet::read_spec_sheet(text)));
}

/// A change a form can make of a draft; which one is the text's choice.
void try_change(const sheet::SheetDraft& draft, std::size_t choice) {
  const auto sections = sheet::sections_of(draft);
  if (sections.empty()) {
    return;
  }
  const sheet::DraftSection& section = sections[choice % sections.size()];
  if (!section.ways.empty()) {
    static_cast<void>(sheet::sections_of(sheet::with_row(draft, section.ways[choice % section.ways.size()].place)));
  }
  if (section.groups.empty()) {
    return;
  }
  const sheet::DraftGroup& group = section.groups[choice / 7 % section.groups.size()];
  if (!group.place.empty()) {
    static_cast<void>(sheet::sections_of(sheet::without(draft, group.place)));
    static_cast<void>(taken(sheet::moved(draft, group.place, choice % 2 == 0 ? 1 : -1)));
  }
  if (!group.fields.empty()) {
    static_cast<void>(taken(sheet::with_text(draft, group.fields[choice % group.fields.size()].place, "0,85")));
  }
}

void try_draft(sheet::SheetKind kind, std::string_view text) {
  const auto draft = sheet::draft_of_file(kind, std::string(text));
  if (!taken(draft)) {
    return;
  }
  static_cast<void>(sheet::head_of(*draft));
  const auto faults = sheet::faults_of(*draft);
  std::for_each(faults.begin(), faults.end(), check);
  const std::string file = sheet::file_of(*draft);
  const bool is_read = kind == sheet::SheetKind::job_sheet ? sheet::read_job_sheet(file).has_value()
                                                           : sheet::read_spec_sheet(file).has_value();
  require(faults.empty() == is_read, "a draft without faults is a file that is read");
  try_change(*draft, text.size());
}

void try_signed_record(std::string_view text) {
  const auto read = record::read_signed_record(text);
  if (!taken(read)) {
    return;
  }
  require(record::signed_record_json(*read) == text, "what is read is written as the same bytes");
  static_cast<void>(taken(record::check_signed_record(*read)));
  static_cast<void>(taken(record::check_keys(*read, {})));
}

void try_statements(std::string_view text) {
  if (const auto seal = record::read_seal_statement(text); taken(seal)) {
    require(record::bytes_of(*seal) == text, "a statement is written as the same bytes");
  }
  if (const auto addendum = record::read_addendum_statement(text); taken(addendum)) {
    require(record::bytes_of(*addendum) == text, "an addendum is written as the same bytes");
  }
}

constexpr std::array<std::string_view, 32> kinds = {
    "addendum_added", "advised",           "assembly_begun", "checked", "chosen",
    "confirmed",      "depths_read",       "deviated",       "done",    "float_run",
    "handed_over",    "not_required",      "noted",          "opened",  "parked",
    "parts_fitted",   "peak_read",         "photo_taken",    "read",    "sealed",
    "series_begun",   "shim_chosen",       "shim_tried",     "signed",  "taken_up",
    "teach_in_tried", "withdrawn",         "written",        "",        "OPENED",
    "opened\n",       "a kind of tomorrow"};

/// The first byte picks the kind, its highest bit the version.
void try_entry(std::string_view text) {
  if (text.empty()) {
    return;
  }
  const auto pick = static_cast<unsigned char>(text.front());
  const int version = (pick & 0x80U) == 0 ? 1 : 2;
  const auto body = job::decode(kinds[pick % kinds.size()], version, text.substr(1));
  if (!taken(body)) {
    return;
  }
  const job::EncodedBody again = job::encode(*body);
  require(again.kind == kinds[pick % kinds.size()] && again.kind_version == version, "an entry keeps its kind");
  const auto once_more = job::decode(again.kind, again.kind_version, again.bytes);
  require(once_more && *once_more == *body, "an entry written is read as the same entry");
}

}  // namespace

/// The first byte picks the reader, the rest is the text.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) {
    return 0;
  }
  const auto text = shimwright::fuzz::text_of(data + 1, size - 1);
  switch (static_cast<char>(data[0])) {
    case 'j':
      try_draft(sheet::SheetKind::job_sheet, text);
      break;
    case 's':
      try_draft(sheet::SheetKind::spec_sheet, text);
      break;
    case 'r':
      try_signed_record(text);
      break;
    case 't':
      try_statements(text);
      break;
    case 'e':
      try_entry(text);
      break;
    case 'f':
      static_cast<void>(record::names_as_frozen(std::string(text), {}));
      break;
    default:
      try_sheet(text);
  }
  return 0;
}
