#include "data_bench.h"

using namespace shimwright;
using test::shown_in;

TEST_CASE("it is said where the data lies, how much it is and how many jobs there are") {
  test::DataBench data;
  CHECK(shown_in(data.section).contains(QString::fromStdString(data.bench.store().path())));
  CHECK(shown_in(data.section).contains("0 jobs, "));
  data.bench.go_to("large-gauge-fit");
  data.section.refresh();
  CHECK(shown_in(data.section).contains("1 job, "));
  CHECK(shown_in(data.section).contains("B with photos"));
}

TEST_CASE("the move to another laptop is three steps") {
  const test::DataBench data;
  const QString shown = shown_in(data.section);
  for (const char* step : {"1  Here:", "2  There:", "3  There,"}) {
    CHECK(shown.contains(QLatin1String(step)));
  }
}

TEST_CASE("every button of the page is large enough and has a name") {
  const test::DataBench data;
  for (const QAbstractButton* each : data.section.findChildren<QAbstractButton*>()) {
    CHECK(each->sizeHint().height() >= 48);
    CHECK_FALSE((each->accessibleName().isEmpty() && each->text().isEmpty()));
  }
}
