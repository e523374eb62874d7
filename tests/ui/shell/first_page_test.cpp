#include "shimwright/shell/first_page.h"

#include <catch2/catch.hpp>

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
