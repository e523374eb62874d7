#include "record_json_parts.h"

#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;
namespace parts_json = shimwright::record::parts_json;

TEST_CASE("a number has its digits and its whole base units") {
  const auto json = parts_json::of(typed("-0.10"));
  CHECK(json["text"] == "-0.10 mm");
  CHECK(json["base"] == -100);
  CHECK(json["decimals"] == 2);
  CHECK(json["dimension"] == "length");
}

TEST_CASE("what is absent is left out") {
  const auto record = record_of(finished_job());
  const auto json = parts_json::of(record.readings.front());
  CHECK_FALSE(json.contains("limit"));
  CHECK_FALSE(json.contains("attempt"));
  CHECK(parts_json::of(record.peaks.front())["attempt"] == 1);
}

TEST_CASE("a part with one member is an object, not a list") {
  const auto json = parts_json::of(record_of(finished_job()).signatures.front());
  CHECK(json.is_object());
  CHECK(json["signer"] == "technician");
  CHECK(parts_json::of(record::NoteLine{{}, {}, "words"})["text"] == "words");
}

TEST_CASE("every number of the bench stays a whole number") {
  const auto json = parts_json::list_of(record_of(long_job()).readings);
  CHECK(json.dump().find('.') != std::string::npos);  // in texts
  for (const auto& line : json) {
    CHECK(line["number"]["base"].is_number_integer());
  }
}

TEST_CASE("reasons, kinds and questions are named") {
  const auto record = record_of(long_job());
  CHECK(parts_json::of(record.not_measured.front())["why"].is_string());
  CHECK(parts_json::of(record.stops[0])["kind"] == "parked");
  CHECK(parts_json::of(record.stops[0])["due"] == "2026-11-30");
  CHECK(parts_json::of(record.confirmations.front())["question"] == "unit_in_doubt");
  CHECK(parts_json::of(record.deviations.front())["left_out"] == false);
  CHECK(parts_json::of(record.answers.front())["kind"] == "in_order");
}
