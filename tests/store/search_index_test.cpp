#include "search_index.h"

#include "search_text.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("a term is added once, and found by its parts") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open("HL-MK 412", "Kovac");
  Connection& connection = bench.store().connection();
  const SearchTerm term{FoundIn::batch, search_key("B-5577"), std::nullopt};
  went(add_search_term(connection, job.id(), term));
  const auto count = got(connection.value("SELECT count(*) FROM search_suffix"));
  went(add_search_term(connection, job.id(), term));
  CHECK(got(connection.value("SELECT count(*) FROM search_suffix")) == count);
  for (const char* part : {"B5", "77", "B55", "577", "B5577"}) {
    INFO(part);
    const auto holding = got(terms_that_hold(connection, {search_key(part)}, 100));
    REQUIRE(holding.size() == 1);
    CHECK(holding.front().place == "batch");
    CHECK(holding.front().job == job.id());
  }
  CHECK(got(terms_that_hold(connection, {search_key("B5578")}, 100)).empty());
  CHECK(got(terms_that_hold(connection, {search_key("7B")}, 100)).empty());
  CHECK(got(terms_that_hold(connection, {search_key("7B"), search_key("B5"), search_key("55")}, 100)).size() == 1);
  CHECK(got(terms_that_hold(connection, {}, 100)).empty());
}

TEST_CASE("however many terms hold it, so many are read and no more") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  Connection& connection = bench.store().connection();
  for (std::int64_t at = 0; at < 120; ++at) {
    went(add_search_term(connection, job.id(), {FoundIn::batch, search_key("QQ" + std::to_string(at)), std::nullopt}));
  }
  CHECK(got(terms_that_hold(connection, {search_key("QQ")}, 100)).size() == 100);
}

TEST_CASE("terms of a personal text go with it") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open("HL-MK 412");
  Connection& connection = bench.store().connection();
  went(remove_search_terms_of(connection, job.state().opened->plate->id));
  CHECK(got(terms_that_hold(connection, {search_key("MK412")}, 100)).empty());
  CHECK_FALSE(got(terms_that_hold(connection, {search_key("TESTVN")}, 100)).empty());
  CHECK(got(connection.value("SELECT count(*) FROM search_suffix WHERE term NOT IN (SELECT id FROM search_term)")) ==
        number_value(0));
}

}  // namespace shimwright::store
