#include "kept_line.h"

#include <QTest>
#include <catch2/catch.hpp>

#include "painted.h"
#include "shimwright/widgets/child.h"

using namespace shimwright;

TEST_CASE("a kept line is there only with words") {
  bench::KeptLine line(nullptr);
  CHECK(line.isHidden());
  line.show_words(widgets::Mark::within, "kept: 9.5", false);
  CHECK_FALSE(line.isHidden());
  CHECK(line.words() == "kept: 9.5");
  line.show_words(widgets::Mark::none, QString());
  CHECK(line.isHidden());
}

TEST_CASE("what is typed and not sent is cleared by its button only") {
  bench::UnsentBox box("Answer first.", nullptr);
  CHECK(box.isHidden());
  int cleared = 0;
  QObject::connect(&box, &bench::UnsentBox::cleared, &box, [&] { ++cleared; });
  box.show();
  QTest::mouseClick(box.findChild<QAbstractButton*>("button-clear-typed"), Qt::LeftButton);
  CHECK(cleared == 1);
  CHECK(box.isHidden());
}

TEST_CASE("the line of the keys shows that it has the focus") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    QWidget window;
    auto* line = widgets::child_of<bench::KeyLine>(&window);
    line->setText("Answer with key 1 or key 2.");
    window.resize(400, 80);
    window.show();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    window.setFocus();
    CHECK(test::count_of(window.grab().toImage(), colours.blue) == 0);
    line->setFocus();
    CHECK(test::count_of(window.grab().toImage(), colours.blue) > 100);
  });
}
