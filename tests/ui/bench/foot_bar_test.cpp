#include "foot_bar.h"

#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("the main button answers to Enter when it has the focus, and to the main key") {
  QWidget window;
  bench::FootBar foot(&window);
  int taken = 0;
  int back = 0;
  foot.set_actions({{"back", "Back", [&] { ++back; }, false, true, true}, {"take", "Take", [&] { ++taken; }, true}});
  window.show();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  foot.press_main();
  CHECK(taken == 1);
  foot.focus_main();
  auto* main = window.findChild<widgets::Button*>("button-take");
  REQUIRE(main != nullptr);
  CHECK(main->hasFocus());
  QTest::keyClick(main, Qt::Key_Return);
  CHECK(taken == 2);
  QTest::mouseClick(window.findChild<widgets::Button*>("button-back"), Qt::LeftButton);
  CHECK(back == 1);
}

TEST_CASE("a button that stays keeps its focus while its words and what it does change") {
  QWidget window;
  bench::FootBar foot(&window);
  int first = 0;
  int second = 0;
  foot.set_actions({{"take", "Keep", [&] { ++first; }, true}});
  window.show();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  foot.focus_main();
  auto* before = window.findChild<widgets::Button*>("button-take");
  foot.set_actions({{"take", "Keep again", [&] { ++second; }, true}});
  CHECK(window.findChild<widgets::Button*>("button-take") == before);
  CHECK(before->hasFocus());
  QTest::keyClick(before, Qt::Key_Space);
  CHECK(first == 0);
  CHECK(second == 1);
}

TEST_CASE("what cannot be done now cannot be pressed") {
  QWidget window;
  bench::FootBar foot(&window);
  int taken = 0;
  foot.set_actions({{"take", "Take", [&] { ++taken; }, true, false}});
  window.show();
  foot.press_main();
  QTest::mouseClick(window.findChild<widgets::Button*>("button-take"), Qt::LeftButton);
  CHECK(taken == 0);
}

TEST_CASE("where there is no room Photo, Note and Park give way before a page's own buttons") {
  QWidget window;
  window.resize(1400, 100);
  bench::FootBar foot(&window);
  const auto nothing = [] {};
  foot.resize(1366, 68);
  foot.set_actions({{"back", "Back", nothing, false, true, true},
                    {"all-shims", "All shims and chances", nothing, false, true, true},
                    {"note", "Note", nothing, false, true, true},
                    {"photo", "Photo", nothing, false, true, true},
                    {"more", "More...", nothing, false, true, true},
                    {"park", "Park job", nothing},
                    {"take", "Keep the reading", nothing, true}});
  const auto names = [&] {
    std::vector<std::string> all;
    for (const bench::FootAction& each : foot.left_out()) {
      all.push_back(each.name);
    }
    return all;
  };
  window.show();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  CHECK(names().empty());
  int narrowest_with_all_shims = 1366;
  for (int width = 1366; width > 480; --width) {
    foot.resize(width, 68);
    const auto out = names();
    if (std::find(out.begin(), out.end(), "all-shims") == out.end()) {
      narrowest_with_all_shims = width;
    }
  }
  foot.resize(narrowest_with_all_shims, 68);
  CHECK(names() == std::vector<std::string>{"note", "photo", "park"});
  foot.resize(480, 68);
  CHECK(names() == std::vector<std::string>{"all-shims", "note", "photo", "park"});
  foot.resize(1366, 68);
  CHECK(names().empty());
}

TEST_CASE(
    "on the narrowest screen the main button's keys give way, then all that stands under More too, but never those "
    "two") {
  QWidget window;
  window.resize(1400, 100);
  bench::FootBar foot(&window);
  const auto nothing = [] {};
  foot.resize(1366, 68);
  foot.set_actions({{"back", "Back", nothing, false, true, true},
                    {"more", "More...", nothing, false, true, true},
                    {"reason", "Go on with reason...", nothing},
                    {"change-shim", "Change the shim", nothing},
                    {"seat-again", "Seated again: measure", nothing, true}});
  window.show();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  const auto* main = window.findChild<widgets::Button*>("button-seat-again");
  const auto left_out = [&] {
    std::string names;
    for (const bench::FootAction& each : foot.left_out()) {
      names += each.name + " ";
    }
    return names;
  };
  const int with_keys = main->sizeHint().width();
  CHECK(left_out().empty());
  for (const auto& [width, names] :
       {std::pair{760, "reason "}, {560, "reason change-shim "}, {400, "back reason change-shim "}}) {
    foot.resize(width, 68);
    CHECK(left_out() == names);
    CHECK(main->sizeHint().width() < with_keys);
  }
  foot.resize(1366, 68);
  CHECK(left_out().empty());
  CHECK(main->sizeHint().width() == with_keys);
}

TEST_CASE("a main button that is grey names no key") {
  QWidget window;
  bench::FootBar foot(&window);
  const auto nothing = [] {};
  foot.resize(1366, 68);
  foot.set_actions({{"take", "Take", nothing, true}});
  const auto* main = window.findChild<widgets::Button*>("button-take");
  CHECK(main->accessibleDescription() == "Ctrl Enter");
  foot.set_actions({{"take", "Take", nothing, true, false}});
  CHECK(main->accessibleDescription().isEmpty());
}
