#include "shimwright/record/record_json.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "sample_job.h"
#include "shimwright/job/evolve.h"
#include "shimwright/json/canonical.h"

using namespace shimwright;
using namespace shimwright::record_test;

TEST_CASE("the record is canonical JSON with format and version") {
  const std::string bytes = record::record_json(record_of(finished_job()));
  const nlohmann::json read = nlohmann::json::parse(bytes);
  CHECK(read["format"] == "shimwright.record");
  CHECK(read["version"] == 1);
  CHECK(read["min_reader"] == 1);
  CHECK_FALSE(read.contains("seal"));
  CHECK(json::canonical(read).value_or("") == bytes);
}

TEST_CASE("what is sealed is the member record, byte for byte") {
  const auto record = record_of(long_job());
  const nlohmann::json read = nlohmann::json::parse(record::record_json(record));
  CHECK(json::canonical(read["record"]).value_or("") == record::sealed_part(record));
}

TEST_CASE("erasing a personal text does not change what is sealed") {
  const auto entries = finished_job().entries();
  auto names = sample_names();
  const auto before = record::make_record(job::fold(shipped_sheets(), entries), names);
  names.texts["text-plate"] = std::nullopt;
  const auto after = record::make_record(job::fold(shipped_sheets(), entries), names);
  CHECK(record::sealed_part(before) == record::sealed_part(after));
  CHECK(record::sealed_part(before).find("DEMO 417") == std::string::npos);
  CHECK(record::record_json(before).find("DEMO 417") != std::string::npos);
  CHECK(record::record_json(after).find("DEMO 417") == std::string::npos);
}

TEST_CASE("an empty record is JSON too") {
  CHECK_FALSE(record::record_json(record::Record()).empty());
}
