#include "backup_card.h"

#include <QFile>

#include "data_bench.h"

using namespace shimwright;
using test::shown_in;

TEST_CASE("a backup goes into the folder for backups, under the name of its day, and then it is the last one") {
  test::DataBench data;
  data.bench.go_to("large-gauge-fit");
  data.kept_folder = data.bench.file("kept");
  QString told;
  QObject::connect(&data.section, &workshop::DataSection::backed_up,
                   [&](qint64 at_ms, const QString& file) { told = QString::number(at_ms) + file; });
  CHECK(shown_in(data.section).contains("No verified backup yet."));
  QTest::mouseClick(data.button("button-back-up"), Qt::LeftButton);
  CHECK_FALSE(data.button("button-back-up")->isEnabled());
  CHECK_FALSE(data.button("button-folder")->isEnabled());
  CHECK(data.button("button-stop-backup")->isVisible());
  REQUIRE(QTest::qWaitFor([&] { return data.button("button-back-up")->isEnabled(); }, 60000));
  CHECK_FALSE(data.button("button-stop-backup")->isVisible());
  CHECK(data.result("backup").startsWith("Backup made and checked"));
  const QString file = data.bench.file("kept/workshop-day-1.shimwright");
  CHECK(QFile::exists(file));
  CHECK(told == "1795421400000" + file);
  CHECK(shown_in(data.section).contains("Last verified backup: 23 Nov 2026"));
}

TEST_CASE("where no folder is set one is asked for; none chosen, nothing begins; a refusal stands in place") {
  test::DataBench data;
  data.press("button-back-up");
  CHECK(data.result("backup").isEmpty());
  data.folder = data.bench.file("kept");
  QDir().mkpath(data.folder);
  QFile other(data.bench.file("kept/workshop-day-1.shimwright"));
  REQUIRE(other.open(QIODevice::WriteOnly));
  other.write("something else");
  other.close();
  data.press("button-back-up");
  CHECK(data.result("backup").contains("is not written over"));
}

TEST_CASE("another folder is kept, and one on the disk of the store is told") {
  test::DataBench data;
  data.folder = data.bench.file("kept");
  data.press("button-folder");
  CHECK(data.kept_folder == data.folder);
  CHECK(shown_in(data.section).contains("It lies on the same disk as the store"));
}
