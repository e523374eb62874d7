#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::vector<record::Page> written(const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { record::write_signatures(writer, record); });
}

}  // namespace

TEST_CASE("three lines to sign, who signed already and when") {
  const auto pages = written(record_of(finished_job()));
  CHECK(has(pages, "Technician MK, 24 Nov 2026 16:05 +00:00"));
  CHECK(has(pages, "Checked by RT, 24 Nov 2026 16:06 +00:00"));
  CHECK(has(pages, "Customer"));
  CHECK(elements_of<record::Line>(pages).size() == 3);
  CHECK(broken_laws(pages).empty());
}

TEST_CASE("a draft says that it is one and keeps the place of the code free") {
  const auto pages = written(record_of(open_job()));
  CHECK(has(pages, "not sealed: draft"));
  CHECK(has(pages, "Not sealed: a draft that may still change."));
  CHECK(elements_of<record::KeptPlace>(pages).size() == 1);
  CHECK_FALSE(has(pages, "MK"));
}

TEST_CASE("demonstration values are warned of") {
  CHECK(has(written(record_of(open_job())), "never work to them on a vehicle"));
  CHECK_FALSE(has(written(record::Record()), "demonstration"));
}

TEST_CASE("signatures stand at the bottom of the page") {
  const auto pages = written(record_of(open_job()));
  REQUIRE(pages.size() == 1);
  const record::Box& row = pages.front().rows.back();
  CHECK(row.y_mm + row.height_mm == Approx(pages.front().height_mm - pages.front().margin_mm));
}
