#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sealed_sample.h"
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
  CHECK(has(pages, "Technician M. Kell, MK, 24 Nov 2026 16:05 +00:00"));
  CHECK(has(pages, "Checked by R. Thorne, RT, 24 Nov 2026 16:06 +00:00"));
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

TEST_CASE("a seal that does not hold is said on every page, and its code is not printed") {
  record::Record record = sealed_record();
  record.seal->check = {record::SealStanding::changed, "entry 7", {"This was changed.", {}}};
  const auto pages = written(record);
  CHECK(has(pages, "does not hold: changed after it was signed: entry 7"));
  CHECK_FALSE(has(pages, record.seal->groups));
  CHECK_FALSE(has(pages, "Sealed 24 Nov"));
  CHECK(elements_of<record::Code>(pages).empty());
  const auto all = all_pages(record);
  for (const auto& page : all) {
    CHECK(has({page}, "the seal does not hold"));
  }
  CHECK(broken_laws(all).empty());
}

TEST_CASE("a key that is not known here stands beside the seal, which is printed as it was signed") {
  record::Record record = sealed_record();
  record.seal->check = {record::SealStanding::key_unknown, "M. Kell", {"This is whole.", {}}};
  const auto pages = written(record);
  CHECK(has(pages, record.seal->groups));
  CHECK(has(pages, "The key of M. Kell is not known here"));
  CHECK(elements_of<record::Code>(pages).size() == 1);
  const auto all = all_pages(record);
  for (const auto& page : all) {
    CHECK(has({page}, "sealed with a key not known here"));
  }
  CHECK(broken_laws(all).empty());
}

TEST_CASE("a sealed record says who signed, shows seal and code, and is no draft") {
  const record::Record record = sealed_record();
  const auto pages = written(record);
  CHECK(has(pages, "Technician M. Kell, MK, 24 Nov 2026 16:05 +00:00"));
  CHECK(has(pages, "Checked by R. Thorne, RT, 24 Nov 2026 16:06 +00:00"));
  CHECK(has(pages, "Customer"));
  CHECK(has(pages, "Sealed 24 Nov 2026 16:06 +00:00 as " + record.seal->groups));
  CHECK(has(pages, "One addendum stands at the end."));
  CHECK_FALSE(has(pages, "draft"));
  CHECK_FALSE(has(pages, "eprint"));
  CHECK(elements_of<record::KeptPlace>(pages).empty());
  const auto codes = elements_of<record::Code>(pages);
  REQUIRE(codes.size() == 1);
  CHECK(codes.front().side > 0);
  CHECK(codes.front().box.width_mm >= 25);
  CHECK(codes.front().box.height_mm == codes.front().box.width_mm);
  CHECK(broken_laws(pages).empty());
}

TEST_CASE("a reprint says so") {
  CHECK(has(written(sealed_record(true)), "Reprint: printed again after it was sealed."));
}

TEST_CASE("nothing stands in the white that a camera needs around the code") {
  record::Record record = sealed_record(true);
  for (auto& [id, person] : record.job.people) {
    person.name = "Maximiliana Wolkenstein-Rautenberg of the workshop at the end of the lane, second floor";
  }
  const auto pages = all_pages(record);
  CHECK(broken_laws(pages).empty());
  for (const record::Page& page : pages) {
    for (const record::Code& code : elements_of<record::Code>({page})) {
      const double white = 4 * code.box.width_mm / code.side;
      for (const record::TextRun& run : elements_of<record::TextRun>({page})) {
        const double size = record::style_of(run.role).size_mm;
        const bool beside = run.x_mm + run.width_mm < code.box.x_mm - white;
        const bool above = run.baseline_mm + size * 0.25 < code.box.y_mm - white + 0.2;
        const bool below = run.baseline_mm - size * 0.75 > code.box.y_mm + code.box.height_mm + white - 0.2;
        INFO(run.text);
        CHECK((beside || above || below || run.turned_deg != 0));
      }
    }
  }
}
