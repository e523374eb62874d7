#include "seal_rows.h"

#include "schema.h"
#include "shimwright/store/signing.h"

namespace shimwright::store {

namespace {

Result<void> insert_signature(Connection& connection, const std::string& job, std::int64_t seq, std::int64_t item,
                              const std::string& signature) {
  return connection.execute("INSERT INTO signature (job, seq, item, signature) VALUES (?, ?, ?, ?)",
                            {job, number_value(seq), number_value(item), signature});
}

Result<std::vector<std::string>> signatures_of(Connection& connection, const std::string& job, std::int64_t seq) {
  auto rows = connection.rows("SELECT signature FROM signature WHERE job = ? AND seq = ? ORDER BY item",
                              {job, number_value(seq)});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<std::string> signatures;
  for (const Row& row : *rows) {
    signatures.push_back(text_in(row, 0));
  }
  return signatures;
}

tl::unexpected<Error> damaged_seal(std::string place) {
  return refuse("seal_damaged", std::move(place),
                SHIMWRIGHT_TEXT("store",
                                "The seal of this job was changed in the store: take the signed file from the "
                                "backup folder."));
}

tl::unexpected<Error> not_sealed(const std::string& job) {
  return refuse("not_sealed", job, SHIMWRIGHT_TEXT("store", "This job is not sealed: seal it first."));
}

Result<void> read_addenda(Connection& connection, const std::string& job, record::SignedRecord& read) {
  auto rows = connection.rows("SELECT seq, statement FROM addendum WHERE job = ? ORDER BY seq", {job});
  if (!rows) {
    return passed_on(rows);
  }
  for (const Row& row : *rows) {
    const std::int64_t seq = number_in(row, 0);
    auto statement = record::read_addendum_statement(bytes_in(row, 1));
    auto signatures = signatures_of(connection, job, seq);
    if (!signatures) {
      return passed_on(signatures);
    }
    if (!statement || statement->entry != seq || signatures->size() != 1) {
      return damaged_seal("addendum " + std::to_string(read.addenda.size() + 1));
    }
    read.addenda.push_back({std::move(*statement), signatures->front()});
  }
  return {};
}

}  // namespace

Result<void> insert_seal(Connection& connection, const record::SealStatement& statement,
                         const std::vector<std::string>& signatures, const std::string& record,
                         const std::string& code) {
  const std::int64_t seq = statement.entries + 1;
  auto inserted =
      connection.execute("INSERT INTO seal (job, seq, statement, record, code) VALUES (?, ?, ?, ?, ?)",
                         {statement.job, number_value(seq), Bytes{record::bytes_of(statement)}, Bytes{record}, code});
  std::int64_t item = 0;
  for (const std::string& each : signatures) {
    inserted = inserted ? insert_signature(connection, statement.job, seq, ++item, each) : inserted;
  }
  return inserted;
}

Result<void> insert_addendum(Connection& connection, const record::SignedAddendum& addendum) {
  const record::AddendumStatement& said = addendum.statement;
  auto inserted = connection.execute("INSERT INTO addendum (job, seq, statement) VALUES (?, ?, ?)",
                                     {said.job, number_value(said.entry), Bytes{record::bytes_of(said)}});
  return inserted ? insert_signature(connection, said.job, said.entry, 1, addendum.signature) : inserted;
}

Result<record::SignedRecord> seal_rows(Connection& connection, const std::string& job) {
  auto seals = has_seals(connection);
  if (!seals) {
    return passed_on(seals);
  }
  if (!*seals) {
    return not_sealed(job);
  }
  auto rows = connection.rows("SELECT seq, statement, record, code FROM seal WHERE job = ?", {job});
  if (!rows) {
    return passed_on(rows);
  }
  if (rows->empty()) {
    return not_sealed(job);
  }
  const Row& row = rows->front();
  record::SignedRecord read;
  auto statement = record::read_seal_statement(bytes_in(row, 1));
  if (!statement || statement->job != job || statement->entries + 1 != number_in(row, 0)) {
    return damaged_seal("statement");
  }
  read.statement = std::move(*statement);
  read.record = bytes_in(row, 2);
  read.code = text_in(row, 3);
  auto signatures = signatures_of(connection, job, number_in(row, 0));
  if (!signatures) {
    return passed_on(signatures);
  }
  read.signatures = std::move(*signatures);
  if (auto addenda = read_addenda(connection, job, read); !addenda) {
    return passed_on(addenda);
  }
  return read;
}

Result<record::SignedRecord> signed_record_in(Connection& connection, const LoadedJob& job) {
  auto sealed = seal_rows(connection, job.id);
  if (!sealed) {
    return sealed;
  }
  sealed->entries = job.stored;
  for (const auto& [id, text] : job.private_texts) {
    if (text) {
      sealed->personal[id] = {*text, job.private_salts.at(id)};
    }
  }
  return sealed;
}

Result<record::SealCheck> seal_check(const Store& store, const LoadedJob& job) {
  auto sealed = signed_record_in(store.connection(), job);
  if (!sealed && sealed.error().code == "seal_damaged") {
    return record::SealCheck{record::SealStanding::changed, sealed.error().place, sealed.error().message};
  }
  if (!sealed) {
    return passed_on(sealed);
  }
  auto keys = known_keys(store);
  if (!keys) {
    return passed_on(keys);
  }
  return record::check_seal(*sealed, *keys);
}

}  // namespace shimwright::store
