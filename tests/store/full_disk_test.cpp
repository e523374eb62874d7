// A real small file system, filled to the brim: what is refused says why, all of before is there, and the same goes
// through once there is space again.
#include <QFile>
#include <QTemporaryDir>

#include "qt/small_disk.h"
#include "sample_photos.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

void is_there(Workbench& bench, const TestJob& job) {
  const auto look = got(Store::open(bench.path(), {Mode::look_only, "", monday_ms}));
  CHECK(got(look->load(job.id())).entries == job.state().entries);
}

template <class Content>
void is_told(const Result<Content>& outcome) {
  REQUIRE_FALSE(outcome);
  CHECK(outcome.error().code == "disk_full");
  CHECK(outcome.error().message.in_english() ==
        "The disk is full, so this was not saved; free some space and try again.");
}

std::string photo_beside(const QTemporaryDir& folder) {
  QFile file(folder.filePath("a.jpg"));
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(bare_jpeg(QByteArray(20000, 'j'))) == 20006);
  return file.fileName().toStdString();
}

}  // namespace

TEST_CASE("on a disk filled to the brim entries are refused, and the same go through when there is space") {
  const QTemporaryDir elsewhere;
  const shimwright::test::SmallDisk disk;
  if (!disk.is_mounted()) {
    return;
  }
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  for (int turn = 0; turn < 20; ++turn) {
    INFO("turn " << turn);
    const job::EntryBody body = job::Noted{std::nullopt, "Turn " + std::to_string(turn)};
    disk.fill();
    is_told(job.try_to_add({body}));
    is_told(bench.store().registers().put(Person{mk, "Mara Kern", "MK", std::nullopt, true}, by_mk()));
    is_there(bench, job);
    disk.make_space();
    job.add(body);
    is_there(bench, job);
  }
  bench.open();
  CHECK(got(check(bench.store())).in_order());
  CHECK(got(bench.store().load(job.id())).entries == job.state().entries);
}

TEST_CASE("on a disk filled to the brim a photo is refused whole, and kept when there is space") {
  const QTemporaryDir elsewhere;
  const shimwright::test::SmallDisk disk;
  if (!disk.is_mounted()) {
    return;
  }
  const std::string photo = photo_beside(elsewhere);
  Workbench bench;
  disk.fill();
  is_told(bench.store().keep_photo(photo));
  disk.make_space();
  const KeptPhoto kept = got(bench.store().keep_photo(photo));
  CHECK(kept.bytes == 20006);
  CHECK(QFile(QString::fromStdString(bench.store().photo_path(kept.sha256))).size() == 20006);
}

}  // namespace shimwright::store
