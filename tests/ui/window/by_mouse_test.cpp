// The program's window as it is shipped, by mouse and keypad for gloves; only words are typed.
#include <catch2/catch.hpp>

#include "bench_window.h"
#include "mouse_technician.h"

using namespace shimwright;

namespace {

void do_by_mouse(const char* locale) {
  const test::InLocale in(locale);
  test::BenchWindow bench("03-sum-on-the-border");
  test::MouseTechnician technician(bench.window(), bench.rig().workbench(), bench.hands());
  bench.do_whole_job(technician, "03-sum-on-the-border");
  test::check_as_replayed(bench.rig().workbench().state(), "03-sum-on-the-border");
}

}  // namespace

TEST_CASE("a whole job by depth with the mouse, from an empty bench to its record, in the numbers of the US") {
  do_by_mouse("en_US");
}

TEST_CASE("a whole job by depth with the mouse, from an empty bench to its record, in the numbers of Germany") {
  do_by_mouse("de_DE");
}

TEST_CASE("a whole job by depth with the mouse, from an empty bench to its record, in the numbers of France") {
  do_by_mouse("fr_FR");
}
