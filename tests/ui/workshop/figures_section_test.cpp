#include "figures_section.h"

#include <QFile>
#include <QLineEdit>
#include <QProgressBar>
#include <QTest>
#include <catch2/catch.hpp>

#include "earlier_job.h"
#include "figure_row.h"
#include "ui_bench.h"
#include "workshop_texts.h"

using namespace shimwright;

namespace {

struct FiguresBench {
  test::UiBench bench{"02-bearing-not-home"};
  std::string job = bench.go_to("lower-float", 6);
  QString table;
  QString heading;
  std::vector<std::string> jobs;
  workshop::FiguresSection section{bench.store(), ways()};

  FiguresBench() {
    section.resize(900, 1600);
    section.show();
    QObject::connect(&section, &workshop::FiguresSection::jobs_wanted,
                     [this](const QString& of, const std::vector<std::string>& wanted) {
                       heading = of;
                       jobs = wanted;
                     });
  }
  [[nodiscard]] workshop::WorkshopWays ways() {
    workshop::WorkshopWays made;
    made.clock = [this] { return bench.workbench().now(); };
    made.data.choose_table = [this](const QString&) { return table; };
    return made;
  }
  void read() {
    section.refresh();
    REQUIRE(QTest::qWaitFor([&] { return !section.works(); }, 60000));
    QCoreApplication::processEvents();
  }
  [[nodiscard]] workshop::FigureRow* row(const QString& title) const {
    for (auto* each : section.findChildren<workshop::FigureRow*>()) {
      if (each->isVisible() && each->text() == title) {
        return each;
      }
    }
    FAIL("no figure " << title.toStdString());
    return nullptr;
  }
  [[nodiscard]] QAbstractButton* button(const char* name) const {
    auto* found = section.findChild<QAbstractButton*>(QLatin1String(name));
    REQUIRE(found != nullptr);
    return found;
  }
};

}  // namespace

TEST_CASE("the figures are read in the background, and each is a door to its jobs, by key and by click") {
  FiguresBench it;
  it.read();
  auto* month = it.row("Nov 2026");
  CHECK(month->accessibleName() == "Nov 2026: 1");
  CHECK(month->sizeHint().height() >= 48);
  month->setFocus();
  QTest::keyClick(month, Qt::Key_Return);
  CHECK(it.heading == "Nov 2026");
  CHECK(it.jobs == std::vector<std::string>{it.job});
  auto* again = it.row("Pack off again");
  QTest::mouseClick(again, Qt::LeftButton);
  CHECK(it.heading == "Nov 2026");  // no door to nothing: why is said in place
  CHECK(test::shown_in(it.section).contains("Pack off again: there is no such job in this time."));
  CHECK(again->accessibleName().contains("0 of 1"));
}

TEST_CASE("a month without jobs between two with some is shown as none") {
  FiguresBench it;
  // 630 days before.
  test::fit_the_pack_before(it.bench);
  QTest::mouseClick(it.button("button-months-0"), Qt::LeftButton);
  REQUIRE(QTest::qWaitFor([&] { return !it.section.works(); }, 60000));
  QCoreApplication::processEvents();
  CHECK(it.row("Nov 2026")->accessibleName() == "Nov 2026: 1");
  CHECK(it.row("Oct 2026")->accessibleName() == "Oct 2026: 0");
  CHECK(it.row("Apr 2025")->accessibleName() == "Apr 2025: 0");
}

TEST_CASE("the shims that were left and the trials they took are there") {
  FiguresBench it;
  it.read();
  const QString shown = test::shown_in(it.section);
  CHECK(shown.contains("on average"));
  bool has_shim = false;
  for (auto* each : it.section.findChildren<workshop::FigureRow*>()) {
    has_shim = has_shim || each->text().startsWith("D7, large bearing, ");
  }
  CHECK(has_shim);
}

TEST_CASE("a distance that cannot be read is told in place and stays typed") {
  FiguresBench it;
  auto* field = it.section.findChild<QWidget*>("field-within-km")->findChild<QLineEdit*>();
  field->setText("30,0,0");
  QTest::mouseClick(it.button("button-read-figures"), Qt::LeftButton);
  CHECK_FALSE(it.section.works());
  CHECK(field->text() == "30,0,0");
  CHECK_FALSE(it.section.findChild<QLabel*>("figures-result")->text().isEmpty());
}

TEST_CASE("a vehicle that was back is counted by the distance and the days that are set") {
  FiguresBench it;
  // 33250 km and 630 days before.
  test::fit_the_pack_before(it.bench);
  const auto set = [&it](const char* field, const char* text) {
    it.section.findChild<QWidget*>(QLatin1String(field))->findChild<QLineEdit*>()->setText(QLatin1String(text));
    it.read();
    return it.row("Back within the distance and the days")->accessibleName();
  };
  CHECK(set("field-within-km", "40000").endsWith(": 0"));
  CHECK(set("field-within-days", "700").endsWith(": 1"));
  CHECK(set("field-within-km", "33249").endsWith(": 0"));
  CHECK(set("field-within-km", "33250").endsWith(": 1"));
  QTest::mouseClick(it.row("Back within the distance and the days"), Qt::LeftButton);
  CHECK(it.jobs == std::vector<std::string>{it.job});
}

TEST_CASE("a time that is chosen while another is read is the one that is shown") {
  FiguresBench it;
  it.bench.move_clock(std::int64_t{400} * 24 * 60);
  it.section.refresh();
  REQUIRE(it.section.works());
  QTest::mouseClick(it.button("button-months-36"), Qt::LeftButton);
  QTest::mouseClick(it.button("button-months-0"), Qt::LeftButton);
  REQUIRE(QTest::qWaitFor([&] { return !it.section.works(); }, 60000));
  QCoreApplication::processEvents();
  CHECK(it.button("button-months-0")->isChecked());
  CHECK_FALSE(test::shown_in(it.section).contains("No job was opened in this time."));
  CHECK(it.row("Nov 2026")->isVisible());
}

TEST_CASE("another time is chosen by a key, and read at once") {
  FiguresBench it;
  it.bench.move_clock(std::int64_t{400} * 24 * 60);
  it.read();
  CHECK(test::shown_in(it.section).contains("No job was opened in this time."));
  it.button("button-months-0")->setFocus();
  QTest::keyClick(it.button("button-months-0"), Qt::Key_Return);
  REQUIRE(QTest::qWaitFor([&] { return !it.section.works(); }, 60000));
  CHECK(it.row("Nov 2026") != nullptr);
  CHECK(it.button("button-months-0")->isChecked());
  CHECK_FALSE(it.button("button-months-12")->isChecked());
}

TEST_CASE("the measurements of the time go to a file in the background") {
  FiguresBench it;
  it.table = it.bench.file("all.csv");
  QTest::mouseClick(it.button("button-export-period-csv"), Qt::LeftButton);
  REQUIRE(QTest::qWaitFor([&] { return it.button("button-export-period-csv")->isEnabled(); }, 60000));
  CHECK(it.section.findChild<QLabel*>("period-export-result")->text().startsWith("1 job in: "));
  CHECK(QFile::exists(it.table));
}

TEST_CASE("figures that are read by themselves leave the focus where it is") {
  FiguresBench it;
  REQUIRE(QTest::qWaitForWindowActive(&it.section));
  auto* span = it.button("button-months-12");
  span->setFocus();
  it.read();
  CHECK(span->hasFocus());
  it.button("button-read-figures")->setFocus();
  QTest::keyClick(it.button("button-read-figures"), Qt::Key_Return);
  REQUIRE(QTest::qWaitFor([&] { return !it.section.works(); }, 60000));
  CHECK(it.button("button-read-figures")->hasFocus());
}
