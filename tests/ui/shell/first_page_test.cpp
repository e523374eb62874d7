#include "shimwright/shell/first_page.h"

#include <QLabel>

#include <catch2/catch.hpp>

#include "painted.h"
#include "shell_bench.h"

using namespace shimwright;
using test::named;

TEST_CASE("a store is begun by keys alone") {
  shell::FirstPage page;
  page.set_offer("/own/workshop.shimwright", true);
  page.show();
  std::optional<shell::Beginning> begun;
  QObject::connect(&page, &shell::FirstPage::begin_wanted, [&](const shell::Beginning& each) { begun = each; });
  for (const auto& [field, text] :
       {std::pair{"field-workshop", "Own Workshop"}, {"field-address", "1 Lane"}, {"field-person", "Ada Bench"}}) {
    QTest::keyClicks(named(page, field), text);
    QTest::keyClick(named(page, field), Qt::Key_Return);
  }
  CHECK_FALSE(begun);
  QTest::keyClick(named(page, "button-begin"), Qt::Key_Return);
  CHECK_FALSE(begun);
  CHECK(named(page, "start-fault")->isVisible());
  QTest::keyClicks(named(page, "field-initials"), "AB");
  QTest::keyClick(named(page, "field-initials"), Qt::Key_Return);
  CHECK_FALSE(begun);
  QTest::keyClick(named(page, "button-begin"), Qt::Key_Return);
  REQUIRE(begun);
  CHECK(begun->workshop == "Own Workshop");
  CHECK(begun->initials == "AB");
  CHECK_FALSE(named(page, "start-fault")->isVisible());
}

TEST_CASE("the demonstration is offered only where it is asked for") {
  shell::FirstPage page;
  page.show();
  page.set_offer("/own/workshop.shimwright", false);
  CHECK_FALSE(named(page, "button-demo")->isVisible());
  page.set_offer("/own/workshop.shimwright", true);
  bool wanted = false;
  QObject::connect(&page, &shell::FirstPage::demo_wanted, [&] { wanted = true; });
  test::press(page, "button-demo");
  CHECK(wanted);
}

TEST_CASE("language, units and paper are chosen at the first start, and a logo goes with the workshop") {
  shell::FirstPage page;
  page.set_offer("/own/workshop.shimwright", true);
  page.show_choices({"language-en", "length-mm", "torque-nm", "paper-a4"});
  page.show();
  CHECK(named<QPushButton>(page, "button-length-mm")->isChecked());
  QStringList made;
  QObject::connect(&page, &shell::FirstPage::choice_made, [&](const QString& name) { made << name; });
  for (const char* button : {"button-length-in", "button-torque-lbf-ft", "button-paper-letter", "button-language-en"}) {
    named(page, button)->setFocus();
    QTest::keyClick(named(page, button), Qt::Key_Return);
  }
  CHECK(made == QStringList{"length-in", "torque-lbf-ft", "paper-letter", "language-en"});
  CHECK(named<QPushButton>(page, "button-length-in")->isChecked());
  CHECK_FALSE(named<QPushButton>(page, "button-length-mm")->isChecked());
  bool logo_wanted = false;
  QObject::connect(&page, &shell::FirstPage::logo_wanted, [&] { logo_wanted = true; });
  test::press(page, "button-first-logo");
  CHECK(logo_wanted);
  const store::Logo logo{"image/png", "\x89PNG"};
  page.set_logo(logo, "lane.png");
  CHECK(named<QLabel>(page, "first-logo")->text() == "lane.png");
  std::optional<shell::Beginning> begun;
  QObject::connect(&page, &shell::FirstPage::begin_wanted, [&](const shell::Beginning& each) { begun = each; });
  for (const auto& [field, text] :
       {std::pair{"field-workshop", "Own Workshop"}, {"field-person", "Ada Bench"}, {"field-initials", "AB"}}) {
    QTest::keyClicks(named(page, field), text);
  }
  test::press(page, "button-begin");
  REQUIRE(begun);
  CHECK(begun->logo == std::optional(logo));
  test::press(page, "button-no-logo");
  CHECK_FALSE(named(page, "button-no-logo")->isVisible());
  test::press(page, "button-begin");
  CHECK_FALSE(begun->logo);
}

TEST_CASE("where the workshop is known only the person is asked for") {
  shell::FirstPage page;
  page.set_offer("/own/workshop.shimwright", false);
  page.ask_for_person_only("Hollow Lane");
  page.show();
  CHECK_FALSE(named(page, "field-workshop")->isVisible());
  std::optional<shell::Beginning> begun;
  QObject::connect(&page, &shell::FirstPage::begin_wanted, [&](const shell::Beginning& each) { begun = each; });
  QTest::keyClicks(named(page, "field-person"), "Ada Bench");
  QTest::keyClicks(named(page, "field-initials"), "AB");
  test::press(page, "button-begin");
  REQUIRE(begun);
  CHECK(begun->workshop.empty());
  CHECK(begun->person == "Ada Bench");
  page.set_offer("/own/workshop.shimwright", false);
  CHECK(named(page, "field-workshop")->isVisible());
}

TEST_CASE("the language is chosen without scrolling on the smallest screen") {
  const test::Dressed dressed(widgets::Scheme::light);
  shell::FirstPage page;
  page.set_offer("/own/workshop.shimwright", true);
  page.resize(1366, 768);
  page.show();
  REQUIRE(QTest::qWaitForWindowExposed(&page));
  for (const char* name : {"button-language-en", "button-language-de", "button-language-fr"}) {
    const auto* button = named(page, name);
    REQUIRE(button != nullptr);
    CHECK_FALSE(button->visibleRegion().isEmpty());
    CHECK(button->visibleRegion().boundingRect() == button->rect());
  }
}
