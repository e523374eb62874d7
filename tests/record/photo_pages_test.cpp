#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

record::Record with_photos(std::size_t count, std::size_t there, bool wanted = true) {
  record::Record record = record_of(long_job());
  record.with_photos = wanted;
  REQUIRE_FALSE(record.photos.empty());
  const record::Photo first = record.photos.front();
  record.photos.clear();
  for (std::size_t at = 0; at < count; ++at) {
    record.photos.push_back(first);
    record.photos.back().sha256 = std::string(63, 'a') + static_cast<char>('a' + at);
    record.photos.back().caption = "view " + std::to_string(at);
    if (at < there) {
      record.pictures[record.photos.back().sha256] = "a picture";
    }
  }
  return record;
}

std::size_t pictures_on(const std::vector<record::Page>& pages) {
  std::size_t found = 0;
  for (const record::Page& page : pages) {
    for (const record::Element& each : page.elements) {
      found += std::holds_alternative<record::Picture>(each) ? 1U : 0U;
    }
  }
  return found;
}

}  // namespace

TEST_CASE("photos come on pages of their own behind the record, none cut, each with its words") {
  const record::Record bare = with_photos(5, 0, false);
  const record::Record shown = with_photos(5, 5);
  const auto without = all_pages(bare);
  const auto pages = all_pages(shown);
  CHECK(pictures_on(without) == 0);
  CHECK(pictures_on(pages) == 5);
  CHECK(pages.size() >= without.size() + 3);
  CHECK(broken_laws(pages).empty());
  for (const char* caption : {"“view 0”", "“view 4”"}) {
    CHECK(has(pages, caption));
  }
}

TEST_CASE("a photo whose file is not there is told in its place") {
  const auto pages = all_pages(with_photos(2, 1));
  CHECK(pictures_on(pages) == 1);
  CHECK(has(pages, "missing or was changed"));
  CHECK(broken_laws(pages).empty());
}

TEST_CASE("where the files of all photos are gone each is told, and none is asked for in vain") {
  const auto pages = all_pages(with_photos(2, 0));
  CHECK(pictures_on(pages) == 0);
  CHECK(has(pages, "missing or was changed"));
  CHECK(has(pages, "“view 1”"));
  record::Record none = with_photos(1, 0);
  none.photos.clear();
  CHECK_FALSE(has(all_pages(none), "missing or was changed"));
}
