#include <QAbstractButton>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>

#include "camera.h"
#include "earlier_job.h"
#include "shimwright/shell/stores.h"
#include "shimwright/store/backup.h"
#include "worked.h"

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

/// Finished jobs on other vehicles over some months, so that the figures have something to say.
void fill_a_year(test::UiBench& bench) {
  int number = 2000;
  for (const char* month : {"02", "05", "05", "07", "07", "07", "08", "10", "10"}) {
    const QByteArray text = QByteArray::number(++number);
    bench.go_through("01-smooth-day", {{"\"2040\"", '"' + text + '"'},
                                       {"TESTVN006MA021188", "TESTVN006MA02" + text},
                                       {"2026-11-20T", "2026-" + QByteArray(month) + "-20T"}});
  }
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
  test::scroll_to_end(window);
  studio.camera.shoot(window, "workshop-data-below");
}

TEST_CASE("bench-home new-job new-job-with-o new-job-known past-jobs past-jobs-found settings settings-changed") {
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
  for (const auto& [scheme, button] :
       {std::pair{widgets::Scheme::dark, "button-dark"}, {widgets::Scheme::light, "button-light"}}) {
    test::press(window, button);
    studio.camera.shoot_in(window, "settings", scheme);
  }
  test::press(window, "button-length-in");
  studio.camera.shoot(window, "settings-changed");
}

TEST_CASE("seal") {
  test::JobStudio studio;
  studio.at("sign-checker", 1);
  studio.press("button-record");
  studio.shoot("seal");
}

TEST_CASE("vehicle vehicle-below vehicle-compared past-jobs-forgiven figures figures-below figure-door") {
  test::JobStudio studio;
  fill_a_year(studio.bench());
  test::fit_the_pack_before(studio.bench());
  studio.at("lower-float", 6);
  studio.key(Qt::Key_2, Qt::AltModifier);
  studio.type("field-search", "TA030471");
  studio.shoot("past-jobs-forgiven");
  studio.press("button-vehicle-2041");
  test::wait_for_work(studio.window());
  studio.shoot("vehicle");
  studio.key(Qt::Key_End);
  studio.shoot("vehicle-below");
  studio.press("button-compare");
  studio.shoot("vehicle-compared");
  studio.key(Qt::Key_3, Qt::AltModifier);
  studio.press("section-figures");
  auto* read = studio.window().findChild<QAbstractButton*>("button-read-figures");
  REQUIRE(QTest::qWaitFor([&] { return read->isEnabled(); }, 60000));
  studio.shoot("figures");
  studio.key(Qt::Key_End);
  studio.shoot("figures-below");
  studio.press("figure-Pack off again");
  studio.shoot("figure-door");
}

TEST_CASE("record") {
  test::JobStudio studio;
  studio.at("");
  studio.press("button-record");
  studio.shoot("record");
}

namespace {

void shoot_job_sheet(ProgramStudio& studio, QWidget& window) {
  test::press(window, "section-job-sheets");
  test::press(window, "button-open-dry-pack-renewal");
  studio.camera.shoot(window, "job-sheet-steps");
  test::press(window, "button-next-issue");
  test::scroll_to_end(window);
  studio.camera.shoot(window, "job-sheet-stages");
  constexpr int most_parts = 60;
  const auto hazard = [&window]() -> QWidget* {
    for (auto* each : window.findChildren<QLineEdit*>()) {
      if (each->isVisible() && each->objectName().contains("/cautions/")) {
        return each;
      }
    }
    return nullptr;
  };
  for (int part = 0; part < most_parts && hazard() == nullptr; ++part) {
    test::press(window, "button-next-part");
  }
  REQUIRE(hazard() != nullptr);
  hazard()->setFocus();
  studio.camera.shoot(window, "job-sheet-caution");
  // From where the first caution is, to the next stage.
  for (const int step : {8, 9, 10, 11, 12, 13, 14}) {
    test::press(window, QStringLiteral("button-down-/stages/0/steps/%1").arg(step));
  }
  studio.camera.shoot(window, "job-sheet-moved");
}

}  // namespace

TEST_CASE(
    "workshop workshop-spec-values sheet-empty sheet-half-filled sheet-faults sheets-being-written sheet-compared "
    "job-sheet-steps job-sheet-stages job-sheet-caution job-sheet-moved") {
  ProgramStudio studio;
  QWidget& window = studio.demo();
  QTest::keyClick(&window, Qt::Key_3, Qt::AltModifier);
  for (const QString& section : names_of_buttons(window, "section-")) {
    test::press(window, section);
    studio.camera.shoot(window, "workshop-" + section.mid(8));
  }
  test::press(window, "section-spec-sheets");
  test::press(window, "button-open-D7");
  studio.camera.shoot(window, "workshop-spec-values");
  test::press(window, "button-next-issue");
  test::press(window, "button-next-part");
  test::type(window, "field-/lower/float/least_mm", "0.30");
  test::type(window, "field-/lower/float/source", "own service information, edition 4, invented");
  test::press(window, "button-make-issue");
  test::press(window, "button-compare-3");  // the shipped issue
  studio.camera.shoot(window, "sheet-compared");
  test::press(window, "button-back-to-issue");
  test::press(window, "button-all-spec-sheets");
  test::press(window, "button-new-sheet");
  studio.camera.shoot(window, "sheet-empty");
  test::type(window, "field-/gearbox", "K9");
  test::press(window, "button-next-part");
  test::type(window, "field-/lower/tray/name", "large K9");
  test::type(window, "field-/lower/gauge_fit/snug_band_mm", "0,05");
  test::type(window, "field-/lower/float/least_mm", "0,2,5");
  QTest::keyClick(window.focusWidget(), Qt::Key_Return);
  studio.camera.shoot(window, "sheet-half-filled");
  test::press(window, "button-make-issue");
  studio.camera.shoot(window, "sheet-faults");
  test::press(window, "button-leave-draft");
  studio.camera.shoot(window, "sheets-being-written");
  shoot_job_sheet(studio, window);
}

TEST_CASE("workshop-shim workshop-repeat-test workshop-person workshop-feel-test") {
  ProgramStudio studio;
  QWidget& window = studio.demo();
  QTest::keyClick(&window, Qt::Key_3, Qt::AltModifier);
  const auto read = [&window](const QStringList& readings) {
    for (const QString& each : readings) {
      test::type(window, "field-reading", each);
      QTest::keyClick(window.focusWidget(), Qt::Key_Return);
    }
  };
  test::press(window, "section-trays");
  test::press(window, names_of_buttons(window, "row-large D7-").front());
  read({"1.301", "1.303", "1.302"});
  studio.camera.shoot(window, "workshop-shim");
  test::press(window, "button-leave");
  test::press(window, "section-instruments");
  test::press(window, "row-dial 2");
  studio.camera.shoot(window, "workshop-instrument");
  test::press(window, "button-repeat-test");
  read({"0.50", "0.51", "0.50", "0.49", "0.50", "0.51", "0.50"});
  studio.camera.shoot(window, "workshop-repeat-test");
  test::press(window, "button-leave");
  test::press(window, "section-people");
  test::press(window, "row-MK");
  studio.camera.shoot(window, "workshop-person");
  test::press(window, "button-feel-test");
  test::type(window, "field-step", "0.05");
  read({"1.65", "1.65", "1.70", "1.65", "1.60"});
  studio.camera.shoot(window, "workshop-feel-test");
}
