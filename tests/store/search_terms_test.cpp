#include "search_terms.h"

#include "sample_entries.h"
#include "search_text.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

using Terms = std::vector<SearchTerm>;

Terms terms_of(const job::EntryBody& body, const sheet::JobSheet* sheet = nullptr, const PrivateTexts& texts = {}) {
  return search_terms_of({1, {}, mk, body}, sheet, texts);
}

}  // namespace

TEST_CASE("an opened job is found by what names it") {
  const job::Opened opened = job::test::sample_opened();
  const PrivateTexts texts = {{opened.plate->id, "HL-MK 412"}};
  CHECK(terms_of(opened, nullptr, texts) == Terms{{FoundIn::vehicle, U"TESTVN009TA030417", std::nullopt},
                                                  {FoundIn::number, U"20260147", std::nullopt},
                                                  {FoundIn::plate, U"HLMK412", opened.plate->id},
                                                  {FoundIn::gearbox_serial, U"D720931", std::nullopt}});
}

TEST_CASE("a text without end is found by its beginning") {
  job::Opened opened = job::test::sample_opened();
  opened.number = std::string(100'000, '7');
  const Terms terms = terms_of(opened);
  REQUIRE(terms.size() > 1);
  CHECK(terms[1].key == std::u32string(200, U'7'));
}

TEST_CASE("only texts that are serials of packs are found") {
  const auto sheet = got(sheet::read_job_sheet(shipped("sheets/dry-pack-renewal.json")));
  CHECK(terms_of(job::Written{{"new-pack-serial", 1}, "P7-558", {}}, &sheet) ==
        Terms{{FoundIn::pack_serial, U"P7558", std::nullopt}});
  CHECK(terms_of(job::Written{{"old-pack-serial", 1}, "P7-1", {}}, &sheet).size() == 1);
  CHECK(terms_of(job::Written{{"complaint-when", 1}, "hot", {}}, &sheet).empty());
  CHECK(terms_of(job::Written{{"new-pack-serial", 1}, "P7-558", {}}).empty());
}

TEST_CASE("batches are found, blank ones are nothing") {
  CHECK(terms_of(job::PartsFitted{{"p", 1}, {{"a", "n", 1, "B-77"}, {"b", "n", 1, " "}}}) ==
        Terms{{FoundIn::batch, U"B77", std::nullopt}});
  CHECK(terms_of(job::Noted{{}, "a"}).empty());
}

TEST_CASE("the texts of an entry are its batches and what was written at any step") {
  CHECK(terms_of_texts(job::Written{{"complaint-when", 1}, "P7-558", {}}) ==
        Terms{{FoundIn::pack_serial, U"P7558", std::nullopt}});
  CHECK(terms_of_texts(job::PartsFitted{{"p", 1}, {{"a", "n", 1, "B-77"}}}) ==
        Terms{{FoundIn::batch, U"B77", std::nullopt}});
  CHECK(terms_of_texts(job::Noted{{}, "a"}).empty());
}

}  // namespace shimwright::store
