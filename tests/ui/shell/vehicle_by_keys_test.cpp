// From a search to a vehicle, its record and back, and from a figure to its jobs, by keys alone, in every language.
#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>
#include <catch2/catch.hpp>

#include "earlier_job.h"
#include "shimwright/shell/languages.h"
#include "window_bench.h"
#include "worked.h"

using namespace shimwright;

namespace {

void press_key(const test::WindowBench& it, Qt::Key key) {
  QTest::keyClick(it.window->focusWidget(), key);
  test::wait_for_work(*it.window);
  test::settle();
}

void enter_on(const test::WindowBench& it, const QString& name) {
  for (auto* each : it.window->findChildren<QAbstractButton*>()) {
    if (each->objectName().startsWith(name) && each->isVisible()) {
      each->setFocus();
      press_key(it, Qt::Key_Return);
      return;
    }
  }
  FAIL("no button " << name.toStdString());
}

}  // namespace

TEST_CASE("a vehicle, its record and the way back, by keys in every language") {
  for (const shell::Language& language : shell::languages()) {
    INFO(language.name.toStdString());
    const shell::Spoken spoken(language.code);
    test::WindowBench it;
    test::fit_the_pack_before(it.bench);
    it.bench.go_to("lower-float", 6);
    it.open();
    QTest::keyClick(it.window.get(), Qt::Key_2, Qt::AltModifier);
    test::settle();
    QTest::keyClicks(it.window->findChild<QLineEdit*>("field-search"), "TA030471");
    test::settle();
    it.window->findChild<QLineEdit*>("field-search")->setFocus();
    for (const Qt::Key key : {Qt::Key_Down, Qt::Key_Right, Qt::Key_Right, Qt::Key_Return}) {
      press_key(it, key);
    }
    REQUIRE(it.window->page() == shell::PageName::vehicle);
    enter_on(it, "life-1588");
    REQUIRE(it.window->page() == shell::PageName::record);
    press_key(it, Qt::Key_Escape);
    REQUIRE(it.window->page() == shell::PageName::vehicle);
    enter_on(it, "button-compare");
    press_key(it, Qt::Key_Escape);
    CHECK(it.window->page() == shell::PageName::vehicle);
    press_key(it, Qt::Key_Escape);
    REQUIRE(it.window->page() == shell::PageName::past_jobs);
    CHECK(it.window->findChild<QLineEdit*>("field-search")->text() == "TA030471");
    enter_on(it, "button-vehicle-2041");
    enter_on(it, "button-new-job");
    CHECK(it.window->page() == shell::PageName::new_job);
  }
}

TEST_CASE("a figure opens its jobs among the past jobs, by keys in every language") {
  for (const shell::Language& language : shell::languages()) {
    INFO(language.name.toStdString());
    const shell::Spoken spoken(language.code);
    test::WindowBench it;
    it.bench.go_to("lower-float", 6);
    it.open();
    QTest::keyClick(it.window.get(), Qt::Key_3, Qt::AltModifier);
    test::settle();
    enter_on(it, "section-figures");
    auto* read = it.window->findChild<QAbstractButton*>("button-read-figures");
    REQUIRE(QTest::qWaitFor([&] { return read->isEnabled(); }, 60000));
    test::settle();
    enter_on(it, "figure-");
    REQUIRE(it.window->page() == shell::PageName::past_jobs);
    CHECK(it.window->findChild<QLabel*>("above-results")->text().endsWith("1"));
    it.window->findChild<QLineEdit*>("field-search")->setFocus();
    press_key(it, Qt::Key_Escape);
    CHECK_FALSE(it.window->findChild<QLabel*>("above-results")->text().endsWith("1"));
  }
}
