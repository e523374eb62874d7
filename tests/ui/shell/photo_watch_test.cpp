#include "shimwright/shell/photo_watch.h"

#include <QDir>
#include <QDirIterator>
#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;

namespace {

/// A job with a photo, and its backup.
struct Watched {
  test::UiBench bench;
  std::string job = bench.go_to("battery-off");
  QString folder = QFileInfo(QString::fromStdString(bench.store().path())).dir().filePath("photos");
  QString backup = bench.file("backups/monday.shimwright");
  shell::Settings settings{test::settings_file(bench.file("settings.ini"))};
  shell::Notices notices;
  shell::PhotoWatch watch{bench.store(), settings, notices};

  Watched() { REQUIRE(store::back_up(bench.store().path(), backup.toStdString())); }
  void lose() const { REQUIRE(QDir(folder).removeRecursively()); }
  void look() {
    watch.look();
    end();
  }
  void end() {
    REQUIRE(QTest::qWaitFor([&] { return !watch.works(); }, 20000));
  }
  [[nodiscard]] QString told() const {
    const auto* notice = test::named(notices, "notice-photos");
    return notice == nullptr ? QString() : notice->accessibleName();
  }
};

}  // namespace

TEST_CASE("nothing is said of photos that are there") {
  Watched it;
  it.look();
  CHECK(it.told().isEmpty());
}

TEST_CASE("photos that are gone are told with their job, and come back from the last backup by one press") {
  Watched it;
  it.settings.set_last_backup({1795770000000, it.backup});
  it.lose();
  it.look();
  CHECK(it.told().contains("They are of job 2041"));
  test::press(it.notices, "button-notice-photos");
  it.end();
  CHECK(it.told().contains("None is missing now."));
  CHECK(QDirIterator(it.folder, QDir::Files, QDirIterator::Subdirectories).hasNext());
  test::press(it.notices, "button-notice-photos");
  it.look();
  CHECK(it.told().isEmpty());
}

TEST_CASE("what the backup has lost too is told") {
  Watched it;
  it.settings.set_last_backup({1795770000000, it.backup});
  it.lose();
  REQUIRE(QDir(it.bench.file("backups/photos")).removeRecursively());
  it.look();
  test::press(it.notices, "button-notice-photos");
  it.end();
  CHECK(it.told().contains("Not in the backup either: "));
}

TEST_CASE("without a backup photos that are gone are told, and nothing is offered") {
  Watched it;
  it.lose();
  it.look();
  CHECK_FALSE(it.told().isEmpty());
  auto* button = test::named<QAbstractButton>(it.notices, "button-notice-photos");
  REQUIRE(button != nullptr);
  CHECK(button->text() == "Understood");
}

TEST_CASE("a store that cannot be looked at is told") {
  Watched it;
  REQUIRE(QFile::rename(QString::fromStdString(it.bench.store().path()), it.bench.file("elsewhere")));
  it.look();
  CHECK_FALSE(it.told().isEmpty());
  REQUIRE(QFile::rename(it.bench.file("elsewhere"), QString::fromStdString(it.bench.store().path())));
}
