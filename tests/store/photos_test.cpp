#include "photos.h"

#include <QFile>

#include "sample_photos.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

const QByteArray jpeg = bare_jpeg(QByteArray(2000, 'j'));

std::string file_with(const QString& path, const QByteArray& content) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(content) == content.size());
  return path.toStdString();
}

job::PhotoTaken taken(const KeptPhoto& photo) {
  return {{"received-photos", 1}, photo.sha256, photo.media_type, photo.bytes, "Pack as found"};
}

}  // namespace

TEST_CASE("a photo is kept under its hash, byte for byte") {
  Workbench bench;
  const KeptPhoto photo = got(bench.store().keep_photo(file_with(bench.file("a.png"), jpeg)));
  CHECK(photo.media_type == "image/jpeg");
  CHECK(photo.bytes == jpeg.size());
  const QString place = QString::fromStdString(bench.store().photo_path(photo.sha256));
  CHECK(place == bench.file("workshop/photos/") + QString::fromStdString(photo.sha256).left(2) + "/" +
                     QString::fromStdString(photo.sha256));
  QFile kept(place);
  REQUIRE(kept.open(QIODevice::ReadOnly));
  CHECK(kept.readAll() == jpeg);
  CHECK(hash_of_file(place) == photo.sha256);
  CHECK_FALSE(hash_of_file(place + "x"));
  CHECK(QFile::permissions(place) == (QFile::ReadOwner | QFile::WriteOwner | QFile::ReadUser | QFile::WriteUser));
}

TEST_CASE("a PNG is known as one, anything else is refused") {
  Workbench bench;
  const QByteArray png = png_of(png_chunk("IDAT", "drawn"));
  CHECK(got(bench.store().keep_photo(file_with(bench.file("b"), png))).media_type == "image/png");
  CHECK(code_of(bench.store().keep_photo(file_with(bench.file("c.jpg"), "GIF89a"))) == "photo_kind");
  CHECK(code_of(bench.store().keep_photo(file_with(bench.file("d.jpg"), ""))) == "photo_kind");
  CHECK(code_of(bench.store().keep_photo(bench.file("none").toStdString())) == "photo_unreadable");
  const QByteArray large = jpeg + QByteArray(20 * 1024 * 1024, 'x');
  CHECK(code_of(bench.store().keep_photo(file_with(bench.file("e.jpg"), large))) == "photo_too_large");
}

TEST_CASE("a photo is kept without the place where it was taken, whatever names the file") {
  Workbench bench;
  const QByteArray plain = png_of(png_chunk("IDAT", "drawn"));
  const QByteArray told = png_of(png_chunk("eXIf", tiff_with_position(true)) + png_chunk("IDAT", "drawn"));
  const KeptPhoto photo = got(bench.store().keep_photo(file_with(bench.file("a.png"), told)));
  CHECK(photo.sha256 == got(bench.store().keep_photo(file_with(bench.file("b.png"), plain))).sha256);
  CHECK(photo.bytes == plain.size());
  CHECK(hash_of_file(QString::fromStdString(bench.store().photo_path(photo.sha256))) == photo.sha256);
  CHECK(code_of(bench.store().keep_photo(file_with(bench.file("c.png"), told.chopped(1)))) == "photo_damaged");
}

TEST_CASE("the check finds a photo that is gone or was changed") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const KeptPhoto photo = got(bench.store().keep_photo(file_with(bench.file("a.jpg"), jpeg)));
  job.add(taken(photo));
  CheckReport report = got(check(bench.store()));
  CHECK(report.in_order());
  CHECK(report.photos == 1);

  const QString place = QString::fromStdString(bench.store().photo_path(photo.sha256));
  static_cast<void>(file_with(place, jpeg + "x"));
  report = got(check(bench.store()));
  REQUIRE(report.findings.size() == 1);
  CHECK(report.findings[0].code == "photo_changed");
  CHECK(report.findings[0].seq == std::optional<std::int64_t>(2));

  REQUIRE(QFile::remove(place));
  CHECK(got(check(bench.store())).findings.at(0).code == "photo_missing");
  static_cast<void>(got(bench.store().keep_photo(bench.file("a.jpg").toStdString())));
  CHECK(got(check(bench.store())).in_order());
}

}  // namespace shimwright::store
