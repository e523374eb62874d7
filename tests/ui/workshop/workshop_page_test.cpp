#include "shimwright/workshop/workshop_page.h"

#include <QFile>
#include <QStackedWidget>
#include <QTest>
#include <catch2/catch.hpp>

#include "ui_bench.h"
#include "workshop_texts.h"

using namespace shimwright;
using test::shown_in;

namespace {

struct PageBench {
  test::UiBench bench;
  workshop::WorkshopPage page{bench.store(),
                              {[] { return QString(); },
                               [] {
                                 return job::Moment{1795421400000, 60, false};
                               }}};

  PageBench() {
    page.resize(1000, 640);
    page.show();
    REQUIRE(QTest::qWaitForWindowActive(&page));
  }
  [[nodiscard]] QAbstractButton* button(const char* name) const { return page.findChild<QAbstractButton*>(name); }
  [[nodiscard]] QWidget* shown() const { return page.findChild<QStackedWidget*>()->currentWidget(); }
};

}  // namespace

TEST_CASE("the sections are gone through with arrows and opened with Enter") {
  PageBench bench;
  bench.button("section-spec-sheets")->setFocus();
  QTest::keyClick(bench.button("section-spec-sheets"), Qt::Key_Down);
  CHECK(bench.button("section-job-sheets")->hasFocus());
  QTest::keyClick(bench.button("section-job-sheets"), Qt::Key_Return);
  CHECK(bench.button("section-job-sheets")->isChecked());
  CHECK_FALSE(bench.button("section-spec-sheets")->isChecked());
  CHECK(shown_in(*bench.shown()).contains("dry-pack-renewal"));
}

TEST_CASE("who comes to the page stands on the section that was chosen") {
  PageBench bench;
  bench.page.setFocus();
  CHECK(bench.button("section-spec-sheets")->hasFocus());
  QTest::mouseClick(bench.button("section-people"), Qt::LeftButton);
  bench.button("section-trays")->setFocus();
  bench.page.setFocus();
  CHECK(bench.button("section-people")->hasFocus());
  bench.button("section-figures")->click();
  CHECK(bench.button("section-figures")->hasFocus());
}

TEST_CASE("each section shows its own") {
  PageBench bench;
  const std::vector<std::pair<const char*, const char*>> sections{{"section-people", "People"},
                                                                  {"section-instruments", "Instruments"},
                                                                  {"section-trays", "large D7"},
                                                                  {"section-own", "This workshop"},
                                                                  {"section-data", "Go back to a backup"},
                                                                  {"section-spec-sheets", "D7, issue 3"}};
  for (const auto& [name, text] : sections) {
    QTest::mouseClick(bench.button(name), Qt::LeftButton);
    INFO(name);
    CHECK(shown_in(*bench.shown()).contains(text));
  }
}

TEST_CASE("a spec sheet is opened and left again with keys") {
  PageBench bench;
  QTest::keyClick(bench.button("button-open-D7"), Qt::Key_Return);
  REQUIRE(bench.button("button-all-spec-sheets") != nullptr);
  CHECK(bench.button("button-all-spec-sheets")->hasFocus());
  CHECK(shown_in(*bench.shown()).contains("0.25 to 0.85"));
  QCoreApplication::processEvents();
  const auto* values = bench.page.findChild<QWidget*>("values-of-sides");
  REQUIRE(values != nullptr);
  CHECK(values->height() >= values->heightForWidth(values->width()));
  QTest::keyClick(bench.button("button-all-spec-sheets"), Qt::Key_Return);
  CHECK_FALSE(shown_in(*bench.shown()).contains("0.25 to 0.85"));
  CHECK(bench.button("button-open-D7") != nullptr);
}

TEST_CASE("what changed in the store is seen after a refresh, and the last backup is told") {
  PageBench bench;
  QTest::mouseClick(bench.button("section-data"), Qt::LeftButton);
  bench.bench.go_to("large-gauge-fit");
  bench.page.refresh();
  bench.page.set_last_backup(1795421400000, "/kept/workshop.shimwright");
  CHECK(shown_in(*bench.shown()).contains("1 job, "));
  CHECK(shown_in(*bench.shown()).contains("Last verified backup: 23 Nov 2026"));
}

TEST_CASE("a blank sheet of paper is asked for with a key, and told where it lies") {
  test::UiBench rig;
  const QString path = rig.file("sheet.pdf");
  workshop::WorkshopPage page(rig.store(), {[] { return QString(); },
                                            [] {
                                              return job::Moment{1795421400000, 60, false};
                                            },
                                            [path](const QString& suggestion) {
                                              CHECK(suggestion == "dry-pack-renewal.pdf");
                                              return path;
                                            }});
  page.resize(1000, 640);
  page.show();
  REQUIRE(QTest::qWaitForWindowActive(&page));
  QTest::keyClick(page.findChild<QAbstractButton*>("section-job-sheets"), Qt::Key_Return);
  auto* save = page.findChild<QAbstractButton*>("button-blank-dry-pack-renewal");
  REQUIRE(save != nullptr);
  QTest::keyClick(save, Qt::Key_Return);
  CHECK(QFile::exists(path));
  CHECK(shown_in(*page.findChild<QStackedWidget*>()->currentWidget()).contains(path));
}
