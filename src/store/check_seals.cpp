#include "arrival.h"
#include "chain_heads.h"
#include "check_parts.h"
#include "seal_rows.h"

namespace shimwright::store {

namespace {

bool says_sealed(const CheckedJob& job) {
  for (const record::StoredEntry& each : job.stored) {
    if (each.kind == "sealed") {
      return true;
    }
  }
  return false;
}

/// A seal that was taken in with its job names the list of another store.
Result<void> check_heads_of(Connection& connection, const CheckedJob& job, const record::SealStatement& statement,
                            CheckReport& report) {
  auto holds = heads_hold(connection, {statement.heads_position, statement.heads_hash});
  if (!holds || *holds) {
    return holds ? Result<void>() : passed_on(holds);
  }
  auto from_elsewhere = arrived(connection, job.id, statement.entries + 1);
  if (!from_elsewhere) {
    return passed_on(from_elsewhere);
  }
  if (*from_elsewhere) {
    ++report.sealed_elsewhere;
  } else {
    add_finding(report, "store_changed", "chain_head", job.id, std::nullopt,
                {SHIMWRIGHT_TEXT("store", "What the store held when this job was sealed is gone or changed."), {}});
  }
  return {};
}

}  // namespace

Result<void> check_seal(Connection& connection, const CheckedJob& job, CheckReport& report) {
  auto sealed = seal_rows(connection, job.id);
  if (!sealed && sealed.error().code == "not_sealed") {
    if (says_sealed(job)) {
      add_finding(report, "seal_missing", "seal", job.id, job.stored.back().seq,
                  {SHIMWRIGHT_TEXT("store", "This job was sealed and its seal is gone."), {}});
    }
    return {};
  }
  if (!sealed) {
    add_finding(report, sealed.error().code, "seal", job.id, std::nullopt, sealed.error().message);
    return {};
  }
  sealed->entries = job.stored;
  if (auto whole = record::check_signed_record(*sealed); !whole) {
    add_finding(report, "seal_broken", "seal", job.id, sealed->statement.entries + 1,
                {SHIMWRIGHT_TEXT("store", "The seal of this job does not hold: {0} was changed after it was signed."),
                 {whole.error().place}});
  }
  return check_heads_of(connection, job, sealed->statement, report);
}

}  // namespace shimwright::store
