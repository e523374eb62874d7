#include "decimal.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

using namespace shimwright::sheet;

TEST_CASE("A plain decimal is read in millionths, with point or comma") {
  CHECK(millionths_from("0.003") == 3'000);
  CHECK(millionths_from("1,645") == 1'645'000);
  CHECK(millionths_from("12") == 12'000'000);
  CHECK(millionths_from("-0.35") == -350'000);
  CHECK(millionths_from("0.000001") == 1);
  CHECK(millionths_from("9999.999999") == millionths_out_of_range - 1);
}

TEST_CASE("Nothing else is a plain decimal") {
  for (const char* text : {"",    "-",   ".",     ".5",    "5.",
                           "+1",  "1e3", "1.2.3", "1.2,3", " 1",
                           "1 ",  "0x1", "10000", "00001", "0.0000001",
                           "--1", "1-",  "nan",   "inf",   "1.000000000000000000000000000001"}) {
    INFO(text);
    CHECK_FALSE(millionths_from(text));
  }
}

TEST_CASE("A decimal is written as shortly as it can be") {
  CHECK(decimal_text(3'000) == "0.003");
  CHECK(decimal_text(1'000'000) == "1");
  CHECK(decimal_text(-350'000) == "-0.35");
  CHECK(decimal_text(0) == "0");
  CHECK(as_number(1'645'000) == 1.645);
}

TEST_CASE("What is written is read back") {
  CHECK(rc::check("millionths", [] {
    const auto millionths = *rc::gen::inRange<std::int64_t>(-millionths_out_of_range + 1, millionths_out_of_range);
    RC_ASSERT(millionths_from(decimal_text(millionths)) == millionths);
  }));
}
