#include "shimwright/quantity/error.h"

#include <catch2/catch.hpp>

using shimwright::Error;
using shimwright::Message;

TEST_CASE("a message fills its arguments in") {
  CHECK(Message{"{0} is over {1}", {"13.5", "12"}}.in_english() == "13.5 is over 12");
  CHECK(Message{"twice {0} and {0}", {"a"}}.in_english() == "twice a and a");
}

TEST_CASE("a message keeps an index that has no argument") {
  CHECK(Message{"{1} of {0}", {"a"}}.in_english() == "{1} of a");
  CHECK(Message{"{x} {", {"a"}}.in_english() == "{x} {");
}

TEST_CASE("an error is one line that begins with its place") {
  const Error error{"code", "/a/b", Message{"say\nmore", {}}};
  CHECK(error.in_english() == "/a/b: say more");
  CHECK(Error{"code", "", Message{"say", {}}}.in_english() == "say");
}
