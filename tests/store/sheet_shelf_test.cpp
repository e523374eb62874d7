#include "sheet_shelf.h"

#include "workbench.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("sheets come from the store once and are the same ever after") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const job::Opened& opened = *job.state().opened;
  SheetShelf shelf(bench.store().connection());
  const job::Sheets first = got(shelf.sheets(opened.sheet_hash, opened.spec_hash));
  CHECK(first.spec->gearbox == "D7");
  CHECK(first.job_hash == record::sha256_hex(shipped("sheets/dry-pack-renewal.json")));
  CHECK(first.spec_hash == record::sha256_hex(shipped("specs/D7-2.json")));
  const job::Sheets second = got(shelf.sheets(opened.sheet_hash, opened.spec_hash));
  CHECK(second.job == first.job);
  CHECK(second.spec == first.spec);
}

TEST_CASE("a sheet that is not in the store, or not to be read, is refused and not remembered") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const job::Opened& opened = *job.state().opened;
  SheetShelf shelf(bench.store().connection());
  CHECK(code_of(shelf.sheets(opened.spec_hash, opened.spec_hash)) == "unknown_sheet");
  CHECK(code_of(shelf.sheets(opened.sheet_hash, opened.sheet_hash)) == "unknown_sheet");
  const std::string sheet = opened.sheet_hash;
  const std::string spec = opened.spec_hash;
  bench.sabotage("DROP TRIGGER spec_sheet_is_not_changed; UPDATE spec_sheet SET json = x'7b7d'");
  SheetShelf spoilt(bench.store().connection());
  CHECK_FALSE(spoilt.sheets(sheet, spec));
  CHECK_FALSE(spoilt.sheets(sheet, spec));
}

}  // namespace shimwright::store
