#include "shimwright/store/photo_shelf.h"

#include <atomic>

#include <QDir>
#include <QFile>

#include "exchange.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

/// Two jobs, the first with two photos that the second has too, and a backup.
struct Shelf {
  Workbench bench;
  TestJob first{bench, "10", "2026-0147"};
  TestJob second{bench, "20", "2026-0148"};
  std::vector<KeptPhoto> photos;
  std::string backup = bench.file("backups/monday.sqlite").toStdString();

  Shelf() {
    first.open();
    second.open();
    for (int number = 1; number <= 2; ++number) {
      put_file(bench.file("a.jpg"), tiny_photo(number));
      photos.push_back(got(bench.store().keep_photo(bench.file("a.jpg").toStdString())));
      take(first, photos.back());
    }
    take(second, photos.back());
    static_cast<void>(got(back_up(bench.path(), backup)));
  }
  static void take(TestJob& job, const KeptPhoto& photo) {
    job.add(job::PhotoTaken{{"received-photos", 1}, photo.sha256, photo.media_type, photo.bytes, ""});
  }
  [[nodiscard]] QString place(std::size_t number) {
    return QString::fromStdString(bench.store().photo_path(photos[number].sha256));
  }
  [[nodiscard]] MissingPhotos missing() const { return got(missing_photos(bench.path())); }
};

}  // namespace

TEST_CASE("where every photo is there none is missing") {
  Shelf shelf;
  const MissingPhotos found = shelf.missing();
  CHECK(found.photos == 2);
  CHECK(found.missing == 0);
  CHECK(found.jobs.empty());
}

TEST_CASE("a photo that is gone, cut off or no file is missing, in every job that names it") {
  Shelf shelf;
  SECTION("gone") {
    REQUIRE(QFile::remove(shelf.place(1)));
  }
  SECTION("cut off") {
    REQUIRE(QFile::resize(shelf.place(1), 3));
  }
  SECTION("a folder of that name") {
    REQUIRE(QFile::remove(shelf.place(1)));
    REQUIRE(QDir().mkpath(shelf.place(1)));
  }
  const MissingPhotos found = shelf.missing();
  CHECK(found.missing == 1);
  CHECK(found.jobs == std::vector<std::string>{"2026-0147", "2026-0148"});
}

TEST_CASE("what a backup has is brought back, and what it has not is counted") {
  Shelf shelf;
  REQUIRE(QFile::remove(shelf.place(0)));
  REQUIRE(QFile::resize(shelf.place(1), 3));
  REQUIRE(QFile::remove(shelf.bench.file("backups/photos/" + shelf.place(0).section('/', -2))));
  const PhotosBrought brought = got(bring_back_photos(shelf.bench.path(), shelf.backup));
  CHECK(brought.copied == 1);
  CHECK(brought.there == 0);
  CHECK(brought.gone == 1);
  CHECK(shelf.missing().missing == 1);
  CHECK(got(check(shelf.bench.store())).whole_but_for_photos());
}

TEST_CASE("looking for photos and bringing them back can be stopped, and refuse what is no store") {
  Shelf shelf;
  REQUIRE(QFile::remove(shelf.place(0)));
  const std::atomic<bool> stop{true};
  CHECK(code_of(missing_photos(shelf.bench.path(), {&stop, {}})) == "stopped");
  CHECK(code_of(bring_back_photos(shelf.bench.path(), shelf.backup, {&stop, {}})) == "stopped");
  CHECK(shelf.missing().missing == 1);
  CHECK(code_of(missing_photos("here.sqlite")) == "path_not_absolute");
  CHECK(code_of(bring_back_photos(shelf.bench.path(), "here.sqlite")) == "path_not_absolute");
  CHECK(code_of(missing_photos(shelf.bench.file("nowhere.sqlite").toStdString())) == "cannot_open");
}

}  // namespace shimwright::store
