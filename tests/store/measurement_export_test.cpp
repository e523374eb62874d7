#include "shimwright/store/measurement_export.h"

#include <QFile>
#include <atomic>

#include "shimwright/record/measurement_table.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr Period always{0, std::int64_t{1} << 50};

QByteArray content_of(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

struct Exporting {
  Workbench bench;
  TestJob first{bench, "10", "1102", "TESTVN009TA030417"};
  TestJob second{bench, "11", "1588", "TESTVN117TB118822"};
  QString csv = bench.file("all.csv");
  QString json = bench.file("all.json");

  Exporting() {
    first.open();
    second.open("HL-RT 9", "Kovac");
  }
};

}  // namespace

TEST_CASE("a period goes into one file of either form, every job in the order it was opened") {
  Exporting it;
  const TableReport report = got(export_period(it.bench.path(), always, it.csv.toStdString(), TableForm::csv));
  CHECK(report.jobs == 2);
  CHECK(report.file == it.csv.toStdString());
  const QByteArray csv = content_of(it.csv);
  CHECK(csv.startsWith(QByteArray::fromStdString(record::csv_head())));
  CHECK(csv.indexOf("1102") < csv.indexOf("1588"));
  CHECK(got(export_period(it.bench.path(), always, it.json.toStdString(), TableForm::json)).jobs == 2);
  const QByteArray json = content_of(it.json);
  CHECK(json.startsWith(QByteArray::fromStdString(record::measurements_begin())));
  CHECK(json.endsWith(QByteArray::fromStdString(record::measurements_end())));
  CHECK(json.contains("},{"));
}

TEST_CASE("a period without jobs is a file with heads and nothing else") {
  Exporting it;
  CHECK(got(export_period(it.bench.path(), {0, 1}, it.csv.toStdString(), TableForm::csv)).jobs == 0);
  CHECK(content_of(it.csv) == QByteArray::fromStdString(record::csv_head()));
}

TEST_CASE("an erased text is never in an export") {
  Exporting it;
  REQUIRE(got(it.bench.store().erase_vehicle_texts("TESTVN009TA030417", by_mk())) == 2);
  for (const auto& [file, form] : {std::pair(it.csv, TableForm::csv), std::pair(it.json, TableForm::json)}) {
    CHECK(got(export_period(it.bench.path(), always, file.toStdString(), form)).jobs == 2);
    const QByteArray content = content_of(file);
    CHECK_FALSE(content.contains("HL-MK 412"));
    CHECK_FALSE(content.contains("Miller"));
    CHECK(content.contains("erased"));
    CHECK(content.contains("HL-RT 9"));
  }
}

TEST_CASE("an older export is written over, anything else is not") {
  Exporting it;
  static_cast<void>(got(export_period(it.bench.path(), {0, 1}, it.csv.toStdString(), TableForm::csv)));
  CHECK(got(export_period(it.bench.path(), always, it.csv.toStdString(), TableForm::csv)).jobs == 2);
  const auto over_other_form = export_period(it.bench.path(), always, it.csv.toStdString(), TableForm::json);
  CHECK(code_of(over_other_form) == "file_in_the_way");
  const QByteArray store = content_of(QString::fromStdString(it.bench.path()));
  CHECK(code_of(export_period(it.bench.path(), always, it.bench.path(), TableForm::csv)) == "file_in_the_way");
  CHECK(content_of(QString::fromStdString(it.bench.path())) == store);
  CHECK(code_of(export_period(it.bench.path(), always, "all.csv", TableForm::csv)) == "path_not_absolute");
}

TEST_CASE("an export that is stopped or refused leaves no file") {
  Exporting it;
  const std::atomic<bool> stop = true;
  BackupWatch watch;
  watch.stop = &stop;
  CHECK(code_of(export_period(it.bench.path(), always, it.csv.toStdString(), TableForm::csv, watch)) == "stopped");
  CHECK(code_of(export_jobs(it.bench.store(), {it.first.id(), "gone"}, it.csv.toStdString(), TableForm::csv)) ==
        "unknown_job");
  CHECK_FALSE(QFile::exists(it.csv));
}

TEST_CASE("job by job it tells how far it is") {
  Exporting it;
  auto writing = got(MeasurementExport::begin(it.bench.store(), {it.first.id(), it.second.id()}, it.csv.toStdString(),
                                              TableForm::csv));
  CHECK(writing.jobs() == 2);
  CHECK_FALSE(writing.all_written());
  went(writing.write_next());
  CHECK_FALSE(QFile::exists(it.csv));
  went(writing.write_next());
  CHECK(writing.all_written());
  CHECK(got(writing.finish()).jobs == 2);
  CHECK(QFile::exists(it.csv));
}

}  // namespace shimwright::store
