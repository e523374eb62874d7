#include "float_table.h"

#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

QStringList cells_of(const QWidget& table) {
  QStringList words;
  for (const QLabel* each : table.findChildren<QLabel*>()) {
    if (!each->parentWidget()->isHidden()) {
      words.append(each->text());
    }
  }
  return words;
}

}  // namespace

TEST_CASE("the table has a column for each run asked for and no float before the engine says one") {
  job::FloatRun run;
  run.rest = {0, 2, quantity::Unit::millimetre};
  run.lifted = {930, 2, quantity::Unit::millimetre};
  bench::FloatTable table;
  table.show_runs({{&run}, {}, {}}, 2, std::nullopt);
  const QStringList words = cells_of(table);
  CHECK(words.contains("Run 2"));
  CHECK_FALSE(words.contains("Run 3"));
  CHECK(words.count("0.93") == 1);
  table.show_runs({{&run, &run, &run}, {}, {}}, 2, std::nullopt);
  CHECK(cells_of(table).contains("Run 3"));
}

TEST_CASE("the table of shims says which is advised and which is fitted") {
  bench::PromiseTable table;
  table.show_promises(
      {{"1.95", "0.57", "better than 99 in 100", true, false}, {"1.60", "0.93", "less than 1 in 100", false, true}});
  CHECK(cells_of(table).contains("advised"));
  CHECK(cells_of(table).contains("fitted now"));
}
