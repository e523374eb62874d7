#include <algorithm>
#include <utility>

#include "append.h"
#include "arrival.h"
#include "chain_heads.h"
#include "record_names.h"
#include "seal_rows.h"
#include "shimwright/job/decide.h"
#include "shimwright/job/evolve.h"
#include "shimwright/job/to_decide.h"
#include "shimwright/record/record_json.h"
#include "shimwright/record/seal_code.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/seal.h"

namespace shimwright::store {

namespace {

struct JobInStore {
  LoadedJob loaded;
  job::JobState state;
  record::RecordNames names;
};

Result<JobInStore> job_in(Store& store, const std::string& id) {
  auto loaded = store.load(id);
  if (!loaded) {
    return passed_on(loaded);
  }
  auto names = record_names(store, *loaded);
  if (!names) {
    return passed_on(names);
  }
  job::JobState state = job::fold(loaded->sheets, loaded->entries);
  return JobInStore{std::move(*loaded), std::move(state), std::move(*names)};
}

record::SealSigner signer_of(const JobInStore& job, const std::string& person, const std::string& role,
                             const record::SecretKey& key) {
  const auto known = job.names.persons.find(person);
  const record::PersonName name = known == job.names.persons.end() ? record::PersonName{} : known->second;
  return {person, name.name, name.initials, role, key.public_key()};
}

Result<std::vector<record::SecretKey>> unlock_all(Store& store, const std::vector<SealPin>& pins, const By& by,
                                                  const SigningRules& rules) {
  std::vector<record::SecretKey> keys;
  for (const SealPin& each : pins) {
    auto key = unlock(store, each.person, each.pin, by.moment, rules);
    if (!key) {
      return passed_on(key);
    }
    keys.push_back(std::move(*key));
  }
  return keys;
}

/// What is asked of the job logic before a PIN is: a stand-in for the digest, which is there only when it is signed.
Result<void> may_be_sealed(const JobInStore& job, const std::vector<SealPin>& pins, const By& by) {
  std::vector<std::string> signers;
  for (const SealPin& each : pins) {
    signers.push_back(each.person);
  }
  const job::Context context{by.moment, by.person, {}, {}, {}, {}};
  auto decided = job::decide(job.state, job::SealJob{std::string(64, '0'), signers}, context);
  return decided ? Result<void>() : passed_on(decided);
}

record::SealStatement statement_of(const JobInStore& job, const std::string& frozen, const HeadsEnd& heads,
                                   const By& by) {
  record::SealStatement statement;
  statement.job = job.loaded.id;
  statement.number = job.state.opened ? job.state.opened->number : std::string();
  statement.moment = by.moment;
  statement.entries = static_cast<std::int64_t>(job.loaded.stored.size());
  statement.last_hash = job.loaded.stored.back().hash;
  statement.record_sha256 = record::sha256_hex(frozen);
  statement.heads_position = heads.position;
  statement.heads_hash = heads.list_hash;
  return statement;
}

/// The entry, in the chain as it follows from what was signed.
Result<void> append_entry(Connection& connection, const JobInStore& job, const record::StoredEntry& stored) {
  auto entry = record::decoded(stored);
  if (!entry) {
    return passed_on(entry);
  }
  return append_within(connection, job.loaded.id, {*entry}, {}, job::evolve(job.state, *entry));
}

Result<std::string> seal_within(Store& store, const JobInStore& job, const std::vector<record::SecretKey>& keys,
                                const By& by) {
  Connection& connection = store.connection();
  auto heads = end_of_heads(connection);
  if (!heads) {
    return passed_on(heads);
  }
  const record::Record record = record::make_record(job.state, job.names);
  const std::string frozen = record::sealed_part(record);
  record::SealStatement statement = statement_of(job, frozen, *heads, by);
  const std::vector<std::string> signers = job::signers_of(job.state);
  for (std::size_t at = 0; at < keys.size(); ++at) {
    statement.signers.push_back(signer_of(job, signers.at(at), at == 0 ? "technician" : "checker", keys[at]));
  }
  const std::string bytes = record::bytes_of(statement);
  std::vector<std::string> signatures;
  for (const record::SecretKey& key : keys) {
    signatures.push_back(key.sign(bytes));
  }
  const std::string digest = record::digest_of(statement);
  if (auto appended = append_entry(connection, job, record::entry_of(statement)); !appended) {
    return passed_on(appended);
  }
  const std::string code = record::seal_code(record::vital_values(record, digest), keys.front());
  if (auto inserted = insert_seal(connection, statement, signatures, frozen, code); !inserted) {
    return passed_on(inserted);
  }
  return digest;
}

Result<void> addendum_within(Store& store, const JobInStore& job, record::AddendumStatement statement,
                             const record::SecretKey& key) {
  auto sealed = seal_rows(store.connection(), job.loaded.id);
  if (!sealed) {
    return passed_on(sealed);
  }
  statement.seal = record::digest_of(sealed->statement);
  if (auto appended = append_entry(store.connection(), job, record::entry_of(statement)); !appended) {
    return appended;
  }
  const std::string signature = key.sign(record::bytes_of(statement));
  return insert_addendum(store.connection(), {std::move(statement), signature});
}

JobFile job_file(const Store& store, const std::string& job, const std::string& folder) {
  if (folder.empty()) {
    return {};
  }
  auto path = write_job_file(store, job, folder);
  return path ? JobFile{*path, std::nullopt} : JobFile{{}, path.error()};
}

}  // namespace

Result<SealedJob> seal_job(Store& store, const std::string& id, const std::vector<SealPin>& pins, const By& by,
                           const SigningRules& rules, const std::string& folder) {
  auto job = job_in(store, id);
  if (!job) {
    return passed_on(job);
  }
  if (auto may = may_be_sealed(*job, pins, by); !may) {
    return passed_on(may);
  }
  auto keys = unlock_all(store, pins, by, rules);
  if (!keys) {
    return passed_on(keys);
  }
  auto transaction = Transaction::begin(store.connection());
  if (!transaction) {
    return passed_on(transaction);
  }
  auto digest = seal_within(store, *job, *keys, by);
  if (!digest) {
    return passed_on(digest);
  }
  if (auto committed = transaction->commit(); !committed) {
    return passed_on(committed);
  }
  return SealedJob{*digest, job_file(store, id, folder)};
}

Result<JobFile> add_addendum(Store& store, const std::string& id, const std::string& reason, const std::string& text,
                             const record::Pin& pin, const By& by, const SigningRules& rules,
                             const std::string& folder) {
  auto job = job_in(store, id);
  if (!job) {
    return passed_on(job);
  }
  const job::Context context{by.moment, by.person, {}, {}, {}, {}};
  if (auto decided = job::decide(job->state, job::AddAddendum{reason, text}, context); !decided) {
    return passed_on(decided);
  }
  auto key = unlock(store, by.person, pin, by.moment, rules);
  if (!key) {
    return passed_on(key);
  }
  auto transaction = Transaction::begin(store.connection());
  if (!transaction) {
    return passed_on(transaction);
  }
  record::AddendumStatement statement{id,
                                      {},
                                      by.moment,
                                      job->state.next_seq(),
                                      job->loaded.stored.back().hash,
                                      reason,
                                      text,
                                      signer_of(*job, by.person, "author", *key)};
  if (auto added = addendum_within(store, *job, std::move(statement), *key); !added) {
    return passed_on(added);
  }
  if (auto committed = transaction->commit(); !committed) {
    return passed_on(committed);
  }
  return job_file(store, id, folder);
}

Result<record::SignedRecord> signed_record_of(const Store& store, const std::string& job) {
  auto loaded = store.load(job);
  if (!loaded) {
    return passed_on(loaded);
  }
  return signed_record_in(store.connection(), *loaded);
}

namespace {

tl::unexpected<Error> gone_since() {
  return refuse("store_changed", "chain heads",
                SHIMWRIGHT_TEXT("store",
                                "What was sealed is whole, but something that came after it is gone or changed: look "
                                "for a newer signed file in the backup folder."));
}

/// The job's own line counts its entries apart from them.
Result<void> nothing_gone_since(Connection& connection, const record::SignedRecord& sealed) {
  auto last = connection.value("SELECT last_seq FROM job WHERE id = ?", {sealed.statement.job});
  if (!last) {
    return passed_on(last);
  }
  return *last == number_value(sealed.entries.back().seq) ? Result<void>() : gone_since();
}

}  // namespace

Result<void> verify_job(const Store& store, const std::string& job) {
  auto sealed = signed_record_of(store, job);
  if (!sealed) {
    return passed_on(sealed);
  }
  if (auto whole = record::check_signed_record(*sealed); !whole) {
    return whole;
  }
  auto keys = known_keys(store);
  if (!keys) {
    return passed_on(keys);
  }
  if (auto known = record::check_keys(*sealed, *keys); !known) {
    return known;
  }
  if (auto all = nothing_gone_since(store.connection(), *sealed); !all) {
    return all;
  }
  auto holds = store.holds_end({sealed->statement.heads_position, sealed->statement.heads_hash});
  if (!holds) {
    return passed_on(holds);
  }
  auto from_elsewhere = arrived(store.connection(), job, sealed->statement.entries + 1);
  if (!from_elsewhere) {
    return passed_on(from_elsewhere);
  }
  if (!*holds && *from_elsewhere) {
    return refuse("sealed_elsewhere", "",
                  SHIMWRIGHT_TEXT("store",
                                  "This job is whole and signed with keys known here; it was sealed in another store, "
                                  "and what that one held besides is not shown here."));
  }
  if (!*holds) {
    return refuse(
        "store_changed", "chain heads",
        SHIMWRIGHT_TEXT("store", "This job is whole, but something the store held before it is gone or changed."));
  }
  const record::StoredEntry& last = sealed->entries.back();
  auto go_on = heads_go_on(store.connection(), {sealed->statement.heads_position, sealed->statement.heads_hash}, job,
                           last.seq, last.hash);
  if (!go_on) {
    return passed_on(go_on);
  }
  return *go_on ? Result<void>() : gone_since();
}

}  // namespace shimwright::store
