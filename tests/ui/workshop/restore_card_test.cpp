#include "restore_card.h"

#include "data_bench.h"
#include "shimwright/store/backup.h"

using namespace shimwright;

TEST_CASE("a backup is looked at first, and only then may be gone back to") {
  test::DataBench data;
  data.bench.go_to("large-gauge-fit");
  data.backup = data.bench.file("kept/monday.shimwright");
  REQUIRE(store::back_up(data.bench.store().path(), data.backup.toStdString()));
  QString wanted;
  QObject::connect(&data.section, &workshop::DataSection::restore_wanted, [&](const QString& file) { wanted = file; });
  CHECK_FALSE(data.button("button-restore")->isVisible());
  data.press("button-look-at-backup");
  CHECK(data.result("restore").contains("is whole; its last entry is of"));
  CHECK(data.result("restore").contains("Jobs: 1, "));
  CHECK(data.button("button-leave-store")->hasFocus());
  CHECK(wanted.isEmpty());
  QTest::mouseClick(data.button("button-restore"), Qt::LeftButton);
  CHECK(wanted == data.backup);
}

TEST_CASE("what was looked at can be left, and nothing was changed") {
  test::DataBench data;
  data.bench.go_to("large-gauge-fit");
  data.backup = data.bench.file("kept/monday.shimwright");
  REQUIRE(store::back_up(data.bench.store().path(), data.backup.toStdString()));
  data.press("button-look-at-backup");
  QTest::mouseClick(data.button("button-leave-store"), Qt::LeftButton);
  CHECK_FALSE(data.button("button-restore")->isVisible());
  CHECK(data.result("restore") == "Nothing was changed.");
}

TEST_CASE("what is no backup is refused in place") {
  test::DataBench data;
  data.press("button-look-at-backup");
  CHECK(data.result("restore").isEmpty());
  data.backup = QString::fromStdString(data.bench.store().path());
  data.press("button-look-at-backup");
  CHECK(data.result("restore").contains("This is the store itself"));
  CHECK_FALSE(data.button("button-restore")->isVisible());
}
