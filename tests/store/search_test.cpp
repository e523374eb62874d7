#include <algorithm>
#include <functional>

#include <sqlite3.h>

#include "connection.h"
#include "search_text.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

std::vector<std::string> numbers(const FoundJobs& found) {
  std::vector<std::string> list;
  for (const Found& each : found.jobs) {
    list.push_back(each.job.number);
  }
  return list;
}

using Numbers = std::vector<std::string>;

int keep_statement(unsigned /*event*/, void* list, void* /*statement*/, void* text) {
  static_cast<std::vector<std::string>*>(list)->emplace_back(static_cast<const char*>(text));
  return 0;
}

/// What the database was asked meanwhile.
std::vector<std::string> statements_run(Connection& connection, const std::function<void()>& run) {
  std::vector<std::string> statements;
  sqlite3_trace_v2(connection.handle(), SQLITE_TRACE_STMT, keep_statement, &statements);
  run();
  sqlite3_trace_v2(connection.handle(), 0, nullptr, nullptr);
  return statements;
}

}  // namespace

TEST_CASE("a job is found by any part of what names it") {
  Workbench bench;
  TestJob first(bench, "10", "2026-0147", "TESTVN009TA030417");
  TestJob second(bench, "11", "2026-0152", "TESTVN117TB118822");
  first.open("HL-MK 412", "Miller/77");
  second.open("HL-RT 9", "Kovac");
  first.add(job::PartsFitted{{"pack-ring-new", 1}, {job::PartFitted{"pack-ring", "D7-R-118", 1, "B-5577"}}});
  first.add(job::Written{{"new-pack-serial", 1}, "P7-558213", {}});
  first.add(job::Written{{"complaint-when", 1}, "when hot in gear 3", {}});

  struct Case {
    const char* sought;
    Numbers expected;
    FoundIn place;
  };
  for (const Case& each : {Case{"030417", {"2026-0147"}, FoundIn::vehicle},
                           {"mk412", {"2026-0147"}, FoundIn::plate},
                           {"0152", {"2026-0152"}, FoundIn::number},
                           {"kovac", {"2026-0152"}, FoundIn::customer_reference},
                           {"r 77", {"2026-0147"}, FoundIn::customer_reference},
                           {"b5577", {"2026-0147"}, FoundIn::batch},
                           {"558213", {"2026-0147"}, FoundIn::pack_serial},
                           {"ac", {"2026-0152"}, FoundIn::customer_reference},
                           {"22", {"2026-0152"}, FoundIn::vehicle}}) {
    INFO(each.sought);
    const auto found = got(bench.store().search(each.sought));
    REQUIRE(numbers(found) == each.expected);
    CHECK(found.jobs.front().place == each.place);
    CHECK(found.jobs.front().exact);
    CHECK(found.jobs.front().term.find(in_utf8(search_key(each.sought))) != std::string::npos);
  }
  CHECK(numbers(got(bench.store().search("when hot"))).empty());
  CHECK(numbers(got(bench.store().search("testvn"))) == Numbers{"2026-0152", "2026-0147"});
}

TEST_CASE("one fault is forgiven from four characters on, and exact ones come first") {
  Workbench bench;
  TestJob first(bench, "10", "2026-0147", "TESTVN009TA030417");
  TestJob second(bench, "11", "2026-0152", "TESTVN009TA030477");
  first.open("A", "B");
  second.open("C", "D");
  const auto found = got(bench.store().search("TA030417"));
  REQUIRE(numbers(found) == Numbers{"2026-0147", "2026-0152"});
  CHECK(found.jobs[0].exact);
  CHECK_FALSE(found.jobs[1].exact);
  for (const char* sought : {"TESTVN009TA030147", "TESTVM009TA030417", "ETSTVN009TA030417", "TESTVN009TA030471",
                             "TESTVN090TA030417", "VN00T9A03", "N099", "3X417"}) {
    INFO(sought);
    CHECK_FALSE(numbers(got(bench.store().search(sought))).empty());
  }
  CHECK(numbers(got(bench.store().search("X00"))).empty());
  CHECK(numbers(got(bench.store().search("TESTXX009TA030417"))).empty());
  CHECK(numbers(got(bench.store().search("testvn", 1))) == Numbers{"2026-0152"});
}

TEST_CASE("whatever is cut off is told, however the jobs share their terms") {
  Workbench bench;
  for (int each = 0; each < 5; ++each) {
    TestJob job(bench, std::to_string(20 + each), "2026-01" + std::to_string(50 + each));
    job.open();
    std::vector<job::PartFitted> parts;
    for (int part = 0; part < 30; ++part) {
      parts.push_back({"pack-ring", "n", 1, "QQ" + std::to_string(each * 30 + part)});
    }
    job.add(job::PartsFitted{{"pack-ring-new", 1}, parts});
    if (each == 2) {
      CHECK_FALSE(got(bench.store().search("qq")).more);
    }
  }
  CHECK(got(bench.store().search("202601", 4)).more);
  CHECK(got(bench.store().search("202601", 4)).size() == 4);
  CHECK_FALSE(got(bench.store().search("202601", 5)).more);
  const auto all = got(bench.store().search("qq"));
  CHECK(all.more);  // 150 terms
}

TEST_CASE("a slip is looked for where exact ones leave room") {
  Workbench bench;
  TestJob first(bench, "10", "2026-0147");
  TestJob second(bench, "11", "2026-0148");
  first.open("A", "B");
  second.open("C", "D");
  CHECK(numbers(got(bench.store().search("20260147"))) == Numbers{"2026-0147", "2026-0148"});
  CHECK(numbers(got(bench.store().search("20260147", 1))) == Numbers{"2026-0147"});
}

TEST_CASE("one character is too little to search") {
  Workbench bench;
  for (const char* sought : {"", "7", " -7- "}) {
    CHECK(code_of(bench.store().search(sought)) == "search_too_short");
  }
}

TEST_CASE("a text pasted by mistake is looked up as any other, and only what is typed is forgiven a fault") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open(std::string(forgiven_up_to, '7'), std::string(forgiven_up_to + 1, '8'));
  Store& store = bench.store();
  const auto sought = [](std::size_t count, char digit) { return std::string(count - 1, digit) + "0"; };
  CHECK(numbers(got(store.search(sought(forgiven_up_to, '7')))) == Numbers{"2026-0147"});
  CHECK(got(store.search(sought(forgiven_up_to + 1, '8'))).empty());
  const auto statements =
      statements_run(store.connection(), [&] { CHECK(got(store.search(std::string(100'000, '7'))).empty()); });
  const auto lookups = std::count_if(statements.begin(), statements.end(),
                                     [](const std::string& sql) { return sql.find("AS sought") != std::string::npos; });
  CHECK(lookups == 1);
}

TEST_CASE("no search reads a whole table") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  Store& store = bench.store();
  const auto statements = statements_run(store.connection(), [&] {
    for (const char* sought : {"mk", "mk4", "mk412", "TESTVN009TA030417"}) {
      CHECK_FALSE(got(store.search(sought)).empty());
    }
    CHECK(got(store.jobs_of_vehicle("TESTVN009TA030417")).size() == 1);
    CHECK(got(store.jobs_numbered("2026-0147")).size() == 1);
    CHECK(got(store.open_jobs()).size() == 1);
    CHECK(got(store.load(job.id())).entries.size() == 1);
    CHECK(got(store.pairs("D7", job::Side::lower, "")).empty());
    CHECK(got(store.previous_pack("TESTVN009TA030417", "")));
  });
  CHECK(statements.size() > 10);
  for (const std::string& sql : statements) {
    INFO(sql);
    const Row values(static_cast<std::size_t>(std::count(sql.begin(), sql.end(), '?')), text_value("x"));
    for (const Row& step : got(store.connection().rows("EXPLAIN QUERY PLAN " + sql, values))) {
      const std::string plan = text_in(step, 3);
      // What is sought is handed over as a list of its own, and read through; so is the little that was found.
      const bool of_the_search = plan.find("SCAN sought VIRTUAL TABLE") == 0 ||
                                 plan.find("SCAN wanted VIRTUAL TABLE") == 0 || plan.find("SCAN hit") == 0 ||
                                 plan.find("SCAN latest") == 0;
      CHECK((of_the_search || plan.find("SCAN") == std::string::npos));
    }
  }
}

}  // namespace shimwright::store
