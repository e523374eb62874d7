#include <iostream>

#include "sealed_sample.h"

/// Signed records, one a line, for the check against the schema: with an addendum, and with neither that nor texts.
int main() {
  using namespace shimwright;
  record::SignedRecord sealed = record_test::sealed_sample();
  std::cout << record::signed_record_json(sealed);
  sealed.addenda.clear();
  sealed.entries.pop_back();
  sealed.personal.clear();
  std::cout << record::signed_record_json(sealed);
  return 0;
}
