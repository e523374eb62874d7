#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sealed_sample.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::vector<record::Page> written(const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { record::write_addenda(writer, record); });
}

}  // namespace

TEST_CASE("an addendum says who, when, why, what, and its seal") {
  const record::Record record = sealed_record();
  const auto pages = written(record);
  CHECK(has(pages, "Addenda, after the sealed record"));
  CHECK(has(pages, "1. RT of the shop, RT, 24 Nov 2026 16:06 +00:00."));
  CHECK(has(pages, "Reason: found later"));
  CHECK(has(pages, "0.1 l of oil topped up"));
  CHECK(has(pages, "seal " + record.addenda.front().groups));
  CHECK(broken_laws(pages).empty());
}

TEST_CASE("without addenda nothing is written") {
  record::Record record = sealed_record();
  record.addenda.clear();
  CHECK_FALSE(has(written(record), "Addenda"));
}

TEST_CASE("addenda follow all that was sealed, however many and long they are") {
  record::Record record = sealed_record();
  const record::AddendumLine one = record.addenda.front();
  for (int count = 0; count < 40; ++count) {
    record.addenda.push_back(one);
    record.addenda.back().text = std::string(800, 'w') + " " + std::to_string(count);
  }
  const auto pages = all_pages(record);
  CHECK(broken_laws(pages).empty());
  const std::string text = text_of(pages);
  CHECK(text.rfind("Customer") < text.find("Addenda, after the sealed record"));
  CHECK(text.find("41. ") != std::string::npos);
  CHECK(times(pages, one.groups) == 41);
  CHECK(has(pages, "41 addenda stand at the end."));
}
