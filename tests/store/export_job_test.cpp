#include "exchange.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("a job goes into one file with its sheets, photos and seal") {
  Workbench bench;
  const std::string job = sealed_job_with_photos(bench, "10");
  const std::string out = bench.file("there.jsonl").toStdString();
  const ExportReport report = got(export_job(bench.path(), job, out));
  CHECK(report.file == out);
  CHECK(report.photos >= 1);
  CHECK(report.entries == std::int64_t(got(bench.store().load(job)).stored.size()));
  const FileInParts file(out);
  CHECK(file.job["format"] == "shimwright.job");
  CHECK(file.job["job_sheet"] == shipped("sheets/dry-pack-renewal.json"));
  CHECK(file.job["persons"].size() == 2);
  CHECK(file.job["seal"]["addenda"].size() == 1);
  CHECK(file.photos.size() == report.photos);
  CHECK(QDir(bench.file("")).entryList({"*.part"}).isEmpty());
}

TEST_CASE("an export stands where an older one of the same job lies, and writes over nothing else") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  TestJob other(bench, "20", "2026-0148", "TESTVN0020A000123");
  job.open();
  other.open();
  const std::string out = exported(bench, job.id());
  const QByteArray before = content_of(out);
  job.add(job::Done{{"battery-off", 1}});
  CHECK(exported(bench, job.id()) == out);
  const QByteArray after = content_of(out);
  CHECK(after != before);
  CHECK(code_of(export_job(bench.path(), other.id(), out)) == "file_in_the_way");
  CHECK(code_of(export_job(bench.path(), job.id(), bench.path())) == "file_in_the_way");
  CHECK(code_of(export_job(bench.path(), "01930000-0000-7000-8000-000000009900", out)) == "unknown_job");
  CHECK(content_of(out) == after);
}

TEST_CASE("an erased text is not in the file") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open("HL-MK 412", "Miller/77");
  const auto& opened = std::get<job::Opened>(job.state().entries.front().body);
  went(bench.store().erase_private_text(opened.plate->id, by_mk()));
  const QByteArray file = content_of(exported(bench, job.id()));
  CHECK_FALSE(file.contains("HL-MK 412"));
  CHECK(file.contains("Miller/77"));
}

TEST_CASE("a job that was changed, or whose photo is gone, is not handed on") {
  Workbench bench;
  const std::string out = bench.file("there.jsonl").toStdString();
  const std::string job = closed_job_with_photos(bench, "10");
  QDir(QString::fromStdString(bench.path()).section('/', 0, -2) + "/photos").removeRecursively();
  CHECK(code_of(export_job(bench.path(), job, out)) == "photo_missing");
  TestJob changed(bench, "20", "2026-0148", "TESTVN0020A000123");
  changed.open();
  bench.sabotage("DROP TRIGGER entry_is_not_changed; UPDATE entry SET person = '' WHERE job = '" +
                 QByteArray::fromStdString(changed.id()) + "'");
  CHECK(code_of(export_job(bench.path(), changed.id(), out)) == "job_damaged");
  CHECK_FALSE(QFile::exists(QString::fromStdString(out)));
}

TEST_CASE("an export that is stopped leaves nothing") {
  Workbench bench;
  const std::string job = closed_job_with_photos(bench, "10");
  const std::string out = bench.file("there.jsonl").toStdString();
  const std::atomic<bool> stop = true;
  CHECK(code_of(export_job(bench.path(), job, out, {&stop, {}})) == "stopped");
  CHECK(QDir(bench.file("")).entryList({"there*"}).isEmpty());
}

TEST_CASE("the name of a job's file holds no sign of a path") {
  CHECK(export_name("2026/0147 ..", "id") == "job-2026-0147----id.jsonl");
}

}  // namespace shimwright::store
