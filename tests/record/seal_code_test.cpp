#include "shimwright/record/seal_code.h"

#include <set>

#include <catch2/catch.hpp>

#include "sample_job.h"
#include "seal_bench.h"
#include "shimwright/job/evolve.h"
#include "shimwright/record/comparison.h"
#include "shimwright/record/hash.h"
#include "shimwright/record/vehicle_life.h"

using namespace shimwright;
using namespace shimwright::record;
using namespace shimwright::record_test;

namespace {

VitalValues sample() {
  return {"TESTVN009TA030417", "2026/0147 ä", {"1.65", 540}, {"1/80", std::nullopt}, sha256_hex("seal")};
}

TEST_CASE("the worst float reads as the record prints it") {
  CHECK(worst_float_text({"1.65", 540}) == "0.54 mm");
  CHECK(worst_float_text({"1.65", 1005}) == "1.005 mm");
  CHECK(worst_float_text({"1.65", std::nullopt}).empty());
}

}  // namespace

TEST_CASE("a code gives back its values and who signed them") {
  const SecretKey key = new_key(counted_chance());
  const std::string payload = seal_code(sample(), key);
  const auto read = read_seal_code(payload);
  REQUIRE(read);
  CHECK(read->values == sample());
  CHECK(read->public_key == key.public_key());
  CHECK(payload.find_first_not_of("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:") == std::string::npos);
  CHECK(payload.size() < 419);  // version 12 of a QR code at medium error correction
}

TEST_CASE("any character changed, left out or added is found") {
  const std::string payload = seal_code(sample(), new_key(counted_chance()));
  for (std::size_t at = 0; at < payload.size(); ++at) {
    for (const char each : std::string("0A:")) {
      std::string changed = payload;
      changed[at] = each;
      CHECK(static_cast<bool>(read_seal_code(changed)) == (changed == payload));
    }
    CHECK_FALSE(read_seal_code(payload.substr(0, at)));
  }
  CHECK_FALSE(read_seal_code(payload + "00"));
  CHECK_FALSE(read_seal_code(""));
  const auto other = read_seal_code("HTTPS://");
  REQUIRE_FALSE(other);
  CHECK(other.error().code == "not_seal_code");
}

TEST_CASE("the vital values are those of the last assembly, the worst float that farthest from the middle") {
  const Record record = record_of(finished_job());
  const VitalValues values = vital_values(record, sha256_hex("seal"));
  CHECK(values.vehicle == record.vehicle.key);
  CHECK(values.number == record.job.number);
  CHECK_FALSE(values.lower.shim.empty());
  CHECK_FALSE(values.upper.shim.empty());
  for (const FloatSeries& series : record.floats) {
    if (!series.latest || series.as_found || !series.judged) {
      continue;
    }
    const auto& worst = (series.side == Side::lower ? values.lower : values.upper).worst_um;
    REQUIRE(worst);
    const auto far = [&](std::int64_t um) {
      return std::abs(2 * um - series.limits.least.count() - series.limits.most.count());
    };
    std::set<std::int64_t> distances;
    for (const std::int64_t each : series.judged->spot_floats) {
      distances.insert(far(each));
    }
    CHECK(far(*worst) == *distances.rbegin());
  }
  CHECK(vital_values(record_of(open_job()), "").lower == VitalSide{});
}

TEST_CASE("a shim that came off again is not in the code, nor told of the vehicle, nor compared") {
  Bench bench;
  bench.add(opened());
  bench.trial("large-gauge-fit", Side::lower, "1.95", job::Fit::snug);
  bench.choose_shim("large-gauge-fit", Side::lower, "1.95", 1950);
  CHECK(vital_values(record_of(bench), "").lower.shim == "1.95");
  const auto chosen = record_of(bench);
  bench.begin_assembly({Side::lower}, "bearing not home");
  CHECK(vital_values(record_of(bench), "").lower.shim.empty());
  const JobInLife life = job_in_life(job::fold(shipped_sheets(), bench.entries()));
  CHECK(life.shims.empty());
  for (const ComparedRow& row : compare(chosen, record_of(bench))) {
    if (row.name.in_english().find("Shim fitted") == 0) {
      CHECK(row.first);
      CHECK_FALSE(row.second);
    }
  }
}
