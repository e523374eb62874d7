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
  const auto count = got(connection.value("SELECT count(*) FROM search_gram"));
  went(add_search_term(connection, job.id(), term));
  CHECK(got(connection.value("SELECT count(*) FROM search_gram")) == count);
  const auto id = got(connection.value("SELECT id FROM search_term WHERE place = 'batch'"));
  for (const char* part : {"B5", "77", "B55", "577", "B5577"}) {
    INFO(part);
    CHECK(got(terms_that_may_hold(connection, search_key(part))) ==
          std::vector<std::int64_t>{std::get<std::int64_t>(id)});
  }
  CHECK(got(terms_that_may_hold(connection, search_key("B5578"))).empty());
  CHECK(got(terms_that_may_hold(connection, search_key("7B"))).empty());
}

TEST_CASE("terms of a personal text go with it") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open("HL-MK 412");
  Connection& connection = bench.store().connection();
  went(remove_search_terms_of(connection, job.state().opened->plate->id));
  CHECK(got(terms_that_may_hold(connection, search_key("MK412"))).empty());
  CHECK_FALSE(got(terms_that_may_hold(connection, search_key("TESTVN"))).empty());
  CHECK(got(connection.value("SELECT count(*) FROM search_gram WHERE term NOT IN (SELECT id FROM search_term)")) ==
        number_value(0));
}

}  // namespace shimwright::store
