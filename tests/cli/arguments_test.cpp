#include "arguments.h"

#include <catch2/catch.hpp>

using shimwright::cli::ArgumentForm;
using shimwright::cli::read_arguments;

namespace {

const ArgumentForm form{1, 2, {"store", "paper"}, {"store"}, {"summary"}};

std::string code_of(const std::vector<std::string>& words) {
  const auto read = read_arguments(words, form);
  return read ? "taken" : read.error().code;
}

}  // namespace

TEST_CASE("options, flags and words are told apart in any order") {
  const auto read = read_arguments({"--store", "a file", "job", "--summary", "-1"}, form);
  REQUIRE(read);
  CHECK(read->positional == std::vector<std::string>{"job", "-1"});
  CHECK(read->options.at("store") == "a file");
  CHECK(read->flags.count("summary") == 1);
}

TEST_CASE("after two dashes every word stands alone") {
  const auto read = read_arguments({"--store", "f", "--", "--summary"}, form);
  REQUIRE(read);
  CHECK(read->positional == std::vector<std::string>{"--summary"});
}

TEST_CASE("what the command does not take is refused") {
  CHECK(code_of({"job", "--store", "f", "--loud"}) == "unknown_option");
  CHECK(code_of({"job", "--store", "f", "--store", "g"}) == "repeated_option");
  CHECK(code_of({"job", "--store", "f", "--summary", "--summary"}) == "repeated_option");
  CHECK(code_of({"job", "--store"}) == "value_missing");
  CHECK(code_of({"job"}) == "option_missing");
  CHECK(code_of({"--store", "f"}) == "wrong_count");
  CHECK(code_of({"a", "b", "c", "--store", "f"}) == "wrong_count");
}
