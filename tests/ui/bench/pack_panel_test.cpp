#include "pack_panel.h"

#include <QLabel>
#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

TEST_CASE("the panel shows the four numbers of the job in hand") {
  test::UiBench rig;
  rig.go_to("");
  bench::PackPanel panel(nullptr);
  panel.show_state(rig.workbench().state(), rig.workbench().context(), nullptr);
  QStringList texts;
  for (const QLabel* label : panel.findChildren<QLabel*>()) {
    texts.append(label->text());
  }
  for (const auto& number : bench::panel_numbers(rig.workbench().state())) {
    CHECK(texts.contains(number.title));
    CHECK(texts.contains(number.value));
  }
}
