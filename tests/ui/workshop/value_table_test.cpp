#include "value_table.h"

#include <QCoreApplication>
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

TEST_CASE("a number is never broken, however narrow its column") {
  ValueTable table({{"Name", 20, false}, {"Resolution", 1, true}});
  table.add_row({Cell("a micrometer with a long name"), Cell("0.001\u00a0mm")});
  table.resize(200, 100);
  table.grab();
  for (const QLabel* each : table.findChildren<QLabel*>()) {
    if (each->text().startsWith("0.001")) {
      CHECK(each->width() >= each->fontMetrics().horizontalAdvance(each->text()));
    }
  }
}

TEST_CASE("a table too narrow for its columns says each row in a block, and a column that says nothing takes no room") {
  ValueTable table({{"Step", 2, false}, {"Instruction", 2, false}, {"Limits", 1, false}, {"Unit", 1, false}});
  table.add_row({Cell("Large bearing"), Cell("Depth from the housing’s face"), Cell(QString()), Cell("millimetres")});
  const auto shown = [&table] {
    QStringList texts;
    for (const QLabel* each : table.findChildren<QLabel*>()) {
      if (each->isVisible()) {
        texts << each->text();
      }
    }
    texts.sort();
    return texts;
  };
  table.resize(700, 100);
  table.show();
  CHECK(shown() ==
        QStringList{"Depth from the housing’s face", "Instruction", "Large bearing", "Step", "Unit", "millimetres"});
  table.resize(table.minimumSizeHint());
  QCoreApplication::processEvents();
  CHECK(shown() == QStringList{"Depth from the housing’s face", "Instruction", "Large bearing", "Unit", "millimetres"});
  for (const QLabel* each : table.findChildren<QLabel*>()) {
    if (each->isVisible()) {
      CHECK(each->geometry().right() < table.width());
    }
  }
}
