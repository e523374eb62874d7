#include "shimwright/shell/start_words.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("the words of a start") {
  const auto plain = shell::read_start_words({});
  REQUIRE(plain);
  CHECK(plain->store.empty());
  CHECK_FALSE(plain->look);
  const auto look = shell::read_start_words({"--store", "here.shimwright", "--look"});
  REQUIRE(look);
  CHECK(look->store == "here.shimwright");
  CHECK(look->look);
  CHECK(shell::read_start_words({"--version"})->version);
  CHECK(shell::read_start_words({"--help"})->help);
  CHECK(shell::read_start_words({"--demo"})->demo);
  CHECK(shell::start_help().find("--store") != std::string::npos);
}

TEST_CASE("what is no word of the program is refused") {
  CHECK(shell::read_start_words({"--stroe", "x"}).error().code == "unknown_option");
  CHECK(shell::read_start_words({"x"}).error().code == "wrong_count");
  CHECK(shell::read_start_words({"--demo", "--store", "x"}).error().code == "demo_and_store");
  CHECK(shell::read_start_words({"--store"}).error().code == "value_missing");
}
