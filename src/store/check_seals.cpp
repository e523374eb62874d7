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
  auto holds = heads_hold(connection, {sealed->statement.heads_position, sealed->statement.heads_hash});
  if (!holds) {
    return passed_on(holds);
  }
  if (!*holds) {
    add_finding(report, "store_changed", "chain_head", job.id, std::nullopt,
                {SHIMWRIGHT_TEXT("store", "What the store held when this job was sealed is gone or changed."), {}});
  }
  return {};
}

}  // namespace shimwright::store
