#include "shimwright/record/seal.h"

#include "seal_json.h"

namespace shimwright::record {

namespace {

tl::unexpected<Error> bad_statement() {
  return refuse("bad_statement", "statement",
                SHIMWRIGHT_TEXT("record", "What was signed is not in the form this program writes: it was changed."));
}

}  // namespace

std::string bytes_of(const SealStatement& statement) {
  return canonical_bytes(json_of(statement));
}

std::string bytes_of(const AddendumStatement& statement) {
  return canonical_bytes(json_of(statement));
}

Result<SealStatement> read_seal_statement(std::string_view bytes) {
  SealStatement statement = seal_statement_in(parsed(bytes));
  if (bytes.empty() || bytes_of(statement) != bytes) {
    return bad_statement();
  }
  return statement;
}

Result<AddendumStatement> read_addendum_statement(std::string_view bytes) {
  AddendumStatement statement = addendum_statement_in(parsed(bytes));
  if (bytes.empty() || bytes_of(statement) != bytes) {
    return bad_statement();
  }
  return statement;
}

std::string digest_of(const SealStatement& statement) {
  return sha256_hex(bytes_of(statement));
}

std::string digest_of(const AddendumStatement& statement) {
  return sha256_hex(bytes_of(statement));
}

StoredEntry entry_of(const SealStatement& statement) {
  job::Sealed sealed{digest_of(statement), {}};
  for (const SealSigner& each : statement.signers) {
    sealed.signers.push_back(each.person);
  }
  const std::string person = sealed.signers.empty() ? std::string() : sealed.signers.front();
  return chained(statement.job, {statement.entries + 1, statement.moment, person, std::move(sealed)},
                 statement.last_hash);
}

StoredEntry entry_of(const AddendumStatement& statement) {
  return chained(statement.job,
                 {statement.entry, statement.moment, statement.signer.person,
                  job::AddendumAdded{statement.reason, statement.text}},
                 statement.previous_hash);
}

}  // namespace shimwright::record
