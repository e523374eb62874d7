#include "job_file_card.h"

#include <QDir>
#include <QFile>
#include <QLineEdit>

#include "data_bench.h"

using namespace shimwright;

namespace {

void type_number(const test::DataBench& data, const QString& number) {
  data.section.findChild<widgets::WordField*>(QStringLiteral("export-number"))->set_text(number.toStdString());
}

QString only_number(test::DataBench& data) {
  const auto jobs = data.bench.store().jobs();
  REQUIRE((jobs && jobs->size() == 1));
  return QString::fromStdString(jobs->front().number);
}

}  // namespace

TEST_CASE("a job goes to a file and into another store, in the window") {
  test::DataBench from;
  from.bench.go_to("large-gauge-fit");
  const QString number = only_number(from);
  from.export_folder = from.bench.file("stick");
  QDir().mkpath(from.export_folder);
  type_number(from, number);
  from.press("button-export");
  CHECK(from.result("job-file").startsWith("Written and read again: "));
  const QStringList files = QDir(from.export_folder).entryList({"job-*.jsonl"});
  REQUIRE(files.size() == 1);

  test::DataBench to;
  to.job_file = from.export_folder + "/" + files.front();
  to.press("button-import");
  CHECK(to.result("job-file").startsWith("Job " + number + " was taken in: "));
  CHECK(test::shown_in(to.section).contains("1 job, "));
  to.press("button-import");
  CHECK(to.result("job-file").startsWith("Job " + number + " is here already"));
}

TEST_CASE("a number that is no job's, and a file that is none, are refused in place") {
  test::DataBench data;
  type_number(data, "9999");
  data.press("button-export");
  CHECK(data.result("job-file").contains("no job of this number"));
  CHECK(data.section.findChild<widgets::WordField*>("export-number")->text() == "9999");
  data.job_file = QString::fromStdString(data.bench.store().path());
  data.press("button-import");
  CHECK(data.result("job-file").contains("no job file of this program"));
}
