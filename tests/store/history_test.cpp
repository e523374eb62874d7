#include "exchange.h"

namespace shimwright::store {

using namespace test;

namespace {

std::vector<std::pair<std::int64_t, std::int64_t>> changes(const std::vector<job::Pair>& pairs) {
  std::vector<std::pair<std::int64_t, std::int64_t>> list;
  for (const job::Pair& pair : pairs) {
    list.emplace_back(pair.shim_change.count(), pair.float_change.count());
  }
  return list;
}

using Changes = std::vector<std::pair<std::int64_t, std::int64_t>>;

}  // namespace

TEST_CASE("shim and float changes between assemblies come from other jobs of the gearbox") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  assemble(job, 1, 1650, 790);
  assemble(job, 2, 1700, 740);
  assemble(job, 3, 1700, 735);
  assemble(job, 4, 1680, 760);
  CHECK(changes(got(bench.store().pairs("D7", job::Side::lower, ""))) == Changes{{50, -50}, {-20, 25}});
  CHECK(got(bench.store().pairs("D7", job::Side::lower, ""))[0].job == job.id());
  CHECK(got(bench.store().pairs("D7", job::Side::lower, job.id())).empty());
  CHECK(got(bench.store().pairs("D7", job::Side::upper, "")).empty());
  CHECK(got(bench.store().pairs("D6", job::Side::lower, "")).empty());
}

TEST_CASE("a job from elsewhere makes no pair here") {
  Workbench from;
  Workbench to;
  TestJob job(from, "10", "2026-0147");
  job.open();
  assemble(job, 1, 1650, 790);
  assemble(job, 2, 1700, 740);
  static_cast<void>(imported(to, exported(from, job.id())));
  CHECK_FALSE(got(from.store().pairs("D7", job::Side::lower, "")).empty());
  CHECK(got(to.store().pairs("D7", job::Side::lower, "")).empty());
}

TEST_CASE("what was withdrawn, and a float as found, make no pair") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  assemble(job, 1, 1650, 790);
  assemble(job, 2, 1700, 740);
  const std::int64_t wrong = job.last().seq;
  job::Advised found;
  found.at = {"lower-float-as-found", 2};
  found.conclusion = job::Conclusion::for_information;
  found.mean = 990;
  job.add(found);
  CHECK(changes(got(bench.store().pairs("D7", job::Side::lower, ""))) == Changes{{50, -50}});
  job.add(job::Withdrawn{wrong, "Read at the wrong spot"});
  CHECK(got(bench.store().pairs("D7", job::Side::lower, "")).empty());
}

TEST_CASE("an assembly that kept its shim has the one chosen before") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  assemble(job, 1, 1650, 790);
  job.add(job::AssemblyBegun{2, {}, "Ring not seated"});
  job::Advised advised;
  advised.at = {"lower-float", 2};
  advised.mean = 788;
  job.add(advised);
  assemble(job, 3, 1700, 741);
  CHECK(changes(got(bench.store().pairs("D7", job::Side::lower, ""))) == Changes{{50, -47}});
}

TEST_CASE("the previous pack is that of the last job on the vehicle before this one") {
  Workbench bench;
  TestJob first(bench, "10", "2026-0147");
  first.open();
  first.add(job::Written{{"new-pack-serial", 1}, "P7-558213", {}});
  assemble(first, 1, 1650, 790);
  assemble(first, 2, 1700, 740);
  const auto pack = got(bench.store().previous_pack("TESTVN009TA030417", "not stored yet"));
  REQUIRE(pack);
  CHECK(pack->job_number == "2026-0147");
  CHECK(pack->pack_serial == std::optional<std::string>("P7-558213"));
  CHECK(pack->final_float == std::map<job::Side, quantity::Length>{{job::Side::lower, quantity::Length(740)}});
  CHECK_FALSE(got(bench.store().previous_pack("TESTVN117TB118822", "")));
  CHECK_FALSE(got(bench.store().previous_pack("TESTVN009TA030417", first.id())));

  TestJob second(bench, "11", "2026-0200");
  second.open();
  CHECK(got(bench.store().previous_pack("TESTVN009TA030417", second.id()))->job_number == "2026-0147");
  CHECK_FALSE(got(bench.store().previous_pack("TESTVN009TA030417", first.id())));
}

TEST_CASE("the context of a job holds instruments, trays of its spec sheet, pairs and previous pack") {
  Workbench bench;
  TestJob past(bench, "10", "2026-0147");
  past.open();
  assemble(past, 1, 1650, 790);
  assemble(past, 2, 1700, 740);
  const auto spec = got(sheet::read_spec_sheet(shipped("specs/D7-2.json")));
  const job::Instrument dial{"01930000-0000-7000-8000-000000000011",
                             "Dial gauge 2",
                             sheet::InstrumentKind::dial_gauge,
                             10,
                             13,
                             "2027-03-31",
                             quantity::Length(1000)};
  went(bench.store().registers().put(dial, by_mk()));
  const Tray tray{"01930000-0000-7000-8000-000000000041",
                  spec.lower.tray_name,
                  {{"1.65", quantity::Length(1652), 0.0025, 2}, {"1.70", quantity::Length(1701), 0.0025, {}}}};
  went(bench.store().registers().put(tray, by_mk()));

  const job::Context context = got(bench.store().context("new", spec, "TESTVN009TA030417", by_mk(90)));
  CHECK(context.now == by_mk(90).moment);
  CHECK(context.person == mk);
  REQUIRE(context.instruments.size() == 1);
  CHECK(context.instruments[0].turn == std::optional(quantity::Length(1000)));
  REQUIRE(context.trays.count(job::Side::lower) == 1);
  CHECK(context.trays.at(job::Side::lower)[0].thickness == quantity::Length(1652));
  CHECK(context.trays.count(job::Side::upper) == (spec.upper.tray_name == spec.lower.tray_name ? 1U : 0U));
  CHECK(context.history.at(job::Side::lower).size() == 1);
  CHECK(context.history.at(job::Side::upper).empty());
  CHECK(context.previous_pack);
}

}  // namespace shimwright::store
