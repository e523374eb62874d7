#include "value_table.h"

#include <QLabel>
#include <catch2/catch.hpp>

using namespace shimwright;
using workshop::Cell;
using workshop::ValueTable;

TEST_CASE("a table shows its headings and cells, a mark beside its word") {
  ValueTable table({{"Name", 2, false}, {"Limit", 1, true}});
  table.add_row({Cell("dial 2"), Cell("overdue", "bad", widgets::Mark::held)});
  table.add_row({Cell("dial 3"), Cell("in date")});
  CHECK(table.row_count() == 2);
  QStringList shown;
  for (const QLabel* each : table.findChildren<QLabel*>()) {
    shown << each->text();
  }
  for (const char* text : {"Name", "Limit", "dial 2", "overdue", "dial 3", "in date"}) {
    CHECK(shown.contains(text));
  }
  const auto marks = table.findChildren<widgets::MarkView*>();
  REQUIRE(marks.size() == 1);
  CHECK(marks.front()->mark() == widgets::Mark::held);
}
