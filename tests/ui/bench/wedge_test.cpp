#include "wedge.h"

#include <QTest>
#include <catch2/catch.hpp>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"

using namespace shimwright;

namespace {

/// A page with a button that has the focus and a field; time passes when the test says so.
struct WedgePage {
  QWidget page;
  std::vector<std::function<void()>> waiting;
  bench::Wedge* wedge = widgets::child_of<bench::Wedge>(
      &page, bench::Wedge::After([this](int, std::function<void()> call) { waiting.push_back(std::move(call)); }));
  widgets::Button* button = widgets::child_of<widgets::Button>(&page, QStringLiteral("Press me"));
  QLineEdit* field = widgets::child_of<QLineEdit>(&page);
  std::vector<std::string> bursts;
  std::vector<int> digits;
  int presses = 0;

  WedgePage() {
    auto* column = widgets::lay<QVBoxLayout>(&page);
    column->addWidget(button);
    column->addWidget(field);
    QObject::connect(wedge, &bench::Wedge::burst, [this](const std::string& text) { bursts.push_back(text); });
    QObject::connect(wedge, &bench::Wedge::digit, [this](int digit) { digits.push_back(digit); });
    QObject::connect(button, &widgets::Button::clicked, [this] { ++presses; });
    page.show();
    REQUIRE(QTest::qWaitForWindowActive(&page));
    button->setFocus();
  }

  void pause() {
    for (const auto& call : std::exchange(waiting, {})) {
      call();
    }
  }
};

}  // namespace

TEST_CASE("a burst that ends in Enter is a value and presses no button") {
  WedgePage page;
  QTest::keyClicks(page.button, "1.65");
  QTest::keyClick(page.button, Qt::Key_Return);
  CHECK(page.bursts == std::vector<std::string>{"1.65"});
  CHECK(page.presses == 0);
  page.pause();
  CHECK(page.digits.empty());
}

TEST_CASE("a digit is a hand's when no further key follows") {
  WedgePage page;
  QTest::keyClicks(page.button, "2");
  CHECK(page.digits.empty());
  page.pause();
  CHECK(page.digits == std::vector<int>{2});
  CHECK(page.bursts.empty());
}

TEST_CASE("Enter after the pause is the button's again") {
  WedgePage page;
  QTest::keyClicks(page.button, "3");
  page.pause();
  QTest::keyClick(page.button, Qt::Key_Return);
  CHECK(page.presses == 1);
  CHECK(page.digits == std::vector<int>{3});
  CHECK(page.bursts.empty());
}

TEST_CASE("several keys without Enter are nothing") {
  WedgePage page;
  QTest::keyClicks(page.button, "12");
  page.pause();
  CHECK(page.digits.empty());
  CHECK(page.bursts.empty());
}

TEST_CASE("keys in a field are the field's") {
  WedgePage page;
  page.field->setFocus();
  QTest::keyClicks(page.field, "1,65");
  QTest::keyClick(page.field, Qt::Key_Return);
  CHECK(page.field->text() == "1,65");
  CHECK(page.bursts.empty());
  CHECK(page.digits.empty());
}
