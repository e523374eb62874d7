#include "shimwright/bench/workbench.h"

#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

TEST_CASE("a job taken in hand is the one in the store, and a command that is refused changes nothing") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  const auto before = bench.workbench().state().entries.size();
  CHECK(before > 20);
  const auto refused = bench.workbench().send(job::DoStep{"no-such-step"});
  CHECK_FALSE(refused.has_value());
  CHECK(bench.workbench().state().entries.size() == before);
}

TEST_CASE("what was sent is in the store before it is shown") {
  test::UiBench bench;
  const std::string job = bench.go_to("large-gauge-fit");
  std::size_t stored = 0;
  QObject::connect(&bench.workbench(), &bench::Workbench::changed, [&] {
    const auto loaded = bench.store().load(job);
    REQUIRE(loaded);
    stored = loaded->entries.size();
  });
  const auto sent = bench.workbench().send(job::Note{std::nullopt, "a note"});
  REQUIRE(sent);
  CHECK(stored == bench.workbench().state().entries.size());
}

TEST_CASE("entries are written by the person at the bench") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  const auto& persons = bench.workbench().persons();
  REQUIRE(persons.size() >= 2);
  bench.workbench().set_person(persons[1]);
  const auto sent = bench.workbench().send(job::Note{std::nullopt, "a note"});
  REQUIRE(sent);
  CHECK(sent->front().person == persons[1].id);
  CHECK(bench.workbench().initials_of(persons[1].id) == QString::fromStdString(persons[1].initials));
}
