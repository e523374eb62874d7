#include <algorithm>
#include <chrono>

#include "seal_json.h"
#include "shimwright/record/seal_code.h"
#include "shimwright/record/signed_record.h"
#include "shimwright/record/signing_key.h"

namespace shimwright::record {

namespace {

tl::unexpected<Error> changed(std::string place) {
  return refuse("changed", std::move(place), SHIMWRIGHT_TEXT("record", "This was changed after it was signed."));
}

Result<void> check_frozen(const SignedRecord& it) {
  const nlohmann::json record = parsed(it.record);
  if (sha256_hex(it.record) != it.statement.record_sha256 || number_in(record, "entries") != it.statement.entries) {
    return changed("record");
  }
  return {};
}

Result<void> check_signatures(const SignedRecord& it) {
  const auto& signers = it.statement.signers;
  if (signers.empty() || signers.size() != it.signatures.size()) {
    return changed("statement");
  }
  for (std::size_t at = 1; at < signers.size(); ++at) {
    const bool twice = std::any_of(
        signers.begin(), signers.begin() + static_cast<std::ptrdiff_t>(at),
        [&](const auto& one) { return one.public_key == signers[at].public_key || one.person == signers[at].person; });
    if (twice) {
      return refuse("changed", "signature " + std::to_string(at + 1),
                    SHIMWRIGHT_TEXT("record", "Two signatures are of one person or one key: a seal is of two."));
    }
  }
  const std::string bytes = bytes_of(it.statement);
  for (std::size_t at = 0; at < signers.size(); ++at) {
    if (!signature_holds(signers[at].public_key, bytes, it.signatures[at])) {
      return changed("signature " + std::to_string(at + 1));
    }
  }
  return {};
}

Result<void> check_entries(const SignedRecord& it) {
  if (auto chain = check_chain(it.statement.job, it.entries); !chain) {
    return changed(chain.error().place);
  }
  const auto sealed = static_cast<std::size_t>(std::max<std::int64_t>(it.statement.entries, 0));
  if (sealed == 0 || it.entries.size() != sealed + 1 + it.addenda.size()) {
    return changed("entry " + std::to_string(it.entries.size()));
  }
  if (it.entries[sealed - 1].hash != it.statement.last_hash) {
    return changed("entry " + std::to_string(sealed));
  }
  if (it.entries[sealed] != entry_of(it.statement)) {
    return changed("entry " + std::to_string(sealed + 1));
  }
  return {};
}

/// After the entries were found in order: as many as there should be.
Result<void> check_addenda(const SignedRecord& it) {
  const std::string digest = digest_of(it.statement);
  auto entry = it.entries.begin() + static_cast<std::ptrdiff_t>(it.statement.entries) + 1;
  std::size_t count = 0;
  for (const SignedAddendum& each : it.addenda) {
    const AddendumStatement& said = each.statement;
    ++count;
    if (said.job != it.statement.job || said.seal != digest || *entry != entry_of(said) ||
        !signature_holds(said.signer.public_key, bytes_of(said), each.signature)) {
      return changed("addendum " + std::to_string(count));
    }
    ++entry;
  }
  return {};
}

Result<void> check_code(const SignedRecord& it) {
  const auto code = read_seal_code(it.code);
  if (!code || code->public_key != it.statement.signers.front().public_key ||
      code->values.digest != digest_of(it.statement) || code->values.number != it.statement.number) {
    return changed("code");
  }
  return {};
}

/// What the record refers to, by id.
std::map<std::string, std::string> digests_in(const std::string& record) {
  std::map<std::string, std::string> digests;
  const nlohmann::json whole = parsed(record);
  for (const char* key : {"plate", "customer_reference", "complaint"}) {
    const nlohmann::json& text = member(member(whole, "vehicle"), key);
    if (text.is_object()) {
      digests[text_in(text, "id")] = text_in(text, "digest");
    }
  }
  return digests;
}

Result<void> check_personal(const SignedRecord& it) {
  const auto digests = digests_in(it.record);
  for (const auto& [id, text] : it.personal) {
    const auto known = digests.find(id);
    if (known == digests.end() || known->second != private_digest(text.salt, text.text)) {
      return changed("personal text");
    }
  }
  return {};
}

Result<void> check_key(const SealSigner& signer, const job::Moment& moment, const std::vector<KnownKey>& keys) {
  const auto known = std::find_if(keys.begin(), keys.end(), [&](const KnownKey& each) {
    return each.public_key == signer.public_key && (each.person.empty() || each.person == signer.person);
  });
  if (known == keys.end()) {
    return refuse("unknown_key", signer.name,
                  SHIMWRIGHT_TEXT("record", "This is whole, but signed with a key that is not known here."));
  }
  if (const auto& ended = known->invalid_from; ended && date_of(moment) >= *ended) {
    return refuse(
        "unknown_key", signer.name,
        SHIMWRIGHT_TEXT("record", "This is whole, but signed with a key that was no longer valid, from {0} on."),
        {*ended});
  }
  return {};
}

}  // namespace

std::string date_of(const job::Moment& moment) {
  const auto local = std::chrono::sys_time<std::chrono::milliseconds>(std::chrono::milliseconds(moment.at_ms)) +
                     std::chrono::minutes(moment.offset_min);
  const std::chrono::year_month_day day(std::chrono::floor<std::chrono::days>(local));
  const auto two = [](unsigned number) { return (number < 10 ? "0" : "") + std::to_string(number); };
  return std::to_string(static_cast<int>(day.year())) + "-" + two(static_cast<unsigned>(day.month())) + "-" +
         two(static_cast<unsigned>(day.day()));
}

Result<void> check_signed_record(const SignedRecord& signed_record) {
  for (const auto check : {check_frozen, check_signatures, check_entries, check_addenda, check_code, check_personal}) {
    if (auto whole = check(signed_record); !whole) {
      return whole;
    }
  }
  return {};
}

Result<void> check_keys(const SignedRecord& signed_record, const std::vector<KnownKey>& keys) {
  for (const SealSigner& each : signed_record.statement.signers) {
    if (auto known = check_key(each, signed_record.statement.moment, keys); !known) {
      return known;
    }
  }
  for (const SignedAddendum& each : signed_record.addenda) {
    if (auto known = check_key(each.statement.signer, each.statement.moment, keys); !known) {
      return known;
    }
  }
  return {};
}

SealCheck check_seal(const SignedRecord& signed_record, const std::vector<KnownKey>& keys) {
  if (auto whole = check_signed_record(signed_record); !whole) {
    return {SealStanding::changed, whole.error().place, whole.error().message};
  }
  if (auto known = check_keys(signed_record, keys); !known) {
    return {SealStanding::key_unknown, known.error().place, known.error().message};
  }
  return {};
}

std::string_view name_of(SealStanding standing) {
  switch (standing) {
    case SealStanding::holds:
      return "holds";
    case SealStanding::key_unknown:
      return "key_unknown";
    case SealStanding::changed:
      break;
  }
  return "changed";
}

}  // namespace shimwright::record
