#include "judged_words.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("chances are never nought or a hundred, and lengths have a true minus") {
  CHECK(bench::chance_words(0.3333) == "33 in 100");
  CHECK(bench::chance_words(0.9999) == "better than 99 in 100");
  CHECK(bench::chance_words(0.0) == "less than 1 in 100");
  CHECK(bench::length_words(2.1) == "2.10");
  CHECK(bench::length_words(2.125) == "2.125");
  CHECK(bench::length_words(-0.12) == QString::fromUtf8("\u22120.12"));
}

TEST_CASE("each verdict has a word and a mark of its own shape") {
  CHECK(bench::verdict_words(metrology::Verdict::too_large) == "too large");
  CHECK(bench::mark_of(metrology::Verdict::too_large) == widgets::Mark::too_large);
  CHECK(bench::mark_of(metrology::Verdict::mixed) == widgets::Mark::on_limit);
  CHECK(bench::fit_words(shim::Fit::snug) == "snug");
  CHECK(bench::bearing_words(sheet::Side::upper) == "small bearing");
  CHECK(bench::disc_words(sheet::Side::lower) == "lower disc");
}
