#include "shimwright/record/signed_record.h"

#include "seal_json.h"

namespace shimwright::record {

namespace {

using Json = nlohmann::json;

constexpr std::string_view format_name = "shimwright.signed-record";

Json json_of_entry(const StoredEntry& entry) {
  return {{"seq", entry.seq},
          {"moment", json_of(entry.moment)},
          {"person", entry.person},
          {"kind", entry.kind},
          {"kind_version", entry.kind_version},
          {"body", entry.body},
          {"previous_hash", entry.previous_hash},
          {"hash", entry.hash}};
}

StoredEntry entry_in(const Json& object) {
  return {number_in(object, "seq"),
          moment_in(member(object, "moment")),
          text_in(object, "person"),
          text_in(object, "kind"),
          static_cast<int>(number_in(object, "kind_version")),
          text_in(object, "body"),
          text_in(object, "previous_hash"),
          text_in(object, "hash")};
}

Json personal_json(const SignedRecord& signed_record) {
  Json texts = Json::object();
  for (const auto& [id, text] : signed_record.personal) {
    texts[id] = {{"text", text.text}, {"salt", text.salt}};
  }
  return texts;
}

Json whole_json(const SignedRecord& signed_record) {
  Json entries = Json::array();
  for (const StoredEntry& each : signed_record.entries) {
    entries.push_back(json_of_entry(each));
  }
  Json addenda = Json::array();
  for (const SignedAddendum& each : signed_record.addenda) {
    addenda.push_back({{"statement", json_of(each.statement)}, {"signature", each.signature}});
  }
  return {{"format", std::string(format_name)},
          {"version", 1},
          {"min_reader", 1},
          {"statement", json_of(signed_record.statement)},
          {"signatures", signed_record.signatures},
          {"record", parsed(signed_record.record)},
          {"code", signed_record.code},
          {"entries", std::move(entries)},
          {"addenda", std::move(addenda)},
          {"personal", personal_json(signed_record)}};
}

SignedRecord signed_record_in(const Json& whole) {
  SignedRecord read;
  read.statement = seal_statement_in(member(whole, "statement"));
  for (const Json& each : member(whole, "signatures")) {
    read.signatures.push_back(each.is_string() ? each.get<std::string>() : std::string());
  }
  read.record = canonical_bytes(member(whole, "record"));
  read.code = text_in(whole, "code");
  for (const Json& each : member(whole, "entries")) {
    read.entries.push_back(entry_in(each));
  }
  for (const Json& each : member(whole, "addenda")) {
    read.addenda.push_back({addendum_statement_in(member(each, "statement")), text_in(each, "signature")});
  }
  const Json& personal = member(whole, "personal");
  if (personal.is_object()) {
    for (const auto& [id, text] : personal.items()) {
      read.personal[id] = {text_in(text, "text"), text_in(text, "salt")};
    }
  }
  return read;
}

}  // namespace

std::string signed_record_json(const SignedRecord& signed_record) {
  return canonical_bytes(whole_json(signed_record)) + "\n";
}

Result<SignedRecord> read_signed_record(std::string_view bytes) {
  const Json whole = parsed(bytes);
  if (text_in(whole, "format") != format_name) {
    return refuse("not_signed_record", "",
                  SHIMWRIGHT_TEXT("record", "This is no signed record of this program, or its beginning was changed."));
  }
  if (number_in(whole, "min_reader") > 1) {
    return refuse("newer_format", "",
                  SHIMWRIGHT_TEXT("record", "This signed record was written by a newer program: check it with that."));
  }
  SignedRecord read = signed_record_in(whole);
  if (signed_record_json(read) != bytes) {
    return refuse("file_changed", "file",
                  SHIMWRIGHT_TEXT("record", "This file is not byte for byte as it was written: it was changed."));
  }
  return read;
}

RecordNames names_as_frozen(const std::string& record, RecordNames today) {
  const Json frozen = parsed(record);
  today.workshop_name = text_in(member(frozen, "workshop"), "name");
  today.workshop_address = text_in(member(frozen, "workshop"), "address");
  today.persons.clear();
  for (const Json& each : member(member(frozen, "job"), "people")) {
    today.persons[text_in(each, "id")] = {text_in(each, "initials"), text_in(each, "name")};
  }
  return today;
}

}  // namespace shimwright::record
