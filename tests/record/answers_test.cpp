#include <catch2/catch.hpp>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::AnswerKind;

namespace {

const record::Answer* answer_at(const record::Record& record, const std::string& step) {
  for (const auto& answer : record.answers) {
    if (answer.place.step == step) {
      return &answer;
    }
  }
  return nullptr;
}

}  // namespace

TEST_CASE("answers say what was answered, in the words of the sheet") {
  const auto record = record_of(finished_job());
  const auto* consent = answer_at(record, "customer-consent");
  REQUIRE(consent != nullptr);
  CHECK(consent->kind == AnswerKind::chosen);
  CHECK(consent->text == "yes, by telephone");
  CHECK(consent->hold_point);
  const auto* wear = answer_at(record, "bearing-wear");
  REQUIRE(wear != nullptr);
  CHECK(wear->kind == AnswerKind::not_in_order);
  CHECK_FALSE(wear->accepted);
  const auto* found = answer_at(record, "upper-float-as-found");
  REQUIRE(found != nullptr);
  CHECK(found->kind == AnswerKind::not_required);
  CHECK(answer_at(record, "complaint-when")->kind == AnswerKind::written);
}

TEST_CASE("a deviation tells what had been found, or that the step was left out") {
  const auto record = record_of(long_job());
  REQUIRE(record.deviations.size() == 2);
  CHECK(record.deviations[0].stamp.initials == "RT");
  CHECK_FALSE(record.deviations[0].left_out);
  REQUIRE(record.deviations[0].found.size() == 1);
  CHECK(record.deviations[0].found.front().in_english() ==
        "Not in order: Support bearing of the outer shaft, wear on its limit");
  CHECK(record.deviations[1].left_out);
  CHECK(record.deviations[1].found.empty());
}

TEST_CASE("a confirmation stands with the question it answers") {
  Bench bench;
  bench.add(opened());
  job::Read read;
  read.at = bench.here("odometer");
  read.readings = {reading("distance", "9", Unit::kilometre)};
  read.questions = {{"odometer_small", {"Is it really {0}?", {"9 km"}}}};
  bench.add(read);
  bench.add(job::Confirmed{bench.here("odometer"), "odometer_small", "new engine control unit"});
  bench.add(job::Confirmed{bench.here("odometer"), "never_asked", "so"});
  const auto record = record_of(bench);
  REQUIRE(record.confirmations.size() == 2);
  REQUIRE(record.confirmations[0].asked);
  CHECK(record.confirmations[0].asked->in_english() == "Is it really 9 km?");
  CHECK(record.confirmations[0].remark == "new engine control unit");
  CHECK_FALSE(record.confirmations[1].asked);
}

TEST_CASE("photos and signatures are on record") {
  const auto record = record_of(long_job());
  REQUIRE(record.photos.size() == 1);
  CHECK(record.photos.front().caption == "faces");
  REQUIRE(record.signatures.size() == 2);
  CHECK(record.signatures[0].signer == sheet::Signer::technician);
  CHECK(record.signatures[1].stamp.initials == "RT");
}
