// The program's window as it is shipped, by keys alone: from the empty bench to the printed page.
#include <QAbstractButton>
#include <catch2/catch.hpp>

#include "bench_window.h"
#include "shimwright/shell/languages.h"

using namespace shimwright;

namespace {

void do_by_keys(const std::string& script, const char* first_place) {
  test::BenchWindow bench(script);
  CHECK(bench.window().findChild<QAbstractButton*>("button-bench")->text() == first_place);
  test::KeyTechnician technician(bench.window(), bench.rig().workbench(), bench.hands());
  bench.do_whole_job(technician, script);
  test::check_as_replayed(bench.rig().workbench().state(), script);
}

}  // namespace

TEST_CASE("a whole job with a wrong first shim by keys, from an empty bench to its record, in the numbers of the US") {
  const test::InLocale in("en_US");
  do_by_keys("02-bearing-not-home", "Bench");
}

TEST_CASE("a whole job with a wrong first shim by keys, from an empty bench to its record, in German") {
  const shell::Spoken german("de");
  do_by_keys("02-bearing-not-home", "Werkbank");
}

TEST_CASE("a whole job with a wrong first shim by keys, from an empty bench to its record, in French") {
  const shell::Spoken french("fr");
  do_by_keys("02-bearing-not-home", "\u00c9tabli");
}
