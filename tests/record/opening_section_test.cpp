#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::vector<record::Page> written(const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { record::write_result(writer, record); });
}

}  // namespace

TEST_CASE("the result comes first, its verdict strong") {
  const auto runs = runs_of(written(record_of(finished_job())));
  REQUIRE(runs.size() > 2);
  CHECK(runs[0].text == "Result");
  CHECK(runs[1].text.rfind("Both discs free within limits", 0) == 0);
  CHECK(runs[1].role == record::FontRole::result_strong);
}

TEST_CASE("vehicle, customer and source of the limits are shown") {
  const auto pages = written(record_of(finished_job()));
  for (const char* text :
       {"TESTVN009TA030417", "DEMO 417, 121400 km", "unit D7, serial 7-004417", "23 Nov 2026 08:10 +00:00, MK",
        "C-0382", "“shudders pulling away, worse when hot”", "spec sheet D7, issue 2: demonstration values"}) {
    INFO(text);
    CHECK(has(pages, text));
  }
}

TEST_CASE("erased and missing texts say so") {
  auto record = record_of(finished_job());
  record.vehicle.plate->content.reset();
  record.vehicle.complaint.reset();
  record.vehicle.odometer.reset();
  const auto pages = written(record);
  CHECK(has(pages, "erased, odometer not read"));
  CHECK(has(pages, "not given"));
  CHECK_FALSE(has(pages, "DEMO 417"));
}

TEST_CASE("a chassis number is not called a VIN") {
  auto record = record_of(finished_job());
  record.vehicle.chassis_reason = "built before vehicle numbers had 17 characters";
  const auto pages = written(record);
  CHECK(has(pages, "Chassis no."));
  CHECK(has(pages, "built before vehicle numbers"));
}

TEST_CASE("a complaint of many words keeps within the page") {
  auto record = record_of(finished_job());
  record.vehicle.complaint->content->text.clear();
  for (int word = 0; word < 2500; ++word) {
    record.vehicle.complaint->content->text += "word" + std::to_string(word) + " ";
  }
  const auto pages = written(record);
  CHECK(broken_laws(pages).empty());
  CHECK(has(pages, "word2499"));
}
