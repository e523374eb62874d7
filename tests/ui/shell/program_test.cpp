#include "shimwright/shell/program.h"

#include <QFile>
#include <QLineEdit>
#include <QPointer>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "come_up.h"
#include "sheets.h"
#include "shell_bench.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/units.h"

using namespace shimwright;
using test::named;

namespace {

struct Start {
  QTemporaryDir folder;
  shell::Settings settings{test::settings_file(folder.filePath("settings.ini"))};
  shell::Equipment equipment = test::plain_equipment(folder.path());
  std::unique_ptr<shell::Program> program;

  void start(const shell::StartWords& words = {}) {
    program.reset();
    program = std::make_unique<shell::Program>(settings, equipment);
    program->start(words);
  }
  void wait_for_main() {
    REQUIRE(program->main_window() != nullptr);
    test::come_up(*program->main_window());
  }
  [[nodiscard]] const QWidget& start_window() const { return *program->start_window(); }
  void begin_own() {
    start();
    for (const auto& [field, text] :
         {std::pair{"field-workshop", "Own"}, {"field-person", "Ada Bench"}, {"field-initials", "AB"}}) {
      QTest::keyClicks(named(start_window(), field), text);
    }
    test::press(start_window(), "button-begin");
    wait_for_main();
  }
};

}  // namespace

TEST_CASE("the first start begins the workshop's own store, and the next one opens it") {
  Start it;
  it.start();
  CHECK(it.program->main_window() == nullptr);
  CHECK(it.start_window().isVisible());
  CHECK_FALSE(QFile::exists(QString::fromStdString(it.equipment.places.own)));
  it.begin_own();
  CHECK_FALSE(it.start_window().isVisible());
  CHECK(named<QPushButton>(*it.program->main_window(), "button-person")->text() == "At the bench: AB");
  CHECK_FALSE(named(*it.program->main_window(), "mark-demo-workshop")->isVisible());
  it.start();
  it.wait_for_main();
  CHECK(it.program->start_window() == nullptr);
  CHECK_FALSE(QFile::exists(QString::fromStdString(it.equipment.places.demo)));
}

TEST_CASE("the first start tries the demonstration, which stays apart from the own store") {
  Start it;
  it.start();
  test::press(it.start_window(), "button-demo");
  it.wait_for_main();
  CHECK(named(*it.program->main_window(), "mark-demo-workshop")->isVisible());
  CHECK_FALSE(QFile::exists(QString::fromStdString(it.equipment.places.own)));
  it.start();
  it.wait_for_main();
  test::press(*it.program->main_window(), "button-settings");
  test::press(*it.program->main_window(), "button-other-store");
  REQUIRE(QTest::qWaitFor([&] { return it.program->start_window() != nullptr; }));
  CHECK(it.program->main_window() == nullptr);
  CHECK(it.start_window().isVisible());
}

TEST_CASE("the demonstration can be asked for, the first time and again") {
  Start it;
  it.equipment.pages = shell::page_table();
  shell::StartWords words;
  words.demo = true;
  for (int time = 0; time < 2; ++time) {
    it.start(words);
    it.wait_for_main();
    CHECK(named(*it.program->main_window(), "mark-demo-workshop")->isVisible());
    const auto take_up = it.program->main_window()->findChildren<QPushButton*>(QRegularExpression("button-take-up-.*"));
    CHECK_FALSE(take_up.isEmpty());
  }
  CHECK_FALSE(QFile::exists(QString::fromStdString(it.equipment.places.own)));
}

TEST_CASE("a locked store says who holds it and can be looked at") {
  Start it;
  it.begin_own();
  it.program.reset();
  auto other = store::Store::open(it.equipment.places.own, {store::Mode::read_write, "Rolf Tarn", 1795770000000});
  REQUIRE(other);
  it.start();
  CHECK(it.program->main_window() == nullptr);
  CHECK(named<QLabel>(it.start_window(), "hindrance")->text().contains("Rolf Tarn"));
  SECTION("looking only") {
    test::press(it.start_window(), "button-look");
    it.wait_for_main();
    CHECK(named(*it.program->main_window(), "notice-looks-only")->isVisible());
  }
  SECTION("trying again after it was closed there") {
    other->reset();
    test::press(it.start_window(), "button-retry");
    it.wait_for_main();
    CHECK(named(*it.program->main_window(), "notice-looks-only") == nullptr);
  }
  SECTION("breaking the lock") {
    test::press(it.start_window(), "button-break-lock");
    test::press(it.start_window(), "button-break-really");
    it.wait_for_main();
    other->reset();
    it.program.reset();
  }
}

TEST_CASE("a file that is no store is told in place") {
  Start it;
  QFile file(it.folder.filePath("letter.txt"));
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(QByteArray(5000, 'x'));
  file.close();
  it.start({file.fileName().toStdString(), false, false, false});
  CHECK(it.program->main_window() == nullptr);
  CHECK_FALSE(named<QLabel>(it.start_window(), "hindrance")->text().isEmpty());
  CHECK_FALSE(named(it.start_window(), "button-look")->isVisible());
}

TEST_CASE("the first page is asked in the language that is chosen, and keeps what was typed") {
  Start it;
  QStringList spoken;
  it.equipment.speak = [&spoken](const QString& language) { spoken.push_back(language); };
  it.start();
  QTest::keyClicks(named(it.start_window(), "field-workshop"), "Own");
  QTest::keyClicks(named(it.start_window(), "field-initials"), "AB");
  test::press(it.start_window(), "button-language-fr");
  QCoreApplication::processEvents();
  CHECK(spoken == QStringList{"fr"});
  CHECK(it.start_window().isVisible());
  CHECK(named<QLineEdit>(it.start_window(), "field-workshop")->text() == "Own");
  CHECK(named<QLineEdit>(it.start_window(), "field-initials")->text() == "AB");
  CHECK(named<QPushButton>(it.start_window(), "button-language-fr")->isChecked());
  CHECK(named(it.start_window(), "button-language-fr")->hasFocus());
}

TEST_CASE("the window comes up anew in other units and another language, over the same store") {
  Start it;
  QStringList spoken;
  it.equipment.speak = [&spoken](const QString& language) { spoken.push_back(language); };
  it.begin_own();
  spoken.clear();
  const QPointer<shell::MainWindow> before = it.program->main_window();
  it.settings.set_units({quantity::Unit::inch, quantity::Unit::newton_metre});
  it.settings.set_language("fr");
  CHECK(widgets::units_shown().length == quantity::Unit::millimetre);
  emit it.program->main_window()->renewal_wanted();
  QCoreApplication::processEvents();
  CHECK_FALSE(before);
  it.wait_for_main();
  CHECK(spoken == QStringList{"fr"});
  CHECK(widgets::units_shown().length == quantity::Unit::inch);
  CHECK(named<QPushButton>(*it.program->main_window(), "button-person")->text() == "At the bench: AB");
  CHECK(it.settings.last_store().toStdString() == it.equipment.places.own);
  widgets::show_in({});
}

TEST_CASE("the application is dressed once, before its first window") {
  Start it;
  int dressed = 0;
  it.equipment.dress = [&dressed](widgets::Scheme) { ++dressed; };
  it.begin_own();
  CHECK(dressed == 1);
}

TEST_CASE("the later issue of a sheet is brought once the window is there") {
  Start it;
  it.begin_own();
  const auto sheets = [&it] {
    auto store = store::Store::open(it.equipment.places.own, {store::Mode::look_only, "", 1795770000000});
    REQUIRE(store);
    auto kept = (*store)->registers().job_sheets();
    REQUIRE(kept);
    return *kept;
  };
  it.program.reset();
  QFile::remove(QString::fromStdString(it.equipment.places.own));
  {
    const job::Moment now{1795770000000, 60, false};
    auto store = store::Store::open(it.equipment.places.own, {store::Mode::read_write, "", now.at_ms});
    REQUIRE(store);
    std::string text = *cli::shipped_job_sheet("dry-pack-renewal");
    const std::string issue = R"("issue": 2)";
    REQUIRE(text.find(issue) != std::string::npos);
    text.replace(text.find(issue), issue.size(), R"("issue": 1)");
    REQUIRE((*store)->registers().add_job_sheet(text, {"", now}));
    REQUIRE((*store)->registers().put(
        store::Person{"01930000-0000-7000-8000-0000000000aa", "Ada Bench", "AB", std::nullopt, true}, {"", now}));
  }
  it.start();
  REQUIRE(it.program->main_window() != nullptr);
  CHECK(sheets().front().issue == 1);
  it.wait_for_main();
  CHECK(sheets().front().issue == 2);
}

TEST_CASE("closing the window ends the program") {
  Start it;
  it.begin_own();
  QSignalSpy finished(it.program.get(), &shell::Program::finished);
  it.program->main_window()->close();
  CHECK(finished.count() == 1);
}

TEST_CASE(
    "a damaged store: its last whole backup takes its place at one press, the damaged file is kept, the window opens") {
  Start it;
  it.begin_own();
  const QString own = QString::fromStdString(it.equipment.places.own);
  const QString backup = it.settings.backup_folder() + "/monday.shimwright";
  REQUIRE(store::back_up(it.equipment.places.own, backup.toStdString()));
  it.program.reset();
  QFile file(own);
  REQUIRE(file.resize(file.size() - 4096));
  it.start();
  CHECK(it.program->main_window() == nullptr);
  auto* put_back = named<QPushButton>(it.start_window(), "button-put-back");
  REQUIRE(QTest::qWaitFor([&] { return put_back->isVisible(); }, 60000));
  put_back->click();
  REQUIRE(QTest::qWaitFor([&] { return it.program->main_window() != nullptr; }, 60000));
  it.wait_for_main();
  CHECK_FALSE(it.start_window().isVisible());
  CHECK(QFile::exists(own + ".damaged-1"));
  CHECK(named<QPushButton>(*it.program->main_window(), "button-person")->text() == "At the bench: AB");
}

TEST_CASE("a backup that cannot be put in the place of a damaged store says why") {
  Start it;
  it.begin_own();
  const QString own = QString::fromStdString(it.equipment.places.own);
  const QString backup = it.settings.backup_folder() + "/monday.shimwright";
  REQUIRE(store::back_up(it.equipment.places.own, backup.toStdString()));
  it.program.reset();
  QFile file(own);
  REQUIRE(file.resize(file.size() - 4096));
  it.start();
  auto* put_back = named<QPushButton>(it.start_window(), "button-put-back");
  REQUIRE(QTest::qWaitFor([&] { return put_back->isVisible(); }, 60000));
  REQUIRE(QFile::remove(backup));
  put_back->click();
  auto* refused = named<QLabel>(it.start_window(), "hindrance-refused");
  REQUIRE(QTest::qWaitFor([&] { return refused->isVisible(); }, 60000));
  CHECK(refused->text().contains("The backup was not put there."));
}

TEST_CASE("a store from which all have left asks for a person, and keeps its workshop") {
  Start it;
  it.begin_own();
  it.program.reset();
  {
    // The register refuses that the last one leaves; a store of before may have it.
    auto base = QSqlDatabase::addDatabase("QSQLITE", "leaving");
    base.setDatabaseName(QString::fromStdString(it.equipment.places.own));
    REQUIRE(base.open());
    REQUIRE(QSqlQuery(base).exec("UPDATE person SET active = 0"));
  }
  QSqlDatabase::removeDatabase("leaving");
  it.start();
  CHECK(it.program->main_window() == nullptr);
  CHECK_FALSE(named(it.start_window(), "field-workshop")->isVisible());
  QTest::keyClicks(named(it.start_window(), "field-person"), "Rui Tavares");
  QTest::keyClicks(named(it.start_window(), "field-initials"), "RT");
  test::press(it.start_window(), "button-begin");
  it.wait_for_main();
  CHECK(named<QPushButton>(*it.program->main_window(), "button-person")->text() == "At the bench: RT");
  const auto store = store::Store::open(it.equipment.places.own, {store::Mode::look_only, "", 1});
  REQUIRE(store);
  CHECK((**(*store)->registers().workshop()).name == "Own");
}

TEST_CASE("another program's file is offered no backup of ours") {
  Start it;
  const QString other = it.folder.filePath("other.shimwright");
  QFile file(other);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("a text that is no store at all, long enough to be looked at");
  file.close();
  shell::StartWords words;
  words.store = other.toStdString();
  it.start(words);
  CHECK(named(it.start_window(), "hindrance")->isVisible());
  CHECK_FALSE(named(it.start_window(), "rescue")->isVisible());
}

TEST_CASE("back to a backup: the window lets go of the store, and opens again with the backup") {
  Start it;
  it.equipment.pages.back().make = [](const shell::PageHouse& house) {
    auto* page = widgets::child_of<widgets::Button>(house.parent, QStringLiteral("restore"));
    page->setObjectName(QStringLiteral("button-restore"));
    QObject::connect(page, &QPushButton::clicked, page,
                     [page, links = house.links] { links.restore(page->property("backup").toString()); });
    shell::PluggedPage plugged;
    plugged.widget = page;
    return plugged;
  };
  it.begin_own();
  const QString own = QString::fromStdString(it.equipment.places.own);
  const QString backup = it.settings.backup_folder() + "/monday.shimwright";
  REQUIRE(store::back_up(it.equipment.places.own, backup.toStdString()));
  const auto restore = [&](const QString& from) {
    auto* before = it.program->main_window();
    REQUIRE(before->go(shell::PageName::workshop));
    auto* button = named<QPushButton>(*before, "button-restore");
    button->setProperty("backup", from);
    button->click();
    REQUIRE(QTest::qWaitFor([&] { return it.program->start_window()->isVisible(); }, 60000));
    REQUIRE(QTest::qWaitFor([&] { return it.program->main_window() != nullptr; }, 60000));
    it.wait_for_main();
    QString all;
    for (const QLabel* each : it.program->main_window()->findChildren<QLabel*>()) {
      all += each->text() + '\n';
    }
    return all;
  };
  CHECK(restore(backup).contains("This is the backup. Jobs: 0"));
  CHECK(QFile::exists(own + ".before-restore-1"));
  CHECK(restore(own).contains("This is the store itself"));
  CHECK_FALSE(QFile::exists(own + ".before-restore-2"));
}
