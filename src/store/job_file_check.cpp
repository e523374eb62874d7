#include "job_file_check.h"

#include <algorithm>
#include <memory>
#include <utility>

#include <nlohmann/json.hpp>

#include "shimwright/job/text_lengths.h"
#include "shimwright/sheet/names.h"
#include "shimwright/store/ids.h"

namespace shimwright::store {

namespace {

constexpr std::size_t longest_name = 200;
tl::unexpected<Error> wrong(std::string place) {
  return refuse("job_file_wrong", std::move(place),
                SHIMWRIGHT_TEXT("store",
                                "This job file does not hold together here, so nothing was taken from it: have it "
                                "exported anew."));
}

/// What names a file here: never a path.
bool is_sha256(const std::string& text) {
  return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

std::string entry_place(std::size_t at) {
  return "/entries/" + std::to_string(at);
}

Result<void> check_names(const JobLine& line) {
  if (!is_uuid(line.job) || !is_uuid(line.store)) {
    return wrong(is_uuid(line.job) ? "/store" : "/job");
  }
  if (line.workshop.size() > longest_name) {
    return wrong("/workshop");
  }
  std::set<std::string> ids;
  for (const FilePerson& each : line.persons) {
    if (!is_uuid(each.id) || !ids.insert(each.id).second || each.name.empty() || each.name.size() > longest_name ||
        each.initials.size() > longest_name) {
      return wrong("/persons/" + std::to_string(ids.size()));
    }
  }
  return {};
}

Result<std::vector<job::Entry>> decoded_all(const std::vector<record::StoredEntry>& stored) {
  std::vector<job::Entry> entries;
  for (const record::StoredEntry& each : stored) {
    auto entry = record::decoded(each);
    if (!entry) {
      Error error = std::move(entry.error());
      error.place = entry_place(entries.size()) + "/body" + error.place;
      return tl::make_unexpected(std::move(error));
    }
    if (std::holds_alternative<job::Opened>(entry->body) != entries.empty()) {
      return wrong(entry_place(entries.size()) + "/kind");
    }
    const auto* photo = std::get_if<job::PhotoTaken>(&entry->body);
    if (photo != nullptr && !is_sha256(photo->sha256)) {
      return wrong(entry_place(entries.size()) + "/body/sha256");
    }
    entries.push_back(std::move(*entry));
  }
  return entries;
}

/// What no entry of ours has: it would be gone through, or searched, without end.
bool is_beyond(const std::string& place, const nlohmann::json& value, std::int64_t assemblies) {
  constexpr std::string_view counts_assemblies = "/assembly";
  if (value.is_string()) {
    return sheet::character_count(value.get_ref<const std::string&>()) > job::longest_text;
  }
  const bool names_assembly =
      place.size() >= counts_assemblies.size() &&
      place.compare(place.size() - counts_assemblies.size(), counts_assemblies.size(), counts_assemblies) == 0;
  return names_assembly && value.is_number() && (value < std::int64_t{1} || value > assemblies);
}

Result<void> check_bounds(const JobLine& line) {
  const std::int64_t assemblies =
      1 + std::count_if(line.entries.begin(), line.entries.end(),
                        [](const record::StoredEntry& each) { return each.kind == "assembly_begun"; });
  for (std::size_t at = 0; at < line.entries.size(); ++at) {
    const nlohmann::json body = nlohmann::json::parse(line.entries[at].body).flatten();
    for (const auto& [place, value] : body.items()) {
      if (is_beyond(place, value, assemblies)) {
        return wrong(entry_place(at) + "/body" + place);
      }
    }
  }
  for (const auto& [id, text] : line.personal) {
    if (sheet::character_count(text.text) > job::longest_text) {
      return wrong("/personal");
    }
  }
  return {};
}

Result<job::Sheets> read_sheets_of(const JobLine& line, const job::Opened& opened) {
  auto sheet = sheet::read_job_sheet(line.job_sheet);
  if (!sheet) {
    return tl::make_unexpected(sheet.error());
  }
  auto spec = sheet::read_spec_sheet(line.spec_sheet);
  if (!spec) {
    return tl::make_unexpected(spec.error());
  }
  return job::Sheets{std::make_shared<const sheet::JobSheet>(std::move(*sheet)), opened.sheet_hash,
                     std::make_shared<const sheet::SpecSheet>(std::move(*spec)), opened.spec_hash};
}

Result<job::Sheets> checked_sheets(const JobLine& line, const job::Opened& opened) {
  if (record::sha256_hex(line.job_sheet) != opened.sheet_hash) {
    return wrong("/job_sheet");
  }
  if (record::sha256_hex(line.spec_sheet) != opened.spec_hash) {
    return wrong("/spec_sheet");
  }
  auto sheets = read_sheets_of(line, opened);
  if (!sheets) {
    return sheets;
  }
  if (sheets->job->id != opened.sheet_id || sheets->spec->id != opened.spec_id) {
    return wrong(entry_place(0));
  }
  return sheets;
}

Result<void> check_personal(const JobLine& line, const job::Opened& opened) {
  const auto references = texts_of(opened);
  for (const job::PrivateReference& each : references) {
    if (!is_uuid(each.id)) {
      return wrong(entry_place(0));
    }
  }
  for (const auto& [id, text] : line.personal) {
    const auto named = std::find_if(references.begin(), references.end(),
                                    [&id = id](const job::PrivateReference& each) { return each.id == id; });
    if (named == references.end() || named->digest != record::private_digest(text.salt, text.text)) {
      return wrong("/personal");
    }
  }
  return {};
}

Result<void> check_seal_of(const JobLine& line, const std::vector<job::Entry>& entries) {
  const bool says_sealed = std::any_of(entries.begin(), entries.end(), [](const job::Entry& each) {
    return std::holds_alternative<job::Sealed>(each.body);
  });
  if (says_sealed != line.seal.has_value()) {
    return wrong("/seal");
  }
  if (!line.seal) {
    return {};
  }
  if (line.seal->statement.job != line.job) {
    return wrong("/seal/statement");
  }
  record::SignedRecord whole = *line.seal;
  whole.entries = line.entries;
  whole.personal = line.personal;
  return record::check_signed_record(whole);
}

Result<void> check_photo_list(const JobLine& line, const std::vector<job::Entry>& entries) {
  const std::set<std::string> named = photos_of(entries);
  const bool each_once =
      std::equal(named.begin(), named.end(), line.photos.begin(), line.photos.end(),
                 [](const std::string& sha256, const FilePhoto& photo) { return sha256 == photo.sha256; });
  return each_once ? Result<void>() : wrong("/photos");
}

}  // namespace

std::set<std::string> photos_of(const std::vector<job::Entry>& entries) {
  std::set<std::string> names;
  for (const job::Entry& each : entries) {
    if (const auto* photo = std::get_if<job::PhotoTaken>(&each.body)) {
      names.insert(photo->sha256);
    }
  }
  return names;
}

std::set<std::string> persons_of(const std::vector<job::Entry>& entries) {
  std::set<std::string> ids;
  for (const job::Entry& each : entries) {
    ids.insert(each.person);
    if (const auto* handed = std::get_if<job::HandedOver>(&each.body)) {
      ids.insert(handed->to);
    }
    if (const auto* sealed = std::get_if<job::Sealed>(&each.body)) {
      ids.insert(sealed->signers.begin(), sealed->signers.end());
    }
  }
  return ids;
}

std::vector<job::PrivateReference> texts_of(const job::Opened& opened) {
  std::vector<job::PrivateReference> references;
  for (const auto* each : {&opened.plate, &opened.customer_reference, &opened.complaint}) {
    if (*each) {
      references.push_back(**each);
    }
  }
  return references;
}

Result<CheckedJobFile> checked(JobLine line) {
  if (auto names = check_names(line); !names) {
    return tl::make_unexpected(names.error());
  }
  if (line.entries.empty()) {
    return wrong("/entries");
  }
  if (auto chain = record::check_chain(line.job, line.entries); !chain) {
    return tl::make_unexpected(chain.error());
  }
  auto entries = decoded_all(line.entries);
  if (!entries) {
    return tl::make_unexpected(entries.error());
  }
  if (auto bounds = check_bounds(line); !bounds) {
    return tl::make_unexpected(bounds.error());
  }
  job::Opened opened = std::get<job::Opened>(entries->front().body);
  if (sheet::has_control_character(opened.number)) {
    return wrong(entry_place(0) + "/body/number");  // no line of a record, and no code, could hold it
  }
  auto sheets = checked_sheets(line, opened);
  if (!sheets) {
    return tl::make_unexpected(sheets.error());
  }
  for (const auto& part :
       {check_personal(line, opened), check_seal_of(line, *entries), check_photo_list(line, *entries)}) {
    if (!part) {
      return tl::make_unexpected(part.error());
    }
  }
  return CheckedJobFile{std::move(line), std::move(*entries), std::move(*sheets), std::move(opened)};
}

}  // namespace shimwright::store
