#include <iostream>

#include "sample_job.h"
#include "shimwright/record/record_json.h"

/// One record a line, for the check against the schema.
int main() {
  using namespace shimwright;
  for (const auto& bench : {record_test::open_job(), record_test::finished_job(), record_test::long_job()}) {
    std::cout << record::record_json(record_test::record_of(bench)) << '\n';
  }
  std::cout << record::record_json(record::Record()) << '\n';
  return 0;
}
