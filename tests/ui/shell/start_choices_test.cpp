#include "shimwright/shell/start_choices.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("what is chosen is what the buttons are called") {
  for (const auto& length : shell::length_choices()) {
    for (const auto& torque : shell::torque_choices()) {
      const auto units = shell::with_choice(shell::with_choice({}, length.name), torque.name);
      CHECK(shell::choice_of(units).length == length.name);
      CHECK(shell::choice_of(units).torque == torque.name);
      CHECK(shell::with_choice(units, "language-de") == units);
    }
  }
  for (const auto& paper : shell::paper_choices()) {
    REQUIRE(shell::paper_named(paper.name));
    CHECK(shell::choice_of(*shell::paper_named(paper.name)) == paper.name);
  }
  CHECK_FALSE(shell::paper_named("length-mm"));
  CHECK(shell::language_choices().front().name == "language-en");
}
