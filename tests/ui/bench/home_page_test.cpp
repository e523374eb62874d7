#include "shimwright/bench/home_page.h"

#include <QApplication>
#include <QRegularExpression>
#include <algorithm>
#include <catch2/catch.hpp>

#include "shimwright/widgets/parts.h"
#include "ui_bench.h"

using namespace shimwright;

namespace {

void show_page(QWidget& page) {
  page.resize(1366, 700);
  page.show();
  page.activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(&page));
}

QString all_words(const QWidget& page) {
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  QStringList words;
  for (const QLabel* each : page.findChildren<QLabel*>()) {
    words.append(each->text());
  }
  return words.join(QLatin1Char('\n'));
}

void open_many(test::UiBench& bench, int count) {
  for (int at = 0; at < count; ++at) {
    job::OpenJob open;
    open.number = std::to_string(3000 + at);
    open.vehicle_typed = "no number plate " + std::to_string(at);
    open.chassis_reason = "made up for the test";
    REQUIRE(bench.workbench().open_new(bench.sheet_hash(), bench.spec_hash(), open));
  }
}

}  // namespace

TEST_CASE("a job on the bench has its card, and its button takes it up by key and click") {
  test::UiBench bench;
  const std::string job = bench.go_to("engine-held");
  bench::HomePage page(bench.workbench());
  std::vector<std::string> taken;
  QObject::connect(&page, &bench::HomePage::take_up, &page, [&](const std::string& id) { taken.push_back(id); });
  page.refresh();
  show_page(page);
  page.take_focus();
  auto* button = page.findChild<widgets::Button*>("button-take-up-2041");
  REQUIRE(button != nullptr);
  CHECK(button->hasFocus());
  CHECK(button->height() >= 48);
  QTest::keyClick(button, Qt::Key_Return);
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(taken == std::vector<std::string>{job, job});
  CHECK(all_words(page).contains("Remove, make safe"));
  CHECK(all_words(page).contains("VIN ends 30417"));
}

TEST_CASE("new jobs come by Ctrl+N and by button, only while the page is seen") {
  test::UiBench bench;
  bench::HomePage page(bench.workbench());
  int asked = 0;
  QObject::connect(&page, &bench::HomePage::new_job, &page, [&] { ++asked; });
  page.refresh();
  show_page(page);
  page.take_focus();
  auto* button = page.findChild<widgets::Button*>("button-new-job");
  REQUIRE(button != nullptr);
  CHECK(button->hasFocus());
  QTest::keyClick(&page, Qt::Key_N, Qt::ControlModifier);
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(asked == 2);
  CHECK(all_words(page).contains("No job is open."));
}

TEST_CASE("Enter in the search field asks for what is typed, and for nothing where nothing is") {
  test::UiBench bench;
  bench::HomePage page(bench.workbench());
  std::vector<std::string> asked;
  QObject::connect(&page, &bench::HomePage::search, &page, [&](const std::string& text) { asked.push_back(text); });
  show_page(page);
  auto* field = page.findChild<QLineEdit*>("field-find-vehicle");
  REQUIRE(field != nullptr);
  field->setFocus();
  QTest::keyClick(field, Qt::Key_Return);
  QTest::keyClicks(field, " 30417 ");
  QTest::keyClick(field, Qt::Key_Return);
  CHECK(asked == std::vector<std::string>{"30417"});
}

TEST_CASE("the foot tells of the last verified backup") {
  test::UiBench bench;
  bench::HomePage page(bench.workbench());
  page.refresh();
  CHECK(all_words(page).contains("Every entry is on disk before it shows as saved."));
  CHECK(all_words(page).contains("No verified backup is known."));  // once
  CHECK_FALSE(all_words(page).contains("Last verified backup"));
  page.set_last_backup(bench.workbench().now());
  CHECK(all_words(page).contains("Last verified backup: today 09:10."));
  CHECK_FALSE(all_words(page).contains("No verified backup is known."));
}

TEST_CASE("a refresh shows what has changed and leaves the focus where it was") {
  test::UiBench bench;
  bench.go_to("large-gauge-fit");
  bench::HomePage page(bench.workbench());
  page.refresh();
  show_page(page);
  page.take_focus();
  REQUIRE(bench.workbench().send(job::Park{"levers and pivot", ""}));
  page.refresh();
  CHECK(all_words(page).contains("waits for: levers and pivot"));
  auto* button = page.findChild<widgets::Button*>("button-take-up-2041");
  REQUIRE(button != nullptr);
  CHECK(button->hasFocus());
}

TEST_CASE("of very many open jobs fifty have a card and the rest is counted") {
  test::UiBench bench;
  open_many(bench, 53);
  bench::HomePage page(bench.workbench());
  page.refresh();
  page.refresh();
  const auto cards = [&page] {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    return page.findChildren<QPushButton*>(QRegularExpression("button-take-up-.*")).size();
  };
  CHECK(cards() == 4);  // what is seen; nobody waits for the others
  CHECK(QTest::qWaitFor([&page] { return all_words(page).contains("3 more jobs are open"); }, 20000));
  CHECK(cards() == 50);
  CHECK(all_words(page).contains("chassis ends"));
}

TEST_CASE("what is off stands first and has the focus, what waits stands last, and Tab goes the same way") {
  test::UiBench bench;
  const std::string off = bench.go_to("engine-held");
  REQUIRE(bench.workbench().send(job::CheckStep{"engine-held", false, "no support at hand"}));
  open_many(bench, 2);  // 3000 and 3001, later ones
  REQUIRE(bench.workbench().send(job::Park{"levers and pivot", ""}));
  bench::HomePage page(bench.workbench());
  page.refresh();
  show_page(page);
  page.take_focus();
  std::vector<QString> way;
  std::vector<int> heights;
  for (int at = 0; at < 3; ++at) {
    REQUIRE(QApplication::focusWidget() != nullptr);
    way.push_back(QApplication::focusWidget()->objectName());
    heights.push_back(QApplication::focusWidget()->mapTo(&page, QPoint()).y());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  }
  CHECK(way == std::vector<QString>{"button-take-up-2041", "button-take-up-3000", "button-take-up-3001"});
  CHECK(std::is_sorted(heights.begin(), heights.end()));
}
