#include <nlohmann/json.hpp>

#include "job_file_lines.h"
#include "shimwright/json/canonical.h"

namespace shimwright::store {

namespace {

using Json = nlohmann::json;

Json entry_json(const record::StoredEntry& entry) {
  return {{"seq", entry.seq},
          {"at_ms", entry.moment.at_ms},
          {"offset_min", entry.moment.offset_min},
          {"clock_went_back", entry.moment.clock_went_back},
          {"person", entry.person},
          {"kind", entry.kind},
          {"kind_version", entry.kind_version},
          {"body", entry.body},
          {"previous_hash", entry.previous_hash},
          {"hash", entry.hash}};
}

Json seal_json(const record::SignedRecord& seal) {
  Json addenda = Json::array();
  for (const record::SignedAddendum& each : seal.addenda) {
    addenda.push_back({{"statement", record::bytes_of(each.statement)}, {"signature", each.signature}});
  }
  return {{"statement", record::bytes_of(seal.statement)},
          {"signatures", seal.signatures},
          {"record", seal.record},
          {"code", seal.code},
          {"addenda", std::move(addenda)}};
}

template <class List, class Make>
Json list_of(const List& list, Make make) {
  Json made = Json::array();
  for (const auto& each : list) {
    made.push_back(make(each));
  }
  return made;
}

Json whole_json(const JobLine& line) {
  Json whole{
      {"format", "shimwright.job"},
      {"version", 1},
      {"min_reader", 1},
      {"store", line.store},
      {"workshop", line.workshop},
      {"job", line.job},
      {"job_sheet", line.job_sheet},
      {"spec_sheet", line.spec_sheet},
      {"entries", list_of(line.entries, entry_json)},
      {"persons", list_of(line.persons,
                          [](const FilePerson& each) {
                            return Json{{"id", each.id}, {"name", each.name}, {"initials", each.initials}};
                          })},
      {"personal", list_of(line.personal,
                           [](const auto& each) {
                             return Json{{"id", each.first}, {"salt", each.second.salt}, {"text", each.second.text}};
                           })},
      {"photos", list_of(line.photos, [](const FilePhoto& each) {
         return Json{{"sha256", each.sha256}, {"bytes", each.bytes}};
       })}};
  if (line.seal) {
    whole["seal"] = seal_json(*line.seal);
  }
  return whole;
}

}  // namespace

Result<QByteArray> written(const JobLine& line) {
  auto bytes = json::canonical(whole_json(line));
  if (!bytes) {
    return refuse("not_utf8", bytes.error().place,
                  SHIMWRIGHT_TEXT("store", "A text in this has broken characters; enter it again."));
  }
  return QByteArray::fromStdString(*bytes);
}

QByteArray photo_line(const std::string& sha256, const QByteArray& content) {
  return "{\"base64\":\"" + content.toBase64() + "\",\"sha256\":\"" + QByteArray::fromStdString(sha256) + "\"}";
}

QByteArray end_line(const std::string& sha256) {
  return "{\"sha256\":\"" + QByteArray::fromStdString(sha256) + "\"}";
}

}  // namespace shimwright::store
