#include "data_section.h"

#include <QFile>
#include <QTest>
#include <catch2/catch.hpp>

#include "ui_bench.h"
#include "workshop_texts.h"

using namespace shimwright;
using test::shown_in;

namespace {

struct DataBench {
  test::UiBench bench;
  QString folder;
  workshop::DataSection section{bench.store(),
                                {[this] { return folder; },
                                 [] {
                                   return job::Moment{1795421400000, 60, false};
                                 }}};
  QAbstractButton* begin = section.findChild<QAbstractButton*>("button-back-up");
  QAbstractButton* stop = section.findChild<QAbstractButton*>("button-stop-backup");

  DataBench() { section.show(); }
  [[nodiscard]] QString result() const { return section.findChild<QLabel*>("backup-result")->text(); }
};

}  // namespace

TEST_CASE("it is said where the data lies and how many jobs there are") {
  DataBench data;
  CHECK(shown_in(data.section).contains(QString::fromStdString(data.bench.store().path())));
  CHECK(shown_in(data.section).contains("0 jobs"));
  data.bench.go_to("large-gauge-fit");
  data.section.refresh();
  CHECK(shown_in(data.section).contains("1 job\n"));
}

TEST_CASE("a backup goes into the folder that was chosen, and then it is the last one") {
  DataBench data;
  data.bench.go_to("large-gauge-fit");
  data.folder = data.bench.file("kept");
  QString told;
  QObject::connect(&data.section, &workshop::DataSection::backed_up,
                   [&](qint64 at_ms, const QString& file) { told = QString::number(at_ms) + file; });
  CHECK(shown_in(data.section).contains("No backup"));
  QTest::mouseClick(data.begin, Qt::LeftButton);
  CHECK_FALSE(data.begin->isEnabled());
  CHECK(data.stop->isVisible());
  REQUIRE(QTest::qWaitFor([&] { return data.begin->isEnabled(); }, 60000));
  CHECK_FALSE(data.stop->isVisible());
  CHECK(data.result().startsWith("Backup made and checked"));
  CHECK(QFile::exists(data.bench.file("kept/workshop-backup.shimwright")));
  CHECK(told == "1795421400000" + data.bench.file("kept/workshop-backup.shimwright"));
  CHECK(shown_in(data.section).contains("Last backup: 23 Nov 2026"));
}

TEST_CASE("no folder chosen, nothing begins; a refusal stands in place") {
  DataBench data;
  QTest::mouseClick(data.begin, Qt::LeftButton);
  CHECK(data.begin->isEnabled());
  data.folder = data.bench.file("kept");
  QDir().mkpath(data.folder);
  QFile other(data.bench.file("kept/workshop-backup.shimwright"));
  REQUIRE(other.open(QIODevice::WriteOnly));
  other.write("something else");
  other.close();
  QTest::mouseClick(data.begin, Qt::LeftButton);
  REQUIRE(QTest::qWaitFor([&] { return data.begin->isEnabled(); }, 60000));
  CHECK(data.result().contains("is not written over"));
}
