#include <catch2/catch.hpp>

#include "record_json_parts.h"
#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;
namespace parts_json = shimwright::record::parts_json;

TEST_CASE("a shim's trials, choice and measure") {
  const auto json = parts_json::of(record_of(finished_job()).shims.front());
  CHECK(json["side"] == "lower");
  CHECK(json["method"] == "gauge_fit");
  CHECK(json["trials"][1]["fit"] == "loose");
  CHECK(json["choices"][0]["thickness_um"] == 1600);
  CHECK(json["choices"][0]["u_nm"] == 3000);
  CHECK(json["measured"][0]["number"]["text"] == "1.601 mm");
}

TEST_CASE("a float series with its runs and its judgement") {
  const auto json = parts_json::of(record_of(finished_job()).floats[1]);
  CHECK(json["spots"][1]["runs"][1]["lifted"]["text"] == "0.91 mm");
  CHECK(json["spots"][1]["runs"][1]["float_um"] == 910);
  CHECK(json["judged"]["spread_um"] == 55);
  CHECK(json["judged"]["spot_verdicts"][0] == "too_large");
  CHECK(json["limits"]["guard_factor_thousandths"] == 1645);
  CHECK_FALSE(json.contains("reason"));
  CHECK(parts_json::of(record_of(finished_job()).floats[2])["reason"] == "seated_again");
}

TEST_CASE("old shims and depths") {
  const auto record = record_of(long_job());
  CHECK(parts_json::of(record.old_shims.front())["reading"]["number"]["text"] == "1.702 mm");
  bool depths = false;
  for (const auto& use : record.shims) {
    depths = depths || !parts_json::of(use)["depths"].empty();
  }
  CHECK(depths);
}
