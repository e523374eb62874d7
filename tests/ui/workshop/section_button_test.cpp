#include "section_button.h"

#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/widgets/style.h"

using namespace shimwright;

TEST_CASE("a section is chosen by Enter, and the arrows ask for its neighbours") {
  workshop::SectionButton button("People");
  int pressed = 0;
  std::vector<int> steps;
  QObject::connect(&button, &QAbstractButton::clicked, [&] { ++pressed; });
  QObject::connect(&button, &workshop::SectionButton::wants_neighbour, [&](int step) { steps.push_back(step); });
  button.show();
  QTest::keyClick(&button, Qt::Key_Return);
  QTest::keyClick(&button, Qt::Key_Down);
  QTest::keyClick(&button, Qt::Key_Up);
  CHECK(pressed == 1);
  CHECK(steps == std::vector<int>{1, -1});
  CHECK(button.sizeHint().height() >= widgets::pixels::target);
  CHECK(button.accessibleName() == "People");
}
