#include "seal_json.h"

#include "shimwright/json/canonical.h"
#include "shimwright/json/value.h"

namespace shimwright::record {

namespace {

using Json = nlohmann::json;

Json json_of_signer(const SealSigner& signer) {
  return {{"person", signer.person},
          {"name", signer.name},
          {"initials", signer.initials},
          {"role", signer.role},
          {"public_key", signer.public_key}};
}

SealSigner signer_in(const Json& object) {
  return {text_in(object, "person"), text_in(object, "name"), text_in(object, "initials"), text_in(object, "role"),
          text_in(object, "public_key")};
}

}  // namespace

const Json& member(const Json& object, const char* key) {
  static const Json none;
  const auto found = object.is_object() ? object.find(key) : object.end();
  return object.is_object() && found != object.end() ? *found : none;
}

std::string text_in(const Json& object, const char* key) {
  const auto* text = member(object, key).get_ptr<const Json::string_t*>();
  return text == nullptr ? std::string() : *text;
}

std::int64_t number_in(const Json& object, const char* key) {
  const Json& value = member(object, key);
  return value.is_number_integer() ? value.get<std::int64_t>() : 0;
}

Json json_of(const job::Moment& moment) {
  return {{"at_ms", moment.at_ms}, {"offset_min", moment.offset_min}, {"clock_went_back", moment.clock_went_back}};
}

job::Moment moment_in(const Json& object) {
  return {number_in(object, "at_ms"), static_cast<int>(number_in(object, "offset_min")),
          member(object, "clock_went_back") == Json(true)};
}

Json json_of(const SealStatement& statement) {
  Json signers = Json::array();
  for (const SealSigner& each : statement.signers) {
    signers.push_back(json_of_signer(each));
  }
  return {{"format", "shimwright.seal"},
          {"version", 1},
          {"job", statement.job},
          {"number", statement.number},
          {"moment", json_of(statement.moment)},
          {"entries", statement.entries},
          {"last_hash", statement.last_hash},
          {"record_sha256", statement.record_sha256},
          {"heads", {{"position", statement.heads_position}, {"list_hash", statement.heads_hash}}},
          {"signers", std::move(signers)}};
}

SealStatement seal_statement_in(const Json& object) {
  SealStatement statement;
  statement.job = text_in(object, "job");
  statement.number = text_in(object, "number");
  statement.moment = moment_in(member(object, "moment"));
  statement.entries = number_in(object, "entries");
  statement.last_hash = text_in(object, "last_hash");
  statement.record_sha256 = text_in(object, "record_sha256");
  statement.heads_position = number_in(member(object, "heads"), "position");
  statement.heads_hash = text_in(member(object, "heads"), "list_hash");
  for (const Json& each : member(object, "signers")) {
    statement.signers.push_back(signer_in(each));
  }
  return statement;
}

Json json_of(const AddendumStatement& statement) {
  return {{"format", "shimwright.addendum"},
          {"version", 1},
          {"job", statement.job},
          {"seal", statement.seal},
          {"moment", json_of(statement.moment)},
          {"entry", statement.entry},
          {"previous_hash", statement.previous_hash},
          {"reason", statement.reason},
          {"text", statement.text},
          {"signer", json_of_signer(statement.signer)}};
}

AddendumStatement addendum_statement_in(const Json& object) {
  return {text_in(object, "job"),
          text_in(object, "seal"),
          moment_in(member(object, "moment")),
          number_in(object, "entry"),
          text_in(object, "previous_hash"),
          text_in(object, "reason"),
          text_in(object, "text"),
          signer_in(member(object, "signer"))};
}

std::string canonical_bytes(const Json& value) {
  const auto bytes = json::canonical(value);
  return bytes ? *bytes : std::string();
}

Json parsed(std::string_view bytes) {
  // The strict reader first: it bounds the depth, which the other one would take from the stack.
  return json::parse(bytes) ? Json::parse(bytes, nullptr, false) : Json();
}

}  // namespace shimwright::record
