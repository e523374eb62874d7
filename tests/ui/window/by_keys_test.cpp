// The program's window as it is shipped, by keys alone: from the empty bench to the printed page.
#include <catch2/catch.hpp>

#include "bench_window.h"

using namespace shimwright;

namespace {

void do_by_keys(const char* locale, const std::string& script) {
  const test::InLocale in(locale);
  test::BenchWindow bench(script);
  test::KeyTechnician technician(bench.window(), bench.rig().workbench(), bench.hands());
  bench.do_whole_job(technician, script);
  test::check_as_replayed(bench.rig().workbench().state(), script);
}

}  // namespace

TEST_CASE("a whole job with a wrong first shim by keys, from an empty bench to its record, in the numbers of the US") {
  do_by_keys("en_US", "02-bearing-not-home");
}

TEST_CASE("a whole job with a wrong first shim by keys, from an empty bench to its record, in the numbers of Germany") {
  do_by_keys("de_DE", "02-bearing-not-home");
}

TEST_CASE("a whole job with a wrong first shim by keys, from an empty bench to its record, in the numbers of France") {
  do_by_keys("fr_FR", "02-bearing-not-home");
}
