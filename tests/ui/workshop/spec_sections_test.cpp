#include "spec_sections.h"

#include <QTest>
#include <catch2/catch.hpp>

#include "ui_bench.h"
#include "workshop_texts.h"

using namespace shimwright;
using test::shown_in;

TEST_CASE("a spec sheet stands with title, source and mark, and its button opens it") {
  test::UiBench bench;
  widgets::Scroll page;
  std::string opened;
  workshop::fill_spec_sheets(page, bench.store().registers(), [&](const std::string& hash) { opened = hash; });
  const QString shown = shown_in(page);
  CHECK(shown.contains("D7, issue 2"));
  CHECK(shown.contains("invented for the demo"));
  CHECK(shown.contains("demonstration values"));
  page.show();
  auto* button = page.findChild<QAbstractButton*>("button-open-D7");
  REQUIRE(button != nullptr);
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(opened == bench.spec_hash());
}

TEST_CASE("its values stand with unit and source, and there is a way back") {
  test::UiBench bench;
  widgets::Scroll page;
  int backs = 0;
  workshop::fill_spec_sheet(page, bench.store().registers(), bench.spec_hash(), [&] { ++backs; });
  const QString shown = shown_in(page);
  for (const char* text : {"0.25 to 0.85", "at most 12", "N·m", "8 N·m, then 90°", "DP-7714", "at every assembly"}) {
    INFO(text);
    CHECK(shown.contains(QString::fromUtf8(text)));
  }
  page.show();
  QTest::keyClick(page.findChild<QAbstractButton*>("button-all-spec-sheets"), Qt::Key_Return);
  CHECK(backs == 1);
}

TEST_CASE("a sheet that is not in the store is said so") {
  test::UiBench bench;
  widgets::Scroll page;
  workshop::fill_spec_sheet(page, bench.store().registers(), "none", [] {});
  CHECK_FALSE(shown_in(page).isEmpty());
}
