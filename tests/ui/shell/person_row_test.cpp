#include "shimwright/shell/person_row.h"

#include <QSignalSpy>
#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;

namespace {

std::vector<store::Person> three_persons() {
  return {{"1", "Mara Kestrel", "MK", std::nullopt, true},
          {"2", "Gone Away", "GA", std::nullopt, false},
          {"3", "Rolf Tarn", "RT", std::nullopt, true}};
}

}  // namespace

TEST_CASE("a digit picks a person; who left is not offered") {
  shell::PersonRow row;
  std::string picked;
  QObject::connect(&row, &shell::PersonRow::picked, [&](const store::Person& person) { picked = person.initials; });
  row.open(three_persons(), "1");
  CHECK(row.findChild<QWidget*>("button-person-GA") == nullptr);
  QTest::keyClick(&row, Qt::Key_3);
  CHECK(picked.empty());
  QTest::keyClick(&row, Qt::Key_2);
  CHECK(picked == "RT");
  CHECK(row.isHidden());
}

TEST_CASE("Escape leaves the person as it is") {
  shell::PersonRow row;
  QSignalSpy picked(&row, &shell::PersonRow::picked);
  QSignalSpy closed(&row, &shell::PersonRow::closed);
  row.open(three_persons(), "3");
  QTest::keyClick(&row, Qt::Key_Escape);
  CHECK(picked.count() == 0);
  CHECK(closed.count() == 1);
  CHECK(row.isHidden());
}
