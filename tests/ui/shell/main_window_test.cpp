#include "shimwright/shell/main_window.h"

#include <QSignalSpy>
#include <catch2/catch.hpp>

#include "come_up.h"
#include "shell_bench.h"

using namespace shimwright;
using shell::PageName;
using test::named;

namespace {

struct WindowBench {
  test::UiBench bench;
  shell::Settings settings{test::settings_file(bench.file("settings.ini"))};
  shell::Equipment equipment = test::plain_equipment(bench.file("data"));
  std::unique_ptr<shell::MainWindow> window;

  WindowBench() {
    settings.use_store(bench.store().path());
    open();
  }
  void open() {
    window = std::make_unique<shell::MainWindow>(bench.workbench(), settings, equipment);
    test::come_up(*window);
  }
  [[nodiscard]] std::string person() { return bench.workbench().person().initials; }
};

}  // namespace

TEST_CASE("places by keys") {
  WindowBench it;
  CHECK(it.window->page() == PageName::home);
  QTest::keyClick(it.window.get(), Qt::Key_2, Qt::AltModifier);
  CHECK(it.window->page() == PageName::past_jobs);
  QTest::keyClick(it.window.get(), Qt::Key_3, Qt::ControlModifier);
  CHECK(it.window->page() == PageName::workshop);
  CHECK(named<QPushButton>(*it.window, "button-workshop")->isChecked());
  QTest::keyClick(it.window.get(), Qt::Key_1, Qt::AltModifier);
  CHECK(it.window->page() == PageName::home);
  QTest::keyClick(it.window.get(), Qt::Key_Comma, Qt::ControlModifier);
  CHECK_FALSE(it.window->page());
  test::press(*it.window, "button-past-jobs");
  CHECK(it.window->page() == PageName::past_jobs);
}

TEST_CASE("the person is switched by F9 and a digit, and comes back at the next start") {
  WindowBench it;
  auto* field = named(*it.window, "typed");
  field->setFocus();
  QTest::keyClick(it.window.get(), Qt::Key_F9);
  REQUIRE(named(*it.window, "person-row")->isVisible());
  QTest::keyClick(it.window->focusWidget(), Qt::Key_3);
  CHECK(it.person() == it.bench.workbench().persons()[2].initials);
  CHECK(it.person() != it.bench.workbench().persons()[0].initials);
  CHECK_FALSE(named(*it.window, "person-row")->isVisible());
  CHECK(it.window->focusWidget() == field);
  const std::string chosen = it.person();
  CHECK(named<QPushButton>(*it.window, "button-person")->text() == "At the bench: " + QString::fromStdString(chosen));
  it.window.reset();
  it.bench.workbench().set_person(it.bench.workbench().persons().front());
  it.open();
  CHECK(it.person() == chosen);
}

TEST_CASE("F9 again leaves the person as it is") {
  WindowBench it;
  const std::string before = it.person();
  QTest::keyClick(it.window.get(), Qt::Key_F9);
  QTest::keyClick(it.window.get(), Qt::Key_F9);
  CHECK_FALSE(named(*it.window, "person-row")->isVisible());
  CHECK(it.person() == before);
}

TEST_CASE("a page with something typed that is refused is not left, and the window not closed over it") {
  WindowBench it;
  auto* field = named<QLineEdit>(*it.window, "typed");
  QTest::keyClicks(field, "x");
  QTest::keyClick(it.window.get(), Qt::Key_2, Qt::AltModifier);
  CHECK(it.window->page() == PageName::home);
  CHECK(named<QPushButton>(*it.window, "button-bench")->isChecked());
  CHECK(field->text() == "x");
  QSignalSpy closed(it.window.get(), &shell::MainWindow::closed);
  CHECK_FALSE(it.window->close());
  CHECK(it.window->isVisible());
  CHECK(closed.count() == 0);
  SECTION("mended, it closes") {
    QTest::keyClick(field, Qt::Key_Backspace);
    CHECK(it.window->close());
    CHECK(closed.count() == 1);
  }
  SECTION("or a person says so") {
    test::press(*it.window, "button-notice-typed");
    CHECK(closed.count() == 1);
    CHECK_FALSE(it.window->isVisible());
  }
}

TEST_CASE("what is typed on a page that was left comes back to the front before the window closes") {
  WindowBench it;
  REQUIRE(it.window->go(PageName::new_job));
  named(*it.window, "plain-page")->setProperty("unsent", true);
  REQUIRE(it.window->go(PageName::home));
  CHECK_FALSE(it.window->close());
  CHECK(it.window->page() == PageName::new_job);
  test::press(*it.window, "button-notice-typed");
  CHECK_FALSE(it.window->isVisible());
}

TEST_CASE("another store is not opened over what is typed") {
  WindowBench it;
  REQUIRE(it.window->go(PageName::new_job));
  named(*it.window, "plain-page")->setProperty("unsent", true);
  REQUIRE(it.window->go(PageName::home));
  QSignalSpy wanted(it.window.get(), &shell::MainWindow::store_wanted);
  test::press(*it.window, "button-settings");
  QSignalSpy renewal(it.window.get(), &shell::MainWindow::renewal_wanted);
  test::press(*it.window, "button-language-fr");
  test::press(*it.window, "button-renew-window");
  CHECK(renewal.count() == 0);
  CHECK(it.window->page() == PageName::new_job);
  test::press(*it.window, "button-settings");
  test::press(*it.window, "button-other-store");
  CHECK(wanted.count() == 0);
  CHECK(it.window->page() == PageName::new_job);
  CHECK(named(*it.window, "notice-typed")->isVisible());
  named(*it.window, "plain-page")->setProperty("unsent", false);
  test::press(*it.window, "button-settings");
  test::press(*it.window, "button-renew-window");
  CHECK(renewal.count() == 1);
  test::press(*it.window, "button-other-store");
  CHECK(wanted.count() == 1);
}

TEST_CASE("the window comes back as large as it was") {
  WindowBench it;
  it.window->resize(781, 603);
  it.window->close();
  it.open();
  CHECK(it.window->size() == QSize(781, 603));
}

TEST_CASE("a job stands in the top bar while it is in hand") {
  WindowBench it;
  const std::string job = it.bench.go_to("odometer");
  REQUIRE(it.window->go(PageName::job, job));
  CHECK(named<QLabel>(*it.window, "heading-job")->text() == "Job 2041");
  CHECK(named(*it.window, "mark-demonstration")->isVisible());
  CHECK_FALSE(named(*it.window, "button-bench")->isVisible());
  test::press(*it.window, "button-name");
  CHECK(it.window->page() == PageName::home);
  CHECK(named(*it.window, "button-bench")->isVisible());
  CHECK(named(*it.window, "mark-demo-workshop")->isVisible());
}

TEST_CASE("a page's question goes to the page that answers it") {
  WindowBench it;
  test::press(*it.window, "button-search");
  CHECK(it.window->page() == PageName::past_jobs);
  const auto pages = it.window->findChildren<QWidget*>("plain-page");
  REQUIRE(pages.size() == 1);
  CHECK(pages.front()->property("about").toString() == "417");
}

TEST_CASE("the backup of the day is told to the page that shows it") {
  WindowBench it;
  it.window->start_care();
  auto* home = named(*it.window, "typed-page");
  REQUIRE(QTest::qWaitFor([&] { return home->property("backup").isValid(); }, 20000));
  CHECK(it.settings.last_backup());
}

TEST_CASE("a backup that fails is told and stops nothing") {
  WindowBench it;
  QFile in_the_way(it.bench.file("no-folder"));
  REQUIRE(in_the_way.open(QIODevice::WriteOnly));
  it.settings.set_backup_folder(it.bench.file("no-folder"));
  it.window->start_care();
  REQUIRE(QTest::qWaitFor([&] { return named(*it.window, "notice-backup") != nullptr; }, 20000));
  CHECK(it.window->go(PageName::past_jobs));
  CHECK(named(*it.window, "notice-backup")->isVisible());
}

TEST_CASE("dark is put on at once") {
  WindowBench it;
  std::optional<widgets::Scheme> worn;
  it.equipment.dress = [&](widgets::Scheme scheme) { worn = scheme; };
  QTest::keyClick(it.window.get(), Qt::Key_Comma, Qt::ControlModifier);
  test::press(*it.window, "button-dark");
  CHECK(worn == widgets::Scheme::dark);
}
