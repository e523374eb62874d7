#pragma once

#include "sample_job.h"
#include "seal_bench.h"
#include "shimwright/record/record_json.h"
#include "shimwright/record/seal_code.h"
#include "shimwright/record/signed_record.h"

/// The finished sample job, sealed by two persons, with one addendum.
namespace shimwright::record_test {

inline record::SecretKey technicians_key() {
  return record::new_key(counted_chance(1));
}
inline record::SecretKey checkers_key() {
  return record::new_key(counted_chance(101));
}

inline record::SealSigner signer(const record::SecretKey& key, const std::string& initials, const std::string& role) {
  return {"person-" + initials, initials + " of the shop", initials, role, key.public_key()};
}

inline record::SignedRecord sealed_sample() {
  const std::string job = "01930000-0000-7000-8000-000000000010";
  const Bench bench = finished_job();
  const record::Record record = record_of(bench);
  const record::SecretKey technician = technicians_key();
  const record::SecretKey checker = checkers_key();
  record::SignedRecord sealed;
  for (const job::Entry& each : bench.entries()) {
    sealed.entries.push_back(
        record::chained(job, each, sealed.entries.empty() ? std::string() : sealed.entries.back().hash));
  }
  sealed.record = record::sealed_part(record);
  sealed.statement = {job,
                      record.job.number,
                      bench.entries().back().moment,
                      static_cast<std::int64_t>(sealed.entries.size()),
                      sealed.entries.back().hash,
                      record::sha256_hex(sealed.record),
                      17,
                      record::sha256_hex("heads"),
                      {signer(technician, "MK", "technician"), signer(checker, "RT", "checker")}};
  const std::string bytes = record::bytes_of(sealed.statement);
  sealed.signatures = {technician.sign(bytes), checker.sign(bytes)};
  sealed.entries.push_back(record::entry_of(sealed.statement));
  record::AddendumStatement addendum{job,
                                     record::digest_of(sealed.statement),
                                     bench.entries().back().moment,
                                     sealed.statement.entries + 2,
                                     sealed.entries.back().hash,
                                     "found later",
                                     "0.1 l of oil topped up",
                                     signer(checker, "RT", "author")};
  sealed.addenda.push_back({addendum, checker.sign(record::bytes_of(addendum))});
  sealed.entries.push_back(record::entry_of(addendum));
  sealed.code = record::seal_code(record::vital_values(record, record::digest_of(sealed.statement)), technician);
  for (const auto* each : {&record.vehicle.plate, &record.vehicle.customer_reference, &record.vehicle.complaint}) {
    if (*each && (*each)->content) {
      sealed.personal[(*each)->id] = *(*each)->content;
    }
  }
  return sealed;
}

/// Its record as it is printed.
inline record::Record sealed_record(bool reprint = false) {
  const record::SignedRecord sealed = sealed_sample();
  record::Record record = record_of(finished_job());
  record.seal = record::SealMark{record::seal_groups(record::digest_of(sealed.statement)), sealed.code,
                                 sealed.statement.moment, reprint};
  for (const record::SignedAddendum& each : sealed.addenda) {
    const record::AddendumStatement& said = each.statement;
    record.addenda.push_back({said.signer.initials, said.signer.name, said.moment, said.reason, said.text,
                              record::seal_groups(record::digest_of(said))});
  }
  return record;
}

}  // namespace shimwright::record_test
