#include "shimwright/shell/choice_row.h"

#include <QSignalSpy>
#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;

TEST_CASE("one of a few is chosen, and stays chosen when it is pressed again") {
  const std::vector<shell::ChoiceRow::Choice> choices{{"light", "Light"}, {"dark", "Dark"}};
  shell::ChoiceRow row("Brightness", choices);
  row.set_chosen("light");
  QSignalSpy chosen(&row, &shell::ChoiceRow::chosen);
  test::press(row, "button-dark");
  test::press(row, "button-dark");
  CHECK(chosen.count() == 2);
  CHECK(test::named<QPushButton>(row, "button-dark")->isChecked());
  CHECK_FALSE(test::named<QPushButton>(row, "button-light")->isChecked());
}
