#pragma once

#include <string>

#include "bench.h"
#include "sheet_shelf.h"
#include "shimwright/store/seal.h"
#include "workbench.h"

/// A job gone through to its end, in the store, ready to be sealed.
namespace shimwright::store::test {

inline SigningRules cheap_rules() {
  SigningRules rules;
  rules.cost = {1, 8192};
  return rules;
}

inline record::Pin pin(std::string text) {
  return record::Pin::taken_from(text);
}

/// Signed by MK; checked by RT, or left out with a reason.
inline std::string closed_job(Workbench& bench, const std::string& last, bool checked = true) {
  namespace made = job::test;
  made::Bench job(got(bench.store().sheet_shelf().sheets(record::sha256_hex(shipped("sheets/dry-pack-renewal.json")),
                                                         record::sha256_hex(shipped("specs/D7-2.json")))));
  job.context.person = mk;
  job.take(made::open_command()).answer_up_to("sign-technician");
  job.context.person = mk;
  job.take(job::Sign{"sign-technician"});
  if (checked) {
    job.context.person = rt;
    job.take(job::Sign{"sign-checker"});
  } else {
    job.take(job::Deviate{"sign-checker", "alone today"});
  }
  const std::string id = "01930000-0000-7000-8000-00000000" + last + "00";
  went(bench.store().append(id, job.state.entries, {}, job.state));
  return id;
}

inline void give_pins(Workbench& bench) {
  went(set_pin(bench.store(), mk, pin("4711"), by_mk(), cheap_rules()));
  went(set_pin(bench.store(), rt, pin("081542"), by_mk(), cheap_rules()));
}

inline std::vector<SealPin> both_pins() {
  std::vector<SealPin> pins;
  pins.push_back({mk, pin("4711")});
  pins.push_back({rt, pin("081542")});
  return pins;
}

inline By by_rt(std::int64_t minutes) {
  By by = by_mk(minutes);
  by.person = rt;
  return by;
}

}  // namespace shimwright::store::test
