#include "store_card.h"

#include <QDir>
#include <QFileInfo>

#include "data_bench.h"

using namespace shimwright;

TEST_CASE("the check says plainly that all is in order") {
  test::DataBench data;
  data.bench.go_to("large-gauge-fit");
  data.press("button-check");
  CHECK(data.result("check").startsWith("All is as it was written. Jobs: 1, "));
}

TEST_CASE("the check names what is not as it was written, and what to do") {
  test::DataBench data;
  data.bench.go_to("");
  QDir photos(QFileInfo(QString::fromStdString(data.bench.store().path())).dir().filePath("photos"));
  REQUIRE_FALSE(photos.entryList(QDir::Dirs | QDir::NoDotAndDotDot).isEmpty());
  REQUIRE(photos.removeRecursively());
  data.press("button-check");
  CHECK(data.result("check").contains("Not as it was written, in so many places: "));
  CHECK(data.result("check").contains("is gone from the folder of photos"));
  CHECK(data.result("check").count('\n') <= 7);
}

TEST_CASE("a size is read by people") {
  CHECK(workshop::size_text(1400000) == "1.4 MB");
  CHECK(workshop::size_text(0).endsWith(" bytes"));
}
