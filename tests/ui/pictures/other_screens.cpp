#include <QSettings>
#include <QTemporaryDir>
#include <QAbstractButton>
#include <QDir>
#include <QFile>
#include <QTest>
#include <catch2/catch.hpp>

#include "camera.h"
#include "shimwright/shell/stores.h"
#include "shimwright/store/backup.h"

using namespace shimwright;

namespace {

/// The program over the demonstration's workshop.
struct ProgramStudio {
  test::Camera camera;
  QTemporaryDir folder;
  shell::Settings settings{std::make_unique<QSettings>(folder.filePath("settings.ini"), QSettings::IniFormat)};
  shell::Equipment equipment = test::Camera::equipment(folder.path());
  shell::Program program{settings, equipment};

  void start(const shell::StartWords& words = {}) {
    program.start(words);
    if (program.main_window() != nullptr) {
      test::open_at_smallest(*program.main_window());
    } else {
      test::open_at_smallest(*program.start_window());
    }
  }
  QWidget& demo() {
    start();
    test::press(*program.start_window(), "button-demo");
    REQUIRE(program.main_window() != nullptr);
    test::open_at_smallest(*program.main_window());
    return *program.main_window();
  }
};

QStringList names_of_buttons(const QWidget& window, const QString& beginning) {
  QStringList names;
  for (const auto* button : window.findChildren<QAbstractButton*>()) {
    if (button->objectName().startsWith(beginning)) {
      names << button->objectName();
    }
  }
  return names;
}

}  // namespace

TEST_CASE("first-start") {
  ProgramStudio studio;
  studio.start();
  studio.camera.shoot(*studio.program.start_window(), "first-start");
}

TEST_CASE("hindrance-locked") {
  ProgramStudio studio;
  const std::string path = studio.equipment.places.own;
  REQUIRE(QDir().mkpath(studio.folder.filePath("own")));
  auto other = store::Store::open(path, {store::Mode::read_write, "Rolf Tarn", 1795770000000});
  REQUIRE(other);
  studio.start();
  studio.camera.shoot(*studio.program.start_window(), "hindrance-locked");
}

TEST_CASE("hindrance-damaged") {
  ProgramStudio studio;
  const std::string& path = studio.equipment.places.own;
  REQUIRE(shell::make_demo_workshop(path, studio.equipment.clock()));
  studio.settings.use_store(path);
  const QString backup = studio.settings.backup_folder() + "/workshop-day-1.shimwright";
  REQUIRE(store::back_up(path, backup.toStdString()));
  QFile file(QString::fromStdString(path));
  REQUIRE(file.resize(file.size() - 4096));
  studio.start();
  QWidget& window = *studio.program.start_window();
  auto* put_back = window.findChild<QPushButton*>("button-put-back");
  REQUIRE(QTest::qWaitFor([&] { return put_back->isVisible(); }, 60000));
  studio.camera.shoot(window, "hindrance-damaged");
}

TEST_CASE("workshop-data-checked workshop-data-below") {
  ProgramStudio studio;
  QWidget& window = studio.demo();
  QTest::keyClick(&window, Qt::Key_3, Qt::AltModifier);
  test::press(window, "section-data");
  test::press(window, "button-check");
  auto* check = window.findChild<QPushButton*>("button-check");
  REQUIRE(QTest::qWaitFor([&] { return check->isEnabled(); }, 60000));
  studio.camera.shoot(window, "workshop-data-checked");
  QTest::keyClick(&window, Qt::Key_End);
  studio.camera.shoot(window, "workshop-data-below");
}

TEST_CASE("bench-home new-job new-job-with-o new-job-known past-jobs past-jobs-found settings") {
  ProgramStudio studio;
  QWidget& window = studio.demo();
  studio.camera.shoot(window, "bench-home");
  test::press(window, "button-new-job");
  studio.camera.shoot(window, "new-job");
  test::type(window, "field-vehicle", "TESTVNO09TA030417");
  studio.camera.shoot(window, "new-job-with-o");
  test::press(window, "button-take-suggestion");
  studio.camera.shoot(window, "new-job-known");
  QTest::keyClick(&window, Qt::Key_2, Qt::AltModifier);
  studio.camera.shoot(window, "past-jobs");
  test::type(window, "field-search", "417");
  studio.camera.shoot(window, "past-jobs-found");
  QTest::keyClick(&window, Qt::Key_Comma, Qt::ControlModifier);
  studio.camera.shoot(window, "settings");
}

TEST_CASE("record") {
  test::JobStudio studio;
  studio.at("");
  studio.press("button-record");
  studio.shoot("record");
}

TEST_CASE("workshop workshop-spec-values") {
  ProgramStudio studio;
  QWidget& window = studio.demo();
  QTest::keyClick(&window, Qt::Key_3, Qt::AltModifier);
  for (const QString& section : names_of_buttons(window, "section-")) {
    test::press(window, section);
    studio.camera.shoot(window, "workshop-" + section.mid(8));
  }
  test::press(window, "section-spec-sheets");
  test::press(window, names_of_buttons(window, "button-open-").front());
  studio.camera.shoot(window, "workshop-spec-values");
}
